import { componentOf, type Input, normal, propagate, type Statement } from '#compute';

/** A quantity known by its estimate and standard uncertainty, as tables give it. */
export const known = (
  id: string,
  mean: number,
  standardDeviation: number,
  degreesOfFreedom: number = Number.POSITIVE_INFINITY,
): Input => ({ id, distribution: normal({ mean, standardDeviation }), degreesOfFreedom });

/** A deviation stated on a data sheet or certificate, in the unit of the model. */
export const stated = (id: string, statement: Statement, reliability?: number): Input =>
  componentOf({ id, statement, unit: 'own', reliability });

/** Inputs that simply add. */
export const sumOf = (inputs: readonly Input[]) =>
  propagate({
    model: { kind: 'sum', constant: 0, inputs, sensitivities: inputs.map(() => 1) },
  });

/** Standard uncertainty that a statement comes to, in the statement's unit. */
export const uncertaintyOf = (statement: Statement): number =>
  sumOf([stated('stated', statement)]).standardUncertainty;
