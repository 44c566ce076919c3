import {
  type GainDb,
  notNegative,
  type Ohms,
  type PowerW,
  positive,
  powerW,
  rangeError,
} from './quantity.ts';

/** Returns a reflection magnitude unchanged if it is 0 to below 1. @throws RangeError otherwise. */
export function reflectionBelowOne(where: string, name: string, value: number): number {
  if (!(value >= 0 && value < 1))
    throw rangeError({ where, wish: `${name} must be from 0 to below 1`, got: value });
  return value;
}

/**
 * Magnitude of the reflection coefficient from the standing-wave ratio: (s - 1)/(s + 1).
 * @param swr 1 or more.
 * @throws RangeError below 1 or not finite.
 * Source: definition of the standing-wave ratio, waves on a line.
 */
export function reflectionOfSwr(swr: number): number {
  if (!(Number.isFinite(swr) && swr >= 1))
    throw rangeError({ where: 'reflectionOfSwr', wish: 'swr must be >= 1', got: swr });
  return (swr - 1) / (swr + 1);
}

/** Standing-wave ratio from the reflection magnitude: (1 + r)/(1 - r). @throws RangeError outside 0 to below 1. */
export function swrOfReflection(reflection: number): number {
  const r = reflectionBelowOne('swrOfReflection', 'reflection', reflection);
  return (1 + r) / (1 - r);
}

/**
 * Return loss in dB, a positive number: -20 lg r. 0.1 is 20 dB.
 * @param reflection above 0, up to 1 (a return loss of 0 dB: all comes back).
 * @throws RangeError outside that range.
 */
export function returnLossOfReflection(reflection: number): number {
  if (!(reflection > 0 && reflection <= 1))
    throw rangeError({
      where: 'returnLossOfReflection',
      wish: 'reflection must be above 0, up to 1',
      got: reflection,
    });
  return 0 - 20 * Math.log10(reflection);
}

/** Reflection magnitude from a return loss in dB (0 or more): 10^(-RL/20). @throws RangeError if negative. */
export function reflectionOfReturnLoss(returnLossDb: number): number {
  return 10 ** (-notNegative('reflectionOfReturnLoss', 'returnLossDb', returnLossDb) / 20);
}

/**
 * What a load takes less than a matched one would, in dB, a positive number: -10 lg(1 - r^2). SWR 1.5 costs 0.18 dB.
 * Holds for the power that arrives; a source that is not matched itself adds what {@link mismatchLimits} tells.
 * @throws RangeError outside 0 to below 1.
 */
export function mismatchLossDb(reflection: number): number {
  const r = reflectionBelowOne('mismatchLossDb', 'reflection', reflection);
  return 0 - (10 / Math.LN10) * Math.log1p(-r * r);
}

/** Reflection magnitude of a pure resistance at the end of a line: |R - R0|/(R + R0). */
export function reflectionOfResistance({
  resistance,
  reference,
}: {
  resistance: Ohms;
  reference: Ohms;
}): number {
  return Math.abs(resistance - reference) / (resistance + reference);
}

/** Forward and reflected power as a directional meter shows them. */
export interface LinePowers {
  readonly forward: PowerW;
  readonly reflected: PowerW;
}

function checkedLine(where: string, { forward, reflected }: LinePowers): LinePowers {
  positive(where, 'forward', forward);
  if (reflected > forward)
    throw rangeError({
      where,
      wish: 'reflected must not be above forward',
      got: `${reflected} above ${forward}`,
    });
  return { forward, reflected };
}

/** Reflection magnitude from the two powers: sqrt(Pr/Pf). @throws RangeError if Pf is 0 or Pr above it. */
export function reflectionOfPowers(powers: LinePowers): number {
  const { forward, reflected } = checkedLine('reflectionOfPowers', powers);
  return Math.sqrt(reflected / forward);
}

/** Power that stays in the load: Pf - Pr. @throws RangeError if Pf is 0 or Pr above it. */
export function netPower(powers: LinePowers): PowerW {
  const { forward, reflected } = checkedLine('netPower', powers);
  return powerW(forward - reflected);
}

/**
 * Where the true reflection magnitude can lie if a coupler of at least the given directivity shows `reflection`:
 * r - D to r + D with D = 10^(-directivity/20), held between 0 and 1 (no passive load reflects more). The same limits tell
 * what the coupler may show of a true one. 25 dB and SWR 1.50: SWR 1.34 to 1.69.
 * @throws RangeError for a reflection outside 0 to below 1, or a negative directivity.
 * Source: superposition of the leaked and the reflected wave, phase unknown.
 */
export function directivityRange({
  reflection,
  directivityDb,
}: {
  reflection: number;
  directivityDb: GainDb;
}): { lower: number; upper: number } {
  const r = reflectionBelowOne('directivityRange', 'reflection', reflection);
  const leak = 10 ** (-notNegative('directivityRange', 'directivityDb', directivityDb) / 20);
  return { lower: Math.max(0, r - leak), upper: Math.min(1, r + leak) };
}
