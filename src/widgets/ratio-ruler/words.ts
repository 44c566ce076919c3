import { dbToAmplitudeRatio, dbToPowerRatio, gainDb } from '#compute';
import { aboutText, factorText, timesText } from '../../text/factor-text.ts';
import { changeText, percentText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { NamedAnswer } from '../parts/answer.ts';
import { GAIN } from './spec.ts';
import { type RatioState, slippedDb } from './state.ts';
import { type Steps, stepsOf } from './steps.ts';
import { strings } from './strings.ts';

/** Digits of a ratio: what a reading of a tenth of a decibel bears. */
const DIGITS = 3;
/** An error of the head's answer below this, in percent, rounds to nothing. */
const SHOWN_PERCENT = 0.05;

/** A ratio in dB with its sign: `−26.0 dB`; hundredths only where it has them. */
export const dbWords = (style: Style, db: number): string =>
  changeText(style, {
    value: db,
    decimals: Math.abs(db * 10 - Math.round(db * 10)) < 1e-6 ? 1 : 2,
    unit: 'dB',
  });

/** The power ratio of a gain as a factor: `÷398`. */
export const powerFactor = (style: Style, db: number): string =>
  factorText(style, { ratio: dbToPowerRatio(gainDb(db)), digits: DIGITS });

/** The voltage ratio of a gain as a factor: `÷20.0`. */
export const voltsFactor = (style: Style, db: number): string =>
  factorText(style, { ratio: dbToAmplitudeRatio(gainDb(db)), digits: DIGITS });

const repeated = (style: Style, count: number, factor: number): string =>
  Array.from({ length: Math.abs(count) }, () =>
    factorText(style, { ratio: count > 0 ? factor : 1 / factor, digits: factor < 10 ? 1 : 2 }),
  ).join(style === 'spoken' ? ', ' : ' ');

/** The tens of a ratio in a row: `÷10 ÷10`; empty where there is none. */
export const tensText = (style: Style, { tens }: Steps): string => repeated(style, tens, 10);
/** The twos of a ratio in a row: `÷2 ÷2`. */
export const twosText = (style: Style, { twos }: Steps): string => repeated(style, twos, 2);
/** What is left beyond whole decibels: `−0.1 dB`; empty where nothing is. */
export const restText = (style: Style, { restDb }: Steps): string =>
  Math.abs(restDb) < GAIN.step / 20 ? '' : dbWords(style, restDb);

/** All steps in words: `÷10 ÷10 ÷2 ÷2, then −0.1 dB`. */
export function stepsText(style: Style, steps: Steps): string {
  const rest = restText(style, steps);
  const whole = [tensText(style, steps), twosText(style, steps)].filter((text) => text !== '');
  const parts = [whole.join(style === 'spoken' ? ', ' : ' '), rest === '' ? '' : strings.rest(rest)];
  const said = parts.filter((text) => text !== '').join(', ');
  return said === '' ? strings.noSteps : said;
}

/** The head's answer as a factor: as many digits as the sum of the head has. */
export const headText = (style: Style, { headRatio }: Steps): string =>
  factorText(style, { ratio: headRatio, digits: DIGITS });

/** What the head's answer is off by: `0.5 % more than it is, or +0.02 dB`. */
function offText(style: Style, { headRatio, exactRatio, offDb }: Steps): string {
  const percent = 100 * (headRatio / exactRatio - 1);
  if (Math.abs(percent) < SHOWN_PERCENT) return strings.exact;
  return strings.off({
    percent: percentText(style, { percent: Math.abs(percent), decimals: 1 }),
    db: changeText(style, { value: offDb, decimals: 2, unit: 'dB' }),
    more: percent > 0,
  });
}

export function answersOf({ gainDb: db }: Pick<RatioState, 'gainDb'>): readonly NamedAnswer[] {
  const steps = stepsOf(gainDb(db));
  return [
    { id: 'db', figure: dbWords('shown', db), words: strings.decibelsNote },
    {
      id: 'power',
      figure: `${powerFactor('shown', db)} in power`,
      words: strings.powerNote(timesText('shown', { ratio: steps.exactRatio, digits: DIGITS })),
    },
    { id: 'volts', figure: `${voltsFactor('shown', db)} in volts`, words: strings.voltsNote },
    {
      id: 'steps',
      figure: `${aboutText('shown', headText('shown', steps))} ${strings.stepsHeading}`,
      words: strings.stepsNote({ steps: stepsText('shown', steps), off: offText('shown', steps) }),
    },
  ];
}

/** What the slip that is shown would make of the ratio, or undefined where none is. */
export function slipWords(style: Style, state: Pick<RatioState, 'gainDb' | 'slip'>): string | undefined {
  const said = slippedDb(state);
  if (said === undefined) return undefined;
  const told = strings.slipSaid({
    slip: state.slip,
    said: dbWords(style, said),
    means: powerFactor(style, said),
    truth: powerFactor(style, state.gainDb),
  });
  return Math.abs(said) > GAIN.max ? `${told}${strings.slipBeyond}` : told;
}

/** The settled state in one spoken sentence. */
export function summarise(state: Pick<RatioState, 'gainDb' | 'slip'>): string {
  const { gainDb: db } = state;
  const steps = stepsOf(gainDb(db));
  const told = `${dbWords('spoken', db)}: ${powerFactor('spoken', db)} in power, ${voltsFactor('spoken', db)} in volts. By steps ${headText('spoken', steps)}: ${stepsText('spoken', steps)}.`;
  const slip = slipWords('spoken', state);
  return slip === undefined ? told : `${told} ${slip}`;
}
