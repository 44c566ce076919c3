import { evaluatePrefixes } from '#compute';
import { type Chain, chainFrom } from './chain.ts';
import { COVERAGE_PROBABILITY } from './coverage.ts';
import type { Sheet } from './sheet.ts';
import { toModel } from './to-model.ts';

/** The chain of a sheet with every way to add up: `bandChainOf` and the whole distribution at each rung. */
export function chainOf(sheet: Sheet): Chain {
  const model = toModel(sheet);
  return chainFrom({
    sheet,
    model,
    results: evaluatePrefixes({ model, coverageProbability: COVERAGE_PROBABILITY }),
  });
}
