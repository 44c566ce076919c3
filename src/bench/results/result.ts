import {
  type Caution,
  type Interval,
  improved,
  type Judgement,
  judge,
  linksOf,
  type Propagation,
  propagate,
  type SumModel,
  type UpperPowers,
} from '#compute';
import { COVERAGE_PROBABILITY } from '../../sheet/coverage.ts';
import type { Link, Sheet } from '../../sheet/sheet.ts';
import { sheetCautions, upperPowersOf } from './cautions.ts';
import { type BenchChain, benchChainOf } from './chain.ts';
import { inputLabel } from './input-labels.ts';

/** What improving the dominant part would leave, as expanded uncertainties in dB. */
export interface Improvement {
  readonly id: string;
  /**
   * The reader's own name of the link, or the name of what the method or the readings bring themselves; behind it those of others that
   * are level with it and do not improve with it.
   */
  readonly labels: readonly string[];
  /** Absent for what is no link. */
  readonly link: Link | undefined;
  /** How many more parts share its cause and so improve with it. */
  readonly others: number;
  /** Share of the variance of all of them. */
  readonly share: number;
  readonly halvedDb: number;
  readonly perfectDb: number;
}

/** Everything that the bench shows of a sheet, as numbers. */
export interface BenchResult {
  readonly chain: BenchChain;
  readonly judgement: Judgement;
  readonly cautions: readonly Caution[];
  /** Powers that the cautions reckon with. */
  readonly upper: UpperPowers;
  readonly improvement: Improvement | undefined;
  /** The measurement alone, without the transmitter's own spread; undefined where no such spread is stated. */
  readonly alone: Propagation | undefined;
}

/** Computes a sheet of which this is the model. */
export function resultOfModel(sheet: Sheet, model: SumModel): BenchResult {
  const chain = benchChainOf(sheet, model);
  const { specification, rule } = sheet;
  const upper = upperPowersOf(sheet, chain.result);
  if (upper === undefined) throw new RangeError('resultOfModel: a result must have an upper power, got none');
  return {
    chain,
    judgement: judge({ result: chain.result, specification, rule }),
    cautions: sheetCautions(sheet, upper),
    upper,
    improvement: improvementOf(chain),
    alone: aloneOf(chain),
  };
}

/** What counts as the expanded uncertainty of a model everywhere on the bench. */
const expandedOf = (model: SumModel): Propagation =>
  propagate({ model, coverageProbability: COVERAGE_PROBABILITY });

function improvementOf({ sheet, model, dominantIds, result }: BenchChain): Improvement | undefined {
  const [id] = dominantIds;
  const group = linksOf(model).find((ids) => id !== undefined && ids.includes(id));
  if (id === undefined || group === undefined) return undefined;
  const rows = result.propagation.budget.filter((row) => group.includes(row.id));
  return {
    id,
    labels: dominantIds
      .filter((each) => each === id || !group.includes(each))
      .map((each) => inputLabel(sheet, each)),
    link: sheet.links.find((link) => link.id === id),
    others: group.length - 1,
    share: rows.reduce((sum, { share }) => sum + share, 0),
    halvedDb: expandedOf(improved(model, group, 0.5)).expanded,
    perfectDb: expandedOf(improved(model, group, 0)).expanded,
  };
}

function aloneOf({ sheet, model }: BenchChain): Propagation | undefined {
  const own = new Set(sheet.links.filter(({ kind }) => kind === 'transmitter').map(({ id }) => id));
  if (!model.inputs.some(({ id }) => own.has(id))) return undefined;
  const kept = model.inputs.flatMap(({ id }, index) => (own.has(id) ? [] : [index]));
  return expandedOf({
    ...model,
    inputs: kept.flatMap((index) => model.inputs[index] ?? []),
    sensitivities: kept.flatMap((index) => model.sensitivities[index] ?? []),
  });
}

/** The coverage interval of the whole distribution, if there is one. */
export const wholeInterval = ({ result }: Pick<BenchChain, 'result'>): Interval | undefined =>
  'symmetric' in result.whole ? result.whole.symmetric : undefined;
