import { type ComputeFunction, type ExampleNumbers, formulaOf } from '../../formulas/index.ts';

/** The result of a row's function for these numbers. @throws RangeError as the function does. */
export const run = (id: ComputeFunction, given: ExampleNumbers): number =>
  formulaOf(id).example.compute(given);
