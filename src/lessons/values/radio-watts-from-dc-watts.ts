import { levelDbm, levelToPower } from '#compute';
import { clubSheet } from '../../sheet/club.ts';
import { clubHeat, type HeatUse, heatResult, isSteady, offDb, offK, reached } from '../../sheet/dc-heat.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { powerText, powerWithEndsText } from '../../text/power-text.ts';
import { changeText, levelText, percentText, quantityText } from '../../text/quantity-text.ts';

/** A larger transmitter on another, larger box, which gets less warm by each watt: 2 W. */
const twoWatts = (): HeatUse => ({ ...clubHeat(), volts: 10, amperes: 0.1995, riseRfK: 14.2, riseDcK: 14 });
const impatient = (): HeatUse => ({ ...clubHeat(), waitedRf: 10 });
const draughty = (): HeatUse => ({ ...clubHeat(), roomK: 0.5 });
const lukewarm = (): HeatUse => ({ ...clubHeat(), riseRfK: 1, riseDcK: 1 });

/** Numbers of the lesson on substitution by heat, all from the club's load. */
export const heatValues = (): Readonly<Record<string, () => string>> => ({
  ...resultValues(),
  ...waitingValues(),
  ...heatCautions(),
});

function resultValues() {
  const club = clubHeat();
  return {
    riseRf: () => kelvin(club.riseRfK, 1),
    riseDc: () => kelvin(club.riseDcK, 1),
    volts: () => quantityText('shown', { value: club.volts, decimals: 2, unit: 'V' }),
    amperes: () => quantityText('shown', { value: 1000 * club.amperes, decimals: 1, unit: 'mA' }),
    result: () => resultText(club),
    power: () => powerOf(club),
    two: () => `${resultText(twoWatts())}, ${powerOf(twoWatts())}`,
    kelvinShare: () => percentText('shown', { percent: (100 * club.withinK) / club.riseRfK, decimals: 1 }),
    better: () => bandOf({ ...club, withinK: 0.03 }),
    costsLukewarm: () =>
      `${bandOf(lukewarm())} where a rise of ${kelvin(club.riseRfK, 1)} gives ${bandOf(club)}`,
  };
}

function waitingValues() {
  const club = clubHeat();
  const hasty = impatient();
  const share = (minutes: number): string =>
    percentText('shown', { percent: 100 * reached({ ...club, minutes }), decimals: minutes > 30 ? 1 : 0 });
  return {
    afterOne: () => share(club.timeConstant),
    afterTen: () => share(hasty.waitedRf),
    afterAll: () => share(club.waitedRf),
    toCome: () => kelvin(club.riseRfK * (1 - reached({ ...club, minutes: club.waitedRf })), 2),
    hasty: () => change(offDb(hasty)),
    hastyKelvin: () => kelvin(offK(hasty), 1),
    alike: () => change(offDb({ ...hasty, waitedDc: hasty.waitedRf })),
    draught: () => change(offDb(draughty())),
    costsHasty: () => unsteady(hasty),
    costsDraught: () => unsteady(draughty()),
  };
}

function heatCautions() {
  const { volts, amperes, riseDcK } = clubHeat();
  const upper = levelToPower(levelDbm(clubSheet().specification.upper ?? 0));
  const perWatt = riseDcK / (volts * amperes);
  return {
    upper: () => watts(upper),
    upperRise: () => kelvin(perWatt * upper, 0),
    fiveWatts: () => kelvin(perWatt * 5, 0),
    current: () =>
      quantityText('shown', { value: 1000 * Math.sqrt(upper / (volts / amperes)), decimals: 0, unit: 'mA' }),
  };
}

const kelvin = (value: number, decimals: number): string =>
  quantityText('shown', { value, decimals, unit: 'K' });
const watts = (powerW: number): string => powerText('shown', { powerW, digits: 3 });
const change = (value: number): string => changeText('shown', { value, decimals: 2, unit: 'dB' });

function bandOf(use: HeatUse): string {
  const halfWidth = heatResult(use).propagation.expanded;
  return plusMinusText('shown', { halfWidth, decimals: decimalsFor(halfWidth), unit: 'dB' });
}

function resultText(use: HeatUse): string {
  const { estimate, propagation } = heatResult(use);
  return `${levelText('shown', { levelDbm: estimate, decimals: decimalsFor(propagation.expanded) })} ${bandOf(use)}`;
}

function powerOf(use: HeatUse): string {
  const { estimate, propagation } = heatResult(use);
  const power = (dbm: number): number => levelToPower(levelDbm(dbm));
  const { lower, upper } = propagation.interval;
  return powerWithEndsText('shown', { powerW: power(estimate), lowerW: power(lower), upperW: power(upper) });
}

function unsteady(use: HeatUse): string {
  if (isSteady(use)) throw new RangeError('heatValues: a slip must shift the result, got a steady one');
  return `${change(offDb(use))}, ${bandOf(use)} claimed`;
}
