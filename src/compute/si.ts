import { finite, type LevelDbm, levelDbm, positive } from './quantity.ts';
import { definingConstant } from './si-units.ts';

/** Frequency of a Josephson junction per volt across it, in Hz per V: 2e/h. Source: SI Brochure, Appendix 2. */
export function josephsonConstantHzPerV(): number {
  return (2 * definingConstant('elementaryCharge')) / definingConstant('planck');
}

/** Resistance of the quantum Hall effect's first step, in ohm: h/e^2. Source: SI Brochure, Appendix 2. */
export function vonKlitzingOhm(): number {
  return definingConstant('planck') / definingConstant('elementaryCharge') ** 2;
}

/** Values that were agreed on from 1990 to 2019, outside the SI (18th CGPM and CIPM 1988). */
export const CONVENTIONAL_1990 = { josephsonHzPerV: 483_597.9e9, vonKlitzingOhm: 25_812.807 } as const;

/**
 * How much the volt and the ohm that laboratories kept since 1990 changed on 20 May 2019, as fractions: a voltage read by
 * the old constant is read larger by `volt` with the new, a resistance by `ohm`, and a power made of both, U^2/R, by `watt`.
 * Source: SI Brochure, Appendix 2: 1.066 65e-7 and (cut off, not rounded) 1.779 3e-8; the watt follows from them.
 */
export function changeOf2019(): { volt: number; ohm: number; watt: number } {
  const volt = CONVENTIONAL_1990.josephsonHzPerV / josephsonConstantHzPerV() - 1;
  const ohm = vonKlitzingOhm() / CONVENTIONAL_1990.vonKlitzingOhm - 1;
  return { volt, ohm, watt: (2 * volt + volt ** 2 - ohm) / (1 + ohm) };
}

/**
 * Elementary charges per second in a direct current: I/e, 6.241 509 07e18 for 1 A. (RF moves no net charge: this belongs
 * to the direct current that heats the same load as much.)
 * @throws RangeError unless finite.
 */
export function chargesPerSecond(amperes: number): number {
  return finite('chargesPerSecond', 'amperes', amperes) / definingConstant('elementaryCharge');
}

/** Periods of the caesium transition in a time: 9 192 631 770 in a second. @throws RangeError unless finite. */
export function caesiumPeriods(seconds: number): number {
  return finite('caesiumPeriods', 'seconds', seconds) * definingConstant('caesiumFrequency');
}

/** Time that light takes for a length, in seconds. @throws RangeError unless finite. */
export function lightTimeS(metres: number): number {
  return finite('lightTimeS', 'metres', metres) / definingConstant('lightSpeed');
}

/**
 * Thermal noise that a matched resistor offers: k T B, as a level. -173.98 dBm in 1 Hz at 290 K.
 * @throws RangeError unless both are above zero.
 * Source: k of the SI Brochure; CEPT T/R 61-02, Annex 6, 1.7.
 */
export function thermalNoiseLevel({
  temperatureK,
  bandwidthHz,
}: {
  temperatureK: number;
  bandwidthHz: number;
}): LevelDbm {
  const where = 'thermalNoiseLevel';
  const t = positive(where, 'temperatureK', temperatureK);
  const watts = definingConstant('boltzmann') * t * positive(where, 'bandwidthHz', bandwidthHz);
  return levelDbm(10 * Math.log10(watts) + 30);
}
