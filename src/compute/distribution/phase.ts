import { halfTurnSine } from '../special/half-turn-sine.ts';
import type { Random } from './distribution.ts';

/** Decibels for each unit of the natural logarithm of a power: 10/ln 10. */
export const DB_PER_LOG = 10 / Math.LN10;

/**
 * Share of all phases at which |1 - radius e^(i phase)| <= amplitude: the point circles around 1 at `radius`, and the
 * cosine of the phase at which it crosses the amplitude follows from the law of cosines. radius > 0.
 */
export function shareOfPhases(radius: number, amplitude: number): number {
  const cosine = (1 + radius * radius - amplitude * amplitude) / (2 * radius);
  return cosine >= 1 ? 0 : cosine <= -1 ? 1 : Math.acos(cosine) / Math.PI;
}

/** Slope of that share over the level 20 lg(amplitude), per dB; 0 where no phase reaches the amplitude. */
export function slopeOfPhases(radius: number, amplitude: number): number {
  const square = amplitude * amplitude;
  const cosine = (1 + radius * radius - square) / (2 * radius);
  if (Math.abs(cosine) >= 1) return 0;
  return square / (2 * radius * Math.PI * DB_PER_LOG * Math.sqrt((1 - cosine) * (1 + cosine)));
}

/** Level of |1 - radius e^(i phase)| in dB, from the cosine of the phase. */
export function levelAt(radius: number, cosine: number): number {
  return DB_PER_LOG * Math.log(1 + radius * radius - 2 * radius * cosine);
}

/** A point of the unit circle. */
export type Direction = readonly [cosine: number, sine: number];

/** A random direction. */
export function randomDirection(random: Random): Direction {
  const cosine = randomCosine(random);
  const sine = Math.sqrt((1 - cosine) * (1 + cosine));
  return [cosine, random() < 0.5 ? sine : -sine];
}

/** Cosine of a random phase. */
export function randomCosine(random: Random): number {
  return halfTurnSine(2 * random() - 1);
}

/** The phase in the middle of each of `count` equal steps of half a turn. */
export function halfTurnPhases(count: number): number[] {
  return Array.from({ length: count }, (_, k) => ((k + 0.5) * Math.PI) / count);
}
