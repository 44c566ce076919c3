import { dominantInputs, evaluate, evaluatePrefixes, type SumModel } from '#compute';
import { type Chain, chainFrom, type Rung } from '../../sheet/chain.ts';
import { COVERAGE_PROBABILITY } from '../../sheet/coverage.ts';
import type { Sheet } from '../../sheet/sheet.ts';

/** A figure with more rungs than this is no longer read: the widest are drawn and the others told of. */
export const MOST_RUNGS = 12;

/** The chain of a sheet, its rungs those that the figure draws. */
export interface BenchChain extends Chain {
  /** How many rungs are in the sums but not in the figure. */
  readonly undrawn: number;
}

/** The chain of a sheet with this model: its widest rungs, `MOST_RUNGS` at most, each with everything above it counted in. */
export function benchChainOf(sheet: Sheet, model: SumModel): BenchChain {
  if (model.inputs.length <= MOST_RUNGS) {
    const results = evaluatePrefixes({ model, coverageProbability: COVERAGE_PROBABILITY });
    return { ...chainFrom({ sheet, model, results }), undrawn: 0 };
  }
  const result = evaluate({ model, coverageProbability: COVERAGE_PROBABILITY });
  const widest = result.propagation.budget.toSorted((a, b) => b.share - a.share).slice(0, MOST_RUNGS);
  const drawn = new Set(widest.map(({ id }) => id));
  const rungs = model.inputs.flatMap(({ id }, index): Rung[] => {
    if (!drawn.has(id)) return [];
    const cumulative = evaluate({
      model: firstOf(model, index + 1),
      coverageProbability: COVERAGE_PROBABILITY,
    });
    const link = sheet.links.find((candidate) => candidate.id === id);
    return [link === undefined ? { id, cumulative } : { id, link, cumulative }];
  });
  return {
    sheet,
    model,
    rungs,
    result,
    dominantIds: dominantInputs(result.propagation),
    undrawn: model.inputs.length - rungs.length,
  };
}

/** The sum of the first inputs alone. */
const firstOf = (model: SumModel, count: number): SumModel => ({
  ...model,
  inputs: model.inputs.slice(0, count),
  sensitivities: model.sensitivities.slice(0, count),
});
