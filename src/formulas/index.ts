import type { ComputeFunction, Formula, FormulaTopic } from './formula.ts';
import { lengthFormulas } from './lengths.ts';
import { levelFormulas } from './levels.ts';
import { methodFormulas } from './methods.ts';
import { mismatchFormulas } from './mismatch.ts';
import { percentFormulas } from './percentages.ts';
import { powerFormulas } from './powers.ts';
import { siFormulas } from './si.ts';
import { voltageFormulas } from './voltages.ts';

export type {
  ComputeFunction,
  ExampleNumbers,
  Formula,
  FormulaExample,
  FormulaSource,
  FormulaSymbol,
  FormulaTopic,
  FormulaUnit,
} from './formula.ts';
export { SOURCES, type SourceEntry, type SourceId, type SourceKind } from './sources.ts';

/** The topics of the formula sheet in reading order, by the id that their page has. */
export const TOPICS = {
  levels: levelFormulas,
  percentages: percentFormulas,
  voltages: voltageFormulas,
  powers: powerFormulas,
  mismatch: mismatchFormulas,
  methods: methodFormulas,
  lengths: lengthFormulas,
  units: siFormulas,
} as const satisfies Record<string, FormulaTopic>;

/** Id of a topic. */
export type TopicId = keyof typeof TOPICS;

/** Rows of a topic in reading order, each with its id, which is the name of the function that computes it. */
export function rowsOf(topic: TopicId): (Formula & { readonly id: ComputeFunction })[] {
  return Object.entries(TOPICS[topic] as FormulaTopic).map(([id, row]) => ({
    ...(row as Formula),
    id: id as ComputeFunction,
  }));
}

/** The row of a function, wherever it stands. @throws RangeError if it has none. */
export function formulaOf(id: ComputeFunction): Formula {
  for (const topic of Object.values<FormulaTopic>(TOPICS)) {
    const row = topic[id];
    if (row) return row as Formula;
  }
  throw new RangeError(`formulaOf: id must be that of a row, got ${id}`);
}
