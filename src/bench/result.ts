import { type Caution, evaluate, type Interval, type Judgement, judge } from '#compute';
import { amountOf, withLinkAmount } from '../sheet/amount.ts';
import { COVERAGE_PROBABILITY } from '../sheet/chain.ts';
import type { Link, Sheet } from '../sheet/sheet.ts';
import { toModel } from '../sheet/to-model.ts';
import { sheetCautions } from './cautions.ts';
import { type BenchChain, benchChain } from './chain.ts';

/** What improving the dominant link would leave, as expanded uncertainties in dB. */
export interface Improvement {
  readonly link: Link;
  readonly share: number;
  readonly halvedDb: number;
  readonly perfectDb: number;
}

/** Everything that the bench shows of a sheet, as numbers. */
export interface BenchResult {
  readonly chain: BenchChain;
  readonly judgement: Judgement;
  readonly cautions: readonly Caution[];
  readonly improvement: Improvement | undefined;
}

/** Computes a sheet. */
export function benchResult(sheet: Sheet): BenchResult {
  const chain = benchChain(sheet);
  const { specification, rule } = sheet;
  return {
    chain,
    judgement: judge({ result: chain.result, specification, rule }),
    cautions: sheetCautions(sheet, chain.result),
    improvement: improvementOf(chain),
  };
}

function improvementOf({ sheet, dominantId, result }: BenchChain): Improvement | undefined {
  const link = sheet.links.find(({ id }) => id === dominantId);
  const row = result.propagation.budget.find(({ id }) => id === dominantId);
  if (link === undefined || row === undefined) return undefined;
  const left = (amount: number): number =>
    evaluate({
      model: toModel(withLinkAmount(sheet, link.id, amount)),
      coverageProbability: COVERAGE_PROBABILITY,
    }).propagation.expanded;
  return {
    link,
    share: row.share,
    halvedDb: left(amountOf(link.statement) / 2),
    perfectDb: left(0),
  };
}

/** The coverage interval of the whole distribution, if there is one. */
export const wholeInterval = ({ result }: BenchChain): Interval | undefined =>
  'symmetric' in result.whole ? result.whole.symmetric : undefined;
