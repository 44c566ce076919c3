import {
  CERTIFICATE_FACTOR,
  divisorOf,
  type Stated,
  saidDb,
  shareWithin,
  standardDb,
} from '../../sheet/stated.ts';
import { aloud } from '../../text/aloud.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { dbText, numberText, percentText } from '../../text/quantity-text.ts';
import { type Style, signsOf } from '../../text/style.ts';
import type { Answer } from '../parts/answer.ts';
import { type StatedState, statedOf } from './spec.ts';
import { strings } from './strings.ts';

/** Two readings closer than this agree: no table of divisors says more. */
const SAME = 1e-9;

const sized = (style: Style, db: number): string => dbText(style, { db, decimals: decimalsFor(db) });
const band = (style: Style, halfWidth: number): string =>
  plusMinusText(style, { halfWidth, decimals: decimalsFor(halfWidth), unit: 'dB' });
const statedText = (style: Style, { halfWidthDb }: Stated): string =>
  plusMinusText(style, { halfWidth: halfWidthDb, decimals: 2, unit: 'dB' });

/** The divisor of a statement: as it is known, or where it has no such name its number. */
export function divisorText(style: Style, of: Stated): string {
  if (of.meaning === 'plateau') return numberText(style, { value: divisorOf(of), decimals: 2 });
  const named = strings.divisors[of.meaning];
  return style === 'spoken' ? named.spoken : named.shown;
}

/** How far what is said is off, as a factor upwards and as a share downwards. */
export function ratioText(style: Style, { said, right }: { said: number; right: number }): string {
  const ratio = said / right;
  if (Math.abs(ratio - 1) < SAME) return strings.justRight;
  return ratio > 1
    ? strings.ratio(numberText(style, { value: ratio, decimals: 2 }))
    : strings.tooSmall(percentText(style, { percent: 100 * (1 - ratio), decimals: 0 }));
}

function standardAnswer(style: Style, of: Stated): Answer {
  const stated = statedText(style, of);
  return {
    figure: strings.standard(sized(style, standardDb(of))),
    words: strings.divided({ stated, divisor: divisorText(style, of), why: strings.why[of.meaning] }),
  };
}

function sharesAnswer(style: Style, of: Stated): Answer {
  const percent = (share: number, decimals: number): string =>
    percentText(style, { percent: 100 * share, decimals });
  const twice = shareWithin(of, CERTIFICATE_FACTOR);
  const words = (): string => {
    if (of.meaning === 'certificate') return strings.someBeyond(percent(1 - twice, 1));
    if (CERTIFICATE_FACTOR * standardDb(of) > of.halfWidthDb) return strings.allWithin;
    return strings.mostWithin(percent(twice, 0));
  };
  return { figure: strings.within(percent(shareWithin(of, 1), 0), signsOf(style).plusMinus), words: words() };
}

function readAnswer(style: Style, of: Stated): Answer {
  const right = standardDb(of);
  const said = saidDb(of);
  if (said === undefined || of.slip === 'none')
    return {
      figure: strings.expanded(sized(style, CERTIFICATE_FACTOR * right)),
      words: strings.expandedWords,
    };
  return {
    figure: strings.slip({ said: sized(style, said), ratio: ratioText(style, { said, right }) }),
    words: strings.slipWords(strings.said[of.slip]),
  };
}

/** The standard uncertainty, what lies within, and what is made of it. */
export function answersOf(state: StatedState, style: Style = 'shown'): readonly [Answer, Answer, Answer] {
  const of = statedOf(state);
  return [standardAnswer(style, of), sharesAnswer(style, of), readAnswer(style, of)];
}

/** Words within the figure. */
export function figureWords(state: StatedState) {
  const of = statedOf(state);
  const right = standardDb(of);
  const said = saidDb(of);
  const { figure } = strings;
  const lumps = band('shown', right);
  return {
    bar:
      of.meaning === 'certificate'
        ? figure.endless(statedText('shown', of).slice(1))
        : figure.limits(statedText('shown', of)),
    lumps:
      said === undefined
        ? figure.lumps(lumps)
        : figure.lumpsSaid({ right: lumps, said: band('shown', said) }),
    strip: figure.strip(band('shown', CERTIFICATE_FACTOR * right)),
    axis: figure.axis,
  };
}

/** The settled state in one spoken sentence. */
export const summarise = (state: StatedState): string =>
  aloud(answersOf(state, 'spoken').map(({ figure }) => figure));
