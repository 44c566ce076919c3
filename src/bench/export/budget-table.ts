import { detailedBudget, levelDbm, levelToPower, type Specification } from '#compute';
import type { Cell, Row } from '../../exchange/csv.ts';
import type { Measurement } from '../../sheet/measurement.ts';
import { outOfRangeText } from '../../text/out-of-range-text.ts';
import { addedShare, probabilityText } from '../../text/probability-text.ts';
import { type Decimal, type Style, styleWith } from '../../text/style.ts';
import { verdictLabel } from '../../text/words.ts';
import type { NumberedPoint, PointResult } from '../results/point-result.ts';
import { budgetLines } from '../words/budget.ts';
import { pointLabel } from '../words/point-order.ts';
import { tableStrings as strings } from './table-strings.ts';

/** Digits of what was worked out: far below what any uncertainty is known to, and the same in every browser. */
const DIGITS = 9;

const worked = (value: number): number => Number(value.toPrecision(DIGITS));
const percent = (share: number): number => worked(100 * share);
const freedom = (degrees: number): Cell => (Number.isFinite(degrees) ? worked(degrees) : strings.infinite);
const watts = (dbm: number): number => worked(levelToPower(levelDbm(dbm)));
const limit = (dbm: number | undefined): Cell =>
  dbm === undefined || !Number.isFinite(dbm) ? '' : worked(dbm);

/**
 * The uncertainty budget of every point for a spreadsheet, a row a part; then, after an empty row, the results, a row a point. Numbers
 * stand bare and unrounded, their unit in the heading.
 * @param results one a point of the measurement.
 * @param decimal sign of the numbers that stand within words.
 */
export function budgetRows(
  { points }: Measurement,
  results: readonly PointResult[],
  decimal: Decimal = 'point',
): readonly Row[] {
  const style = styleWith('unicode', decimal);
  const labelled = results.map((result) => {
    const position = points.findIndex(({ id }) => id === result.point.id);
    return { result, label: pointLabel(style, result.point, position) };
  });
  return [
    PART_HEADS.map((name) => strings[name]),
    ...labelled.flatMap(({ result, label }) => (result.inRange ? partRows(style, label, result) : [])),
    [],
    RESULT_HEADS.map((name) => strings[name]),
    ...labelled.map(({ result, label }) =>
      result.inRange ? resultRow(style, label, result) : [label, outOfRangeText(style, result.reason)],
    ),
  ];
}

const PART_HEADS = [
  'point',
  'part',
  'added',
  'stated',
  'source',
  'distribution',
  'uncertainty',
  'sensitivity',
  'contribution',
  'share',
  'freedom',
] as const;

function partRows(style: Style, label: string, { result, sheet }: NumberedPoint): readonly Row[] {
  const { model, result: whole } = result.chain;
  const lines = budgetLines(style, result);
  return detailedBudget({ model, propagation: whole.propagation }).map((row, index): Row => {
    const line = lines[index];
    const link = sheet.links.find(({ id }) => id === row.id);
    return [
      label,
      line?.label ?? row.id,
      link?.lossDb ?? '',
      line?.stated ?? '',
      line?.source ?? '',
      line?.distribution ?? '',
      worked(row.standardUncertainty),
      worked(row.sensitivity),
      worked(row.contribution),
      percent(row.share),
      freedom(row.degreesOfFreedom),
    ];
  });
}

/** No model of a home measurement bears more than a tenth of a percent at either end: beyond it the cell says so in words. */
function conformity(style: Style, probability: number | undefined): Cell {
  if (probability === undefined) return '';
  return probability > 0.001 && probability < 0.999
    ? percent(probability)
    : probabilityText(style, addedShare(probability));
}

const RESULT_HEADS = [
  'point',
  'level',
  'combined',
  'expanded',
  'factor',
  'coverage',
  'lowerDbm',
  'upperDbm',
  'watts',
  'lowerWatts',
  'upperWatts',
  'freedom',
  'lowerLimit',
  'upperLimit',
  'verdict',
  'conformity',
] as const;

function resultRow(style: Style, label: string, { result, sheet }: NumberedPoint): Row {
  const { estimate, propagation } = result.chain.result;
  const { interval } = propagation;
  const { verdict, probabilityOfConformity } = result.judgement;
  const { lower, upper }: Specification = sheet.specification;
  return [
    label,
    worked(estimate),
    worked(propagation.standardUncertainty),
    worked(propagation.expanded),
    worked(propagation.coverageFactor),
    percent(propagation.coverageProbability),
    worked(interval.lower),
    worked(interval.upper),
    watts(estimate),
    watts(interval.lower),
    watts(interval.upper),
    freedom(propagation.degreesOfFreedom),
    limit(lower),
    limit(upper),
    verdictLabel(verdict),
    conformity(style, probabilityOfConformity),
  ];
}
