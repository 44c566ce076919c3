import type { WholeRow } from '../../sheet/evaluated-pads.ts';
import { dominantOf, METER, rowResult, sumOfStated } from '../../sheet/pads-in-a-row.ts';
import { aloud } from '../../text/aloud.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { dbText, numberText, percentText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { Answer } from '../parts/answer.ts';
import { saidOf } from './figure.ts';
import { type Lay, type RowState, rowOf } from './spec.ts';
import { strings } from './strings.ts';

type Answers = readonly [Answer, Answer, Answer];

/** The smallest share of sums, in percent, that is given as a number. */
const LEAST_PERCENT = 0.01;
/** A share of sums, in percent, that misses 100 by no more is all of them. */
const NOISE_PERCENT = 1e-6;
/** Below this, in percent, two places would leave one digit. */
const SMALL_PERCENT = 0.1;

const band = (style: Style, halfWidth: number): string =>
  plusMinusText(style, { halfWidth, decimals: decimalsFor(halfWidth), unit: 'dB' });
const size = (style: Style, db: number): string => dbText(style, { db, decimals: decimalsFor(db) });
const number = (style: Style, value: number): string => numberText(style, { value, decimals: 2 });

/** A share of all sums as a percentage, with places behind the point near its ends; what is too small for that is called less. */
export function shareText(style: Style, share: number): string {
  const percent = 100 * share;
  const text = (value: number, decimals: number): string => percentText(style, { percent: value, decimals });
  if (percent < LEAST_PERCENT) return strings.rarely(text(LEAST_PERCENT, 2));
  if (percent > 100 - NOISE_PERCENT) return text(100, 0);
  if (percent > 100 - LEAST_PERCENT) return strings.nearly(text(100 - LEAST_PERCENT, 2));
  return text(percent, decimalsOf(percent));
}

/** Two digits of a share that is small, one place for what is near a hundred, two where one would say a hundred. */
function decimalsOf(percent: number): number {
  if (percent < 1) return percent < SMALL_PERCENT ? 3 : 2;
  if (percent > 99.9) return 2;
  return percent < 10 || percent > 99 ? 1 : 0;
}

const isEndless = ({ says, meter }: RowState): boolean => says === 'certificate' && meter > 0;

/** The sum of the limits, and of the pads alone where the meter has none. */
const limitsOf = (values: RowState): number =>
  isEndless(values) ? sumOfStated({ ...rowOf(values), meterDb: 0 }) : sumOfStated(rowOf(values));

function straightAnswers(style: Style, values: RowState, whole: WholeRow | undefined): Answers {
  const limits = limitsOf(values);
  const endless = isEndless(values);
  const guarantee = endless
    ? { figure: strings.open(band(style, limits)), words: strings.openWords }
    : { figure: band(style, limits), words: strings.guaranteed };
  return [
    guarantee,
    mostAnswer(style, values, whole),
    saidAnswer(style, values, whole) ?? rareAnswer(style, values, whole),
  ];
}

function mostAnswer(style: Style, values: RowState, whole: WholeRow | undefined): Answer {
  if (whole === undefined) return { figure: strings.asked, words: strings.askedWords };
  return {
    figure: strings.most(percentText(style, { percent: 95, decimals: 0 }), band(style, whole.halfWidth)),
    words: isEndless(values)
      ? strings.mostOpen
      : strings.mostWords(number(style, limitsOf(values) / whole.halfWidth)),
  };
}

function rareAnswer(style: Style, values: RowState, whole: WholeRow | undefined): Answer {
  if (whole === undefined) return { figure: '…', words: strings.askedWords };
  return isEndless(values)
    ? { figure: strings.beyondOpen(shareText(style, 1 - whole.withinSum)), words: strings.beyondOpenWords }
    : { figure: strings.rare(shareText(style, 1 - whole.withinNineTenths)), words: strings.rareWords };
}

