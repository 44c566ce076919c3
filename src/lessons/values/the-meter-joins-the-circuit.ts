import { dbToPercentOfPower, gainDb, levelToPower, ohms, peakOfRms, voltsOfPower } from '#compute';
import { clubSheet } from '../../sheet/club.ts';
import { behindClubPad, clubUpperLevel } from '../../sheet/club-pad.ts';
import {
  bandwidthMhz,
  clubJoining,
  type Joining,
  joinedOf,
  METER_KOHM,
  mostFrequency,
  PROBES,
  type Probe,
  percentOfVoltsInDb,
} from '../../sheet/joined.ts';
import { changeText, levelText, numberText, quantityText } from '../../text/quantity-text.ts';
import type { UnitName } from '../../text/units.ts';

/** Numbers of the lesson on what a meter does to what it measures. */
export function joinedValues(): Readonly<Record<string, () => string>> {
  const needle = clubJoining();
  const square: Joining = { ...needle, meter: 'alternating', waveform: 'square' };
  const triangle: Joining = { ...square, waveform: 'triangle' };
  const tenfold: Joining = { ...needle, meter: 'probe10' };
  const highPoint: Joining = { ...tenfold, megahertz: 20, resistanceOhm: 1000 };
  const onefold: Joining = { ...needle, meter: 'probe1', megahertz: 1.5, resistanceOhm: 1000 };
  return {
    needle: () => percent(errorOf(needle)),
    digitalOhms: () => `${numberText('shown', { value: METER_KOHM.digital / 1000, decimals: 0 })}\u00a0MΩ`,
    needleOhms: () => amount(METER_KOHM.needle, 0, 'kohm'),
    needleHigh: () => percent(errorOf({ ...needle, sourceKohm: 200 })),
    digital: () => percent(errorOf({ ...needle, meter: 'digital' })),
    squareVolts: () => percent(errorOf(square)),
    squarePower: () => percent(powerPercent(errorOf(square))),
    triangleVolts: () => percent(errorOf(triangle)),
    trianglePower: () => percent(powerPercent(errorOf(triangle))),
    acMost: () => amount(mostFrequency('alternating'), 0, 'kHz'),
    probe1Farad: () => farad('probe1'),
    probe10Farad: () => farad('probe10'),
    probe1Most: () => amount(mostFrequency('probe1'), 1, 'MHz'),
    probe10Most: () => amount(mostFrequency('probe10'), 1, 'MHz'),
    probe1Band: () => amount(bandwidthMhz('probe1'), 1, 'MHz'),
    probe10Loss: () => db(errorOf(tenfold), 4),
    highPoint: () => db(errorOf(highPoint), 2),
    lowPoint: () => db(errorOf({ ...highPoint, resistanceOhm: 50 }), 3),
    onefold: () => db(errorOf(onefold), 1),
    tenfoldThere: () => db(errorOf({ ...onefold, meter: 'probe10' }), 2),
    upperVolts: () => amount(upperVolts(), 2, 'Vrms'),
    upperPeak: () => amount(peakOfRms(upperVolts()), 1, 'Vp'),
    withPad: () => levelText('shown', { levelDbm: behindClubPad(), decimals: 1 }),
    withoutPad: () => levelText('shown', { levelDbm: clubUpperLevel(), decimals: 1 }),
    damage: () => levelText('shown', { levelDbm: clubSheet().damageLevelDbm ?? Number.NaN, decimals: 0 }),
    loaded: () => {
      const joining = { ...needle, sourceKohm: 200 };
      return `${percent(errorOf(joining))} of the volts that were there, and it is no fault of the meter`;
    },
    squareAsSine: () =>
      `${percent(errorOf(square))} of volts, ${percent(powerPercent(errorOf(square)))} of a power that is worked out from them`,
    wire: () =>
      `${db(errorOf(onefold), 1)} at ${amount(onefold.megahertz, 1, 'MHz')} where source and load have ${amount(onefold.resistanceOhm, 0, 'ohm')}`,
  };
}

function errorOf(joining: Joining): number {
  const found = joinedOf(joining);
  if (!found.inRange) throw new RangeError('errorOf: the meter must be in range, got out of range');
  return found.error;
}

const percent = (value: number): string => changeText('shown', { value, decimals: 1, unit: 'percent' });
const db = (value: number, decimals: number): string => changeText('shown', { value, decimals, unit: 'dB' });
const amount = (value: number, decimals: number, unit: UnitName): string =>
  quantityText('shown', { value, decimals, unit });
const powerPercent = (volts: number): number => dbToPercentOfPower(gainDb(percentOfVoltsInDb(volts)));
const farad = (probe: Probe): string =>
  `${numberText('shown', { value: PROBES[probe].capacitanceF * 1e12, decimals: 0 })}\u00a0pF`;

/** The upper end of the transmitter's specification: what a caution has to reckon with. */
const upperVolts = () => voltsOfPower({ power: levelToPower(clubUpperLevel()), resistance: ohms(50) });
