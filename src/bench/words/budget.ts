import { type DetailedRow, detailedBudget, type Statement } from '#compute';
import { amountOf, withAmount } from '../../sheet/amount.ts';
import type { MethodReading } from '../../sheet/method.ts';
import { readingOf, scatterOf } from '../../sheet/scatter.ts';
import type { Link, Sheet } from '../../sheet/sheet.ts';
import { intervalText } from '../../text/interval-text.ts';
import { dbText, numberText, percentText } from '../../text/quantity-text.ts';
import { distributionText, statementText } from '../../text/statement-text.ts';
import { type Style, signsOf } from '../../text/style.ts';
import { sourceWords } from '../../text/words.ts';
import { inputLabel, type OwnId, ownIdOf } from '../results/input-labels.ts';
import type { BenchResult } from '../results/result.ts';
import { budgetStrings as strings } from './budget-strings.ts';
import { rangeText } from './method-words.ts';

/** A line of the budget, as text. */
export interface BudgetLine {
  readonly id: string;
  readonly label: string;
  readonly loss: string;
  readonly stated: string;
  readonly source: string;
  readonly distribution: string;
  readonly divisor: string;
  readonly uncertainty: string;
  readonly sensitivity: string;
  readonly contribution: string;
  readonly share: string;
  /** Share of the variance as a number, for the bar. */
  readonly shareOf: number;
  readonly freedom: string;
}

/** Decimals of standard uncertainties: a budget's numbers stand under each other and so keep one place. */
const PLACES = 4;

/** The budget (GUM 4.1 to 5.1) line by line: what the method brings, the links in their order, the scatter last. */
export function budgetLines(style: Style, { chain }: BenchResult): readonly BudgetLine[] {
  const { sheet, model, result } = chain;
  return detailedBudget({ model, propagation: result.propagation }).map((row) => ({
    id: row.id,
    label: inputLabel(sheet, row.id),
    ...cellsOf(style, sheet, row),
    uncertainty: dbText(style, { db: row.standardUncertainty, decimals: PLACES }),
    sensitivity: numberText(style, { value: row.sensitivity, decimals: 0 }),
    contribution: dbText(style, { db: row.contribution, decimals: PLACES }),
    share: percentText(style, { percent: 100 * row.share, decimals: 1 }),
    shareOf: row.share,
    freedom: freedomText(style, row.degreesOfFreedom),
  }));
}

/** Degrees of freedom with a decimal where they have one; infinite where the uncertainty is taken as known. */
export const freedomText = (style: Style, freedom: number): string =>
  Number.isFinite(freedom) && freedom < 1e6
    ? numberText(style, { value: freedom, decimals: Number.isInteger(freedom) ? 0 : 1 })
    : strings.infinite;

type Cells = Pick<BudgetLine, 'loss' | 'stated' | 'source' | 'distribution' | 'divisor'>;

function cellsOf(style: Style, sheet: Sheet, row: DetailedRow): Cells {
  const link = sheet.links.find(({ id }) => id === row.id);
  if (link !== undefined) return linkCells(style, link, row);
  const own = ownIdOf(row.id);
  return own === undefined ? scatterCells(style, sheet, row) : ownCells(style, own, sheet, row);
}

function linkCells(style: Style, link: Link, row: DetailedRow): Cells {
  return {
    loss: addedText(style, link.lossDb),
    stated: statementText(style, { ...link, statement: rounded(link.statement) }),
    source: sourceWords[link.source],
    distribution: link.reflections ? strings.mismatch : distributionText(link.statement),
    divisor: link.reflections ? ratioText(style, row) : divisorText(style, link, row),
  };
}

/** What is added back to the reading; nothing is told of nothing. */
const addedText = (style: Style, db: number): string => (db === 0 ? '' : dbText(style, { db, decimals: 2 }));

/** Limits by a root: what their half-width, or a whole step, is divided by (GUM 4.3.7, 4.3.9, F.2.2.1, and F.1.3.5 for the arcsine). */
function divisorText(
  style: Style,
  { statement, unit }: Pick<Link, 'statement' | 'unit'>,
  row: DetailedRow,
): string {
  switch (statement.form) {
    case 'limits':
      return { rectangular: '√3', triangular: '√6', arcsine: '√2' }[statement.shape];
    case 'asymmetric':
      return '√3';
    case 'displayStep':
      return '√12';
    case 'standard':
      return '1';
    case 'readings':
      return `√${statement.count}`;
    case 'expanded':
      return numberText(style, {
        value: statement.coverageFactor,
        decimals: statement.coverageFactor % 1 === 0 ? 0 : 2,
      });
    default:
      return unit === 'dB' && row.standardUncertainty > 0
        ? numberText(style, { value: amountOf(statement) / row.standardUncertainty, decimals: 2 })
        : '';
  }
}

/** Half-width over standard uncertainty, where a shape is no simple one. */
const ratioText = (style: Style, { divisor }: DetailedRow): string =>
  divisor === undefined ? '' : numberText(style, { value: divisor, decimals: 2 });

/** What the method brings itself: it stands in no document of the reader's, so it says what it was made from. */
function ownCells(style: Style, own: OwnId, sheet: Sheet, row: DetailedRow): Cells {
  const { setup } = readingOf(sheet);
  const isNet = sheet.measurand.delivery !== 'incident';
  return {
    loss: addedText(style, own === 'rollOff' ? row.estimate : 0),
    stated:
      own === 'scale' && setup.method === 'inLine' ? scaleText(style, setup, isNet) : limitsText(style, row),
    source: strings.ofMethod,
    distribution: own === 'scale' && isNet ? strings.bothScales : strings.rectangular,
    divisor: ratioText(style, row),
  };
}

const limitsText = (style: Style, { limits: { lower, upper } }: DetailedRow): string =>
  `${intervalText(style, { lower, upper, decimals: 3, unit: 'dB' })}, ${strings.limits}`;

type InLine = Extract<MethodReading['setup'], { method: 'inLine' }>;

const scaleText = (style: Style, { forward, reflected }: InLine, isNet: boolean): string =>
  (isNet ? [forward, reflected] : [forward])
    .map((range) => `${signsOf(style).plusMinus}${rangeText(style, range)}`)
    .join('; ');

function scatterCells(style: Style, sheet: Sheet, row: DetailedRow): Cells {
  const scatter = scatterOf(sheet).find(({ id }) => id === row.id);
  const { statement, unit } = scatter ?? { statement: undefined, unit: 'dB' as const };
  return {
    loss: '',
    stated: statement ? statementText(style, { statement: rounded(statement), unit }) : '',
    source: sourceWords.measured,
    distribution: statement ? distributionText(statement) : '',
    divisor: statement?.form === 'readings' ? `√${statement.count}` : '1',
  };
}

/** A computed amount to the places of the budget; what somebody typed has no more and stays. */
const rounded = (statement: Statement): Statement =>
  statement.form === 'asymmetric'
    ? { ...statement, lower: placed(statement.lower), upper: placed(statement.upper) }
    : withAmount(statement, placed(amountOf(statement)));

const placed = (value: number): number => Number(value.toFixed(PLACES));