/** What is said instead, and how much of the whole distribution it holds. */
function saidAnswer(style: Style, values: RowState, whole: WholeRow | undefined): Answer | undefined {
  const { claim } = values;
  const said = saidOf(claim, values);
  if (said === undefined || claim === 'none') return undefined;
  const { standardUncertainty } = rowResult(rowOf(values)).propagation;
  const what = strings.saidWords[claim];
  const figure = strings.said(band(style, said));
  if (whole === undefined) return { figure, words: what };
  const share = shareText(style, claim === 'sum' ? whole.withinSum : whole.withinRoot);
  return {
    figure,
    words: strings.saidHolds({ what, share, factor: number(style, said / standardUncertainty) }),
  };
}

function anglesAnswers(style: Style, values: RowState, whole: WholeRow | undefined): Answers {
  const { standardUncertainty, expanded, budget } = rowResult(rowOf(values)).propagation;
  const endToEnd = budget.reduce((sum, row) => sum + row.standardUncertainty, 0);
  return [
    {
      figure: strings.standard(size(style, standardUncertainty)),
      words: strings.standardWords(size(style, endToEnd)),
    },
    dominantAnswer(style, values),
    saidAnswer(style, values, whole) ?? {
      figure: strings.expanded(size(style, expanded)),
      words: whole ? strings.expandedHolds(shareText(style, whole.withinExpanded)) : strings.expandedWords,
    },
  ];
}

/** The part that decides, with its share, and what it would leave. */
function dominantAnswer(style: Style, values: RowState): Answer {
  const row = rowOf(values);
  const { id, share } = dominantOf(row);
  const isMeter = id === METER;
  const figure = strings.share({
    part: isMeter ? strings.parts.meter : strings.parts.pad,
    share: shareText(style, share),
  });
  if (isMeter) {
    const { standardUncertainty } = rowResult({ ...row, meterDb: 0 }).propagation;
    return { figure, words: strings.meterWords(size(style, standardUncertainty)) };
  }
  const meter = rowResult(row).propagation.budget.find((each) => each.id === METER);
  return { figure, words: meter ? strings.padWords(shareText(style, meter.share)) : strings.padsOnly };
}

/** Three answers under the figure. */
export const answersOf = (
  lay: Lay,
  values: RowState,
  whole: WholeRow | undefined,
  style: Style = 'shown',
): Answers =>
  lay === 'straight' ? straightAnswers(style, values, whole) : anglesAnswers(style, values, whole);

/** Words within the figure. */
export function figureWords(lay: Lay, values: RowState, whole: WholeRow | undefined) {
  const { figure } = strings;
  const said = saidOf(values.claim, values);
  const dashed = said === undefined ? '' : figure.said(band('shown', said));
  const named = dashed === '' ? figure : figure.short;
  const axis = figure.axis[lay];
  if (lay === 'straight') {
    const limits = band('shown', limitsOf(values));
    const asked = dashed === '' ? figure.asked : named.most('…');
    const most = whole ? named.most(band('shown', whole.halfWidth)) : asked;
    return {
      first: isEndless(values) ? figure.endless(limits) : figure.limits(limits),
      second: `${most}${dashed}`,
      axis,
    };
  }
  const { standardUncertainty, budget } = rowResult(rowOf(values)).propagation;
  const endToEnd = budget.reduce((sum, row) => sum + row.standardUncertainty, 0);
  return {
    first: figure.lengths(size('shown', endToEnd)),
    second: `${named.together(size('shown', standardUncertainty))}${dashed}`,
    axis,
  };
}

/** The settled state in one spoken sentence. */
export function summarise(lay: Lay, values: RowState, whole: WholeRow | undefined): string {
  const [first, second, third] = answersOf(lay, values, whole, 'spoken');
  const { spoken } = strings;
  return lay === 'straight'
    ? aloud([spoken.limits(first.figure), second.figure, third.figure])
    : aloud([first.figure, spoken.share(second.figure), third.figure]);
}
