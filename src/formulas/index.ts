import type { ComputeFunction, FormulaRow, FormulaTopic } from './formula.ts';
import { functionFormulas } from './functions.ts';
import { lengthFormulas } from './lengths.ts';
import { levelFormulas } from './levels.ts';
import { methodFormulas } from './methods.ts';
import { mismatchFormulas } from './mismatch.ts';
import { percentFormulas } from './percentages.ts';
import { powerFormulas } from './powers.ts';
import { readingFormulas } from './readings.ts';
import { shapeFormulas } from './shapes.ts';
import { siFormulas } from './si.ts';
import { sumFormulas } from './sums.ts';
import { transferFormulas } from './transfers.ts';
import { verdictFormulas } from './verdicts.ts';
import { voltageFormulas } from './voltages.ts';

export type { ComputeFunction, ExampleNumbers, FormulaRow } from './formula.ts';
export { sourcesText } from './sources.ts';

/** The topics of the formula sheet in reading order, by the id that their page has. */
export const TOPICS = {
  levels: levelFormulas,
  percentages: percentFormulas,
  voltages: voltageFormulas,
  powers: powerFormulas,
  mismatch: mismatchFormulas,
  methods: methodFormulas,
  statements: shapeFormulas,
  sums: sumFormulas,
  readings: readingFormulas,
  verdicts: verdictFormulas,
  transfers: transferFormulas,
  lengths: lengthFormulas,
  units: siFormulas,
  functions: functionFormulas,
} as const satisfies Record<string, FormulaTopic>;

/** Id of a topic. */
export type TopicId = keyof typeof TOPICS;

/** Rows of a topic in reading order. */
export function rowsOf(topic: TopicId): FormulaRow[] {
  return Object.entries(TOPICS[topic]).map(([id, row]) => ({ ...row, id: id as ComputeFunction }));
}

/** The row of a function, wherever it stands. @throws RangeError if it has none. */
export function formulaOf(id: ComputeFunction): FormulaRow {
  for (const topic of Object.keys(TOPICS) as TopicId[]) {
    const row = rowsOf(topic).find((candidate) => candidate.id === id);
    if (row) return row;
  }
  throw new RangeError(`formulaOf: id must be that of a row, got ${id}`);
}
