import { divisorTable, studentTable } from './factors.ts';
import { fromPercentTable, toPercentTable } from './percents.ts';
import type { PrintTable } from './print-table.ts';
import { ratioTable } from './ratios.ts';
import { mismatchTable, swrTable } from './reflections.ts';

export { levelTable } from './levels.ts';
export type { PrintTable } from './print-table.ts';

/** The tables to print that nothing has to be chosen for, in the order of the page; the levels are asked for by resistance. */
export const fixedTables = (): readonly PrintTable[] => [
  ratioTable(),
  swrTable(),
  mismatchTable(),
  toPercentTable(),
  fromPercentTable(),
  studentTable(),
  divisorTable(),
];
