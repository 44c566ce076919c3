import { dbToPercentOfPower, dbToPercentOfVolts, gainDb, type Interval, smallPercentToDb } from '#compute';
import { aloud } from '../../text/aloud.ts';
import { deviationsText, plusMinusText } from '../../text/deviation-text.ts';
import { aboutText } from '../../text/factor-text.ts';
import { powerUnitFor } from '../../text/power-units.ts';
import { levelText, numberText, percentText, quantityText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import type { NamedAnswer } from '../parts/answer.ts';
import { claimedPercent, endsOf, onRuler, smallRulePercent } from './band.ts';
import type { BandRulersState } from './spec.ts';
import { strings } from './strings.ts';

/** Uneven deviations in percent: tenths below ten, since nobody knows a large band that well. */
const percentEnds = (style: Style, toPercent: (db: number) => number, { lower, upper }: Interval): string =>
  deviationsText(style, { upper: toPercent(upper), lower: toPercent(lower), decimals: 1, unit: 'percent' });

/** The band in dB: `±1.00 dB`, or `+1.25/−1.76 dB`. */
export const dbEnds = (style: Style, { lower, upper }: Interval): string =>
  deviationsText(style, { upper, lower, decimals: 2, unit: 'dB' });
/** The band in percent of power: `+25.9/−20.6 %`. */
export const powerEnds = (style: Style, ends: Interval): string =>
  percentEnds(style, (db) => dbToPercentOfPower(gainDb(db)), ends);
/** The band in percent of volts: `+12.2/−10.9 %`. */
export const voltsEnds = (style: Style, ends: Interval): string =>
  percentEnds(style, (db) => dbToPercentOfVolts(gainDb(db)), ends);

/** The band in watts with its ends, three digits for the middle, so that a reader's own sum comes to the same: `501 mW, 398 to 631`. */
export function wattsText(style: Style, state: BandRulersState): string {
  const { lower, upper } = endsOf(state);
  const at = (db: number): number => onRuler('power', state.level + db);
  const { unit, watts } = powerUnitFor(at(0));
  const decimals = 2 - Math.floor(Math.log10(at(0) / watts));
  const end = (db: number): string => numberText(style, { value: at(db) / watts, decimals });
  return `${quantityText(style, { value: at(0) / watts, decimals, unit })}, ${end(lower)} to ${end(upper)}`;
}

/** The band in volts across the load with its ends: `5.01 V RMS, 4.46 to 5.62`. */
export function voltsText(style: Style, state: BandRulersState, unit: 'V' | 'Vrms' = 'Vrms'): string {
  const { lower, upper } = endsOf(state);
  const at = (db: number): number => onRuler('volts', state.level + db);
  const end = (db: number): string => numberText(style, { value: at(db), decimals: 2 });
  return `${quantityText(style, { value: at(0), decimals: 2, unit })}, ${end(lower)} to ${end(upper)}`;
}

/** The band in each unit, what the small-error rule makes of it, and a mistake where one is shown. */
export function answersOf(state: BandRulersState, style: Style = 'shown'): readonly NamedAnswer[] {
  const ends = endsOf(state);
  const level = levelText(style, { levelDbm: state.level, decimals: 1 });
  const answers = [
    { id: 'db', figure: dbEnds(style, ends), words: strings.decibelsWords(level) },
    { id: 'power', figure: powerEnds(style, ends), words: strings.powerWords(wattsText(style, state)) },
    {
      id: 'volts',
      figure: voltsEnds(style, ends),
      words: strings.voltsWords(
        quantityText(style, { value: 50, decimals: 0, unit: 'ohm' }),
        voltsText(style, state),
      ),
    },
    ruleAnswer(state, style),
  ];
  const claimed = claimAnswer(state, style);
  return claimed === undefined ? answers : [...answers, claimed];
}

/** What the small-error rule makes of one decibel, in percent of power. */
const PERCENT_PER_DB = (): number => 1 / smallPercentToDb({ percent: 1, quantity: 'power' });

function ruleAnswer(state: BandRulersState, style: Style): NamedAnswer {
  const rule = smallRulePercent(state);
  const off = Math.abs(dbToPercentOfPower(gainDb(endsOf(state).upper)) - rule);
  const percent = percentText(style, { percent: off, decimals: 1 });
  const half = plusMinusText(style, { halfWidth: rule, decimals: 1, unit: 'percent' });
  return {
    id: 'rule',
    figure: strings.smallRule(aboutText(style, half)),
    words: strings.smallRuleWords({
      perDb: percentText(style, { percent: PERCENT_PER_DB(), decimals: 0 }),
      off: off < 0.05 ? strings.ruleExact : strings.ruleOff(percent),
    }),
  };
}

function claimAnswer(state: BandRulersState, style: Style): NamedAnswer | undefined {
  const percent = claimedPercent(state);
  if (percent === undefined || state.claim === 'none') return undefined;
  const half = plusMinusText(style, { halfWidth: percent, decimals: 1, unit: 'percent' });
  const band = powerEnds(style, endsOf(state));
  if (state.claim === 'mirrored' && state.even === 'watts')
    return { id: 'claim', figure: strings.claimed(half), words: strings.claims.mirroredEven };
  return { id: 'claim', figure: strings.claimed(half), words: strings.claims[state.claim](band) };
}

/** The settled state in one spoken sentence. */
export function summarise(state: BandRulersState): string {
  const answers = answersOf(state, 'spoken').filter(({ id }) => id !== 'rule');
  return aloud(answers.map(({ id, figure, words }) => `${figure}${id === 'claim' ? ',' : ''} ${words}`));
}
