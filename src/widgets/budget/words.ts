import { coverageOf, intervalInWatts, levelDbm, levelToPower, roundToPlace } from '#compute';
import { type BudgetUse, type Written, written } from '../../sheet/stated-budget.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { powerIntervalText, powerText } from '../../text/power-text.ts';
import { probabilityText } from '../../text/probability-text.ts';
import { numberText, percentText, quantityText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { Answer } from '../parts/answer.ts';
import { type BudgetState, useOf } from './spec.ts';
import { strings } from './strings.ts';
import { OUTPUT, ownTexts, partLabel } from './units.ts';

/** A row of the table, as text. */
export interface BudgetRowText {
  readonly id: string;
  readonly label: string;
  readonly u: string;
  readonly sensitivity: string;
  readonly contribution: string;
  readonly share: string;
  readonly shareOf: number;
  readonly freedom: string;
}

const NM_PER_MM = 1e6;
/** Decimals of millimetres that show nanometres. */
const MM_DECIMALS = 6;
/** Degrees of freedom from which they are as good as infinite to whoever reads them. */
const AS_GOOD_AS_INFINITE = 1e6;

/** Degrees of freedom, to a tenth where they have one. */
export const freedomText = (style: Style, freedom: number): string =>
  freedom < AS_GOOD_AS_INFINITE
    ? numberText(style, { value: freedom, decimals: Math.abs(freedom - Math.round(freedom)) < 1e-9 ? 0 : 1 })
    : strings.infinite;

const factorText = (style: Style, factor: number): string =>
  numberText(style, { value: factor, decimals: Number(factor.toFixed(2)) === Math.round(factor) ? 0 : 2 });

/** The parts of a budget, in its order. */
export function rowsOf(state: BudgetState, style: Style = 'shown'): readonly BudgetRowText[] {
  const { subject } = state;
  return written(useOf(state)).budget.map((row) => ({
    id: row.id,
    label: partLabel(row.id),
    ...ownTexts(style, subject, row),
    contribution: quantityText(style, { value: row.contribution, ...OUTPUT[subject] }),
    share: percentText(style, { percent: 100 * row.share, decimals: 1 }),
    shareOf: row.share,
    freedom: freedomText(style, row.degreesOfFreedom),
  }));
}

/** What the parts come to, for the foot of the table. */
export function footOf(
  state: BudgetState,
  style: Style = 'shown',
): { readonly u: string; readonly freedom: string } {
  const { standardUncertainty, degreesOfFreedom } = written(useOf(state));
  const { unit, decimals } = OUTPUT[state.subject];
  return {
    u: quantityText(style, { value: standardUncertainty, decimals, unit }),
    freedom: freedomText(style, degreesOfFreedom),
  };
}

/** An estimate to the place of an uncertainty: a level, or a length in millimetres. */
function valueText(style: Style, use: BudgetUse, estimate: number, decimals: number): string {
  return use.subject === 'club'
    ? quantityText(style, { value: estimate, decimals, unit: 'dBm' })
    : quantityText(style, { value: estimate / NM_PER_MM, decimals: MM_DECIMALS + decimals, unit: 'mm' });
}

const uncertaintyText = (style: Style, use: BudgetUse, value: number, decimals: number): string =>
  plusMinusText(style, { halfWidth: value, decimals, unit: OUTPUT[use.subject].unit });

/** The result as it is stated: value and U to one place. */
export function statedText(style: Style, use: BudgetUse, { stated }: Pick<Written, 'stated'>): string {
  const decimals = -(stated.place ?? 0);
  return `${valueText(style, use, stated.estimate, decimals)} ${uncertaintyText(style, use, stated.plus, decimals)}`;
}

function statedAnswer(style: Style, use: BudgetUse, found: Written): Answer {
  const { coverageFactor, coverageProbability } = found;
  const words = strings.stated({
    k: factorText(style, coverageFactor),
    probability: probabilityText(style, coverageProbability),
  });
  return { figure: statedText(style, use, found), words };
}

function uncertaintyAnswer(style: Style, use: BudgetUse, found: Written): Answer {
  const largest = found.budget.reduce((most, row) => (row.share > most.share ? row : most));
  return {
    figure: strings.uncertainty(standardText(style, use, found)),
    words: strings.uncertaintyWords({
      largest: partLabel(largest.id),
      share: percentText(style, { percent: 100 * largest.share, decimals: 0 }),
    }),
  };
}

const standardText = (style: Style, use: BudgetUse, { standardUncertainty: value }: Written): string =>
  quantityText(style, { value, decimals: decimalsFor(value), unit: OUTPUT[use.subject].unit });

function freedomAnswer(style: Style, { degreesOfFreedom }: Written): Answer {
  const { coverageFactor } = coverageOf({ coverageProbability: 0.95, degreesOfFreedom });
  return {
    figure: strings.freedom(freedomText(style, degreesOfFreedom)),
    words: strings.freedomWords(factorText(style, coverageFactor)),
  };
}

/** The stated result, its combined uncertainty, and how well that is known. */
export function answersOf(state: BudgetState, style: Style = 'shown'): readonly [Answer, Answer, Answer] {
  const use = useOf(state);
  const found = written(use);
  return [statedAnswer(style, use, found), uncertaintyAnswer(style, use, found), freedomAnswer(style, found)];
}

/** The number with its standard uncertainty in brackets, in units of the last place (GUM 7.2.2). */
function bracketText(style: Style, use: BudgetUse, { estimate, standardUncertainty }: Written): string {
  const decimals = decimalsFor(standardUncertainty);
  const digits = roundToPlace({ value: standardUncertainty, place: -decimals }) * 10 ** decimals;
  const bracket = `(${numberText(style, { value: digits, decimals: 0 })})`;
  const [number = '', unit = ''] = valueText(style, use, estimate, decimals).split(/(?=\u00a0)/);
  return `${number}${bracket}${unit}`;
}

/** Watts from what was worked out, not from what was rounded. */
function wattsText(style: Style, { estimate, expanded }: Written): string {
  const { lower, upper } = intervalInWatts({
    lower: levelDbm(estimate - expanded),
    upper: levelDbm(estimate + expanded),
  });
  const power = powerText(style, { powerW: levelToPower(levelDbm(estimate)), digits: 3 });
  return `${power}, ${powerIntervalText(style, { lowerW: lower, upperW: upper })}`;
}

/** One unit for value and U: millimetres. */
const millimetresText = (style: Style, { stated }: Written): string => {
  const decimals = MM_DECIMALS - (stated.place ?? 0);
  const number = (nm: number): string => numberText(style, { value: nm / NM_PER_MM, decimals });
  return `(${number(stated.estimate)} ± ${number(stated.plus)}) mm`;
};

/** Other ways to write the same result. */
export function formsOf(state: BudgetState): readonly string[] {
  const use = useOf(state);
  const found = written(use);
  const decimals = decimalsFor(found.standardUncertainty);
  const { form } = strings;
  const value = valueText('shown', use, found.estimate, decimals);
  const exact = statedText('shown', use, written({ ...use, onTheWay: false }));
  return [
    form.standard({ value, u: standardText('shown', use, found) }),
    `${bracketText('shown', use, found)}: ${form.bracket}`,
    use.subject === 'club'
      ? `${wattsText('shown', found)}: ${form.watts}`
      : `${millimetresText('shown', found)}: ${form.millimetres}`,
    ...(use.onTheWay ? [form.exact(exact)] : []),
  ];
}

/** The settled state in spoken sentences; `aloud` would weigh more than the two words that it is needed for here. */
export function summarise(state: BudgetState): string {
  const [stated, u, freedom] = answersOf(state, 'spoken');
  const { spoken } = strings;
  return `${stated.figure}. ${spoken.u}${afterSign(u)}. ${spoken.freedom}${afterSign(freedom)}.`;
}

const afterSign = ({ figure }: Answer): string => figure.replace(/^.*=/, '');
