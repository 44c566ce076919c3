import { type BenchChain, benchChainOf } from '../../src/bench/results/chain.ts';
import { type BenchResult, resultOfModel } from '../../src/bench/results/result.ts';
import type { Sheet } from '../../src/sheet/sheet.ts';
import { toModel } from '../../src/sheet/to-model.ts';

/** What the bench makes of a sheet whose method is in range. */
export const benchResult = (sheet: Sheet): BenchResult => resultOfModel(sheet, toModel(sheet));
export const benchChain = (sheet: Sheet): BenchChain => benchChainOf(sheet, toModel(sheet));
