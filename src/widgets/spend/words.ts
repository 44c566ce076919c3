import {
  cheapestLink,
  dominantLinks,
  enoughFactor,
  expandedWith,
  HOURS,
  neededExpanded,
  readingsWorth,
  SPENDABLE,
  type Spendable,
  type Spending,
  STANDARDS_EXPANDED_DB,
  shareOf,
  spentOn,
  verdictOf,
} from '../../sheet/spend.ts';
import { aloud } from '../../text/aloud.ts';
import { namesAnd } from '../../text/and.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { numberText, percentText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { Answer } from '../parts/answer.ts';
import { type SpendState, spendingOf } from './spec.ts';
import { strings } from './strings.ts';

const band = (style: Style, halfWidth: number): string =>
  plusMinusText(style, { halfWidth, decimals: 2, unit: 'dB' });
const hoursText = (style: Style, link: Spendable): string =>
  numberText(style, { value: HOURS[link], decimals: HOURS[link] < 1 ? 2 : 0 });

const isSpendable = (id: string | undefined): id is Spendable =>
  SPENDABLE.some((spendable) => spendable === id);

/** How good a link has to be: limits in dB, or a number of readings, which goes with the square. */
export function enoughText(style: Style, of: Spending, link: Spendable): string {
  const factor = enoughFactor(of, link);
  const { isEnough, never, upTo, readings } = strings.table;
  if (factor === 1) return isEnough;
  if (factor === undefined || factor === 0) return never;
  if (link === 'readings') return readings(Math.ceil(of.count / factor ** 2 - 1e-9));
  // Rounded down, so that what is said does earn the verdict.
  return upTo(band(style, Math.floor(factor * of[link] * 100 + 1e-9) / 100));
}

function verdictAnswer(style: Style, of: Spending): Answer {
  return {
    figure: strings.verdictFigure({
      verdict: strings.verdict[verdictOf(of)],
      band: band(style, spentOn(of).expanded),
    }),
    words: strings.verdictWords(band(style, neededExpanded(of))),
  };
}

function dominantAnswer(style: Style, of: Spending): Answer {
  const ids = dominantLinks(of).filter(isSpendable);
  const [id] = ids;
  const share = percentText(style, { percent: 100 * shareOf(of, id ?? 'standards'), decimals: 0 });
  if (id === undefined) return { figure: strings.others, words: strings.othersWords(share) };
  return {
    figure: namesAnd(ids.map((each) => strings.link[each])),
    words: (ids.length > 1 ? strings.levelWords : strings.dominantWords)({
      share,
      perfect: band(style, expandedWith(of, id, 0)),
    }),
  };
}

function cheapestAnswer(style: Style, of: Spending): Answer {
  if (verdictOf(of) === 'inside') return { figure: strings.decided, words: strings.decidedWords };
  const cheapest = cheapestLink(of);
  if (cheapest === undefined) return { figure: strings.none, words: strings.noneWords };
  const { link } = cheapest;
  return {
    figure: strings.enough({ name: strings.link[link], amount: enoughText(style, of, link) }),
    words: strings.enoughWords(hoursText(style, link)),
  };
}

/** Verdict, dominant link, and the cheapest change. */
export function answersOf(state: SpendState, style: Style = 'shown'): readonly [Answer, Answer, Answer] {
  const of = spendingOf(state);
  return [verdictAnswer(style, of), dominantAnswer(style, of), cheapestAnswer(style, of)];
}

/** The settled state in one spoken sentence. */
export function summarise(state: SpendState): string {
  const [verdict, dominant, cheapest] = answersOf(state, 'spoken');
  return aloud([
    verdict.figure,
    `${dominant.figure} ${dominant.words}`,
    `${cheapest.figure}: ${cheapest.words}`,
  ]);
}

/** What each link would buy, a row each. */
export function boughtRows(state: SpendState): readonly { link: Spendable; cells: readonly string[] }[] {
  const of = spendingOf(state);
  return SPENDABLE.map((link) => ({
    link,
    cells: [
      band('shown', expandedWith(of, link, 0)),
      band('shown', expandedWith(of, link, 0.5)),
      enoughText('shown', of, link),
      hoursText('shown', link),
    ],
  }));
}

/** The note under the widget, with the number of readings that pay. */
export const noteOf = (state: SpendState): string =>
  strings.note({
    pay: strings.pay(readingsWorth(spendingOf(state))),
    standards: band('shown', STANDARDS_EXPANDED_DB),
  });
