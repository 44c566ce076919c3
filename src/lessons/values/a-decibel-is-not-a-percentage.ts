import {
  dbToPercentOfPower,
  gainDb,
  levelDbm,
  levelToPower,
  meanAsPowers,
  meanOfDecibels,
  smallPercentToDb,
} from '#compute';
import { defaultState } from '../../address/field-spec.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { powerText } from '../../text/power-text.ts';
import { dbText, levelText, percentText, quantityText } from '../../text/quantity-text.ts';
import { endsOf, onRuler } from '../../widgets/band-rulers/band.ts';
import { type BandRulersState, bandRulersSpec } from '../../widgets/band-rulers/spec.ts';
import { dbEnds, powerEnds, voltsEnds, voltsText, wattsText } from '../../widgets/band-rulers/words.ts';
import { meansOf } from '../../widgets/two-means/means.ts';
import { meansSpec } from '../../widgets/two-means/spec.ts';

const prepared = (): BandRulersState => defaultState(bandRulersSpec.fields);
/** A band that is even in volts or in watts, by so many percent. */
const evenIn = (even: 'watts' | 'volts', halfPercent: number) => endsOf({ ...prepared(), even, halfPercent });
const evenDb = (halfDb: number) => endsOf({ ...prepared(), halfDb });
const percent = (value: number, decimals: number): string =>
  percentText('shown', { percent: value, decimals });
const watts = (dbm: number): string => powerText('shown', { powerW: levelToPower(levelDbm(dbm)), digits: 3 });
const db = (value: number, decimals = 2): string => dbText('shown', { db: value, decimals });
const level = (dbm: number, decimals = 2): string => levelText('shown', { levelDbm: dbm, decimals });
const powerPerDb = (): number => 1 / smallPercentToDb({ percent: 1, quantity: 'power' });
const voltsPerDb = (): number => 1 / smallPercentToDb({ percent: 1, quantity: 'volts' });

/** Numbers of the lesson on decibels and percentages. */
export const bandsValues = (): Readonly<Record<string, () => string>> => ({
  ...rulersValues(),
  ...ruleValues(),
  ...meansValues(),
  ...costValues(),
});

function rulersValues() {
  const state = prepared();
  const ends = endsOf(state);
  const middle = onRuler('power', state.level);
  const distance = (end: number): string =>
    powerText('shown', { powerW: Math.abs(onRuler('power', state.level + end) - middle), digits: 3 });
  return {
    middle: () => level(state.level, 0),
    half: () => plusMinusText('shown', { halfWidth: state.halfDb, decimals: 0, unit: 'dB' }),
    watts: () => wattsText('shown', state),
    power: () => powerEnds('shown', ends),
    volts: () => voltsText('shown', state),
    voltsPercent: () => voltsEnds('shown', ends),
    up: () => distance(ends.upper),
    down: () => distance(ends.lower),
    tripled: () => powerEnds('shown', evenDb(3)),
    thirdOfPower: () => dbEnds('shown', evenIn('watts', 100 / 3)),
  };
}

function ruleValues() {
  return {
    powerPerDb: () => percent(powerPerDb(), 0),
    voltsPerDb: () => percent(voltsPerDb(), 1),
    tenth: () => powerEnds('shown', evenDb(0.1)),
    ruleTenth: () => plusMinusText('shown', { halfWidth: 0.1 * powerPerDb(), decimals: 1, unit: 'percent' }),
    ruleOne: () => plusMinusText('shown', { halfWidth: powerPerDb(), decimals: 0, unit: 'percent' }),
    fiveVolts: () => powerEnds('shown', evenIn('volts', 5)),
    fiveVoltsDb: () => dbEnds('shown', evenIn('volts', 5)),
    fivePower: () => dbEnds('shown', evenIn('watts', 5)),
  };
}

function meansValues() {
  const readings = defaultState(meansSpec.fields);
  const { ofDecibelsDbm, ofPowersDbm, apartDb } = meansOf(readings);
  const near = [levelDbm(10), levelDbm(11)];
  return {
    ofDecibels: () => level(ofDecibelsDbm),
    ofPowers: () => level(ofPowersDbm),
    ofPowersWatts: () => watts(ofPowersDbm),
    ofDecibelsWatts: () => watts(ofDecibelsDbm),
    apart: () => db(apartDb),
    nearApart: () => db(meanAsPowers(near) - meanOfDecibels(near)),
    rule: () => quantityText('shown', { value: Math.LN10 / 20, decimals: 3, unit: 'none' }),
  };
}

/** What the mistakes cost, each short enough for one line of a phone. */
function costValues() {
  const state = prepared();
  const { upper } = endsOf(state);
  const even = (half: number): string =>
    plusMinusText('shown', { halfWidth: half, decimals: 0, unit: 'percent' });
  const rounded = powerEnds('shown', endsOf(state));
  const mirrored = onRuler('power', state.level) * (1 - dbToPercentOfPower(gainDb(upper)) / 100);
  const { ofDecibelsDbm, ofPowersDbm } = meansOf({ first: 0, second: 10, third: 20 });
  return {
    costSame: () => `${even(upper)} for ${rounded}`,
    costTen: () => `${even(10 * upper)} for ${rounded}`,
    costMirrored: () =>
      `${powerText('shown', { powerW: mirrored, digits: 3 })} for ${watts(state.level - state.halfDb)}`,
    costSquared: () => `${even(5 ** 2)} for ${powerEnds('shown', evenIn('volts', 5))}`,
    costMean: () => `${watts(ofDecibelsDbm)} for ${watts(ofPowersDbm)}`,
  };
}
