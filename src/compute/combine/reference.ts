import type { Member } from '../distribution/standard.ts';
import { normalDensity, normalShareBelow } from '../special/normal.ts';
import { type Mixture, studentMixture } from '../special/student-characteristic.ts';
import type { Extent } from './extent.ts';

/**
 * A stand-in with the same long tails as the sum and a share below that is known in closed form. Only the small
 * difference between sum and stand-in then goes through the Fourier series, so that no long tail wraps around.
 *
 * Far out, a sum with long-tailed parts is large because ONE of them is: the stand-in adds, for each, the t smeared by a
 * normal of the variance of all others, and takes away the normals counted too often.
 */
export interface Reference {
  /** Characteristic function about the centre (real, as the stand-in is symmetric). */
  characteristic(w: number): number;
  /** Share below and density at `x` from the centre. */
  at(x: number): { value: number; slope: number };
}

/** Normal distributions about 0: weights (of either sign) and standard deviations. */
interface Normals {
  readonly weight: Float64Array;
  readonly deviation: Float64Array;
}

/** Variance that stands for a long-tailed part where another one is far out. */
function coreVariance({ scale, standardDeviation, standard }: Member): number {
  const known = (standard.degreesOfFreedom ?? 0) > 2.5 && standardDeviation !== undefined;
  return known ? standardDeviation ** 2 : 4 * scale * scale;
}

function smeared({ weight, variance }: Mixture, scale: number, added: number): Normals {
  return { weight, deviation: variance.map((value) => Math.sqrt(value * scale * scale + added)) };
}

function joined(pieces: readonly Normals[]): Normals {
  return {
    weight: Float64Array.from(pieces.flatMap((piece) => [...piece.weight])),
    deviation: Float64Array.from(pieces.flatMap((piece) => [...piece.deviation])),
  };
}

/** The stand-in for a sum with at least one long-tailed part. */
export function referenceOf({ heavy, lightVariance }: Extent): Reference {
  const all = lightVariance + heavy.reduce((sum, part) => sum + coreVariance(part), 0);
  const pieces = heavy.map((part) =>
    smeared(
      studentMixture(part.standard.degreesOfFreedom as number, 'coarse'),
      part.scale,
      all - coreVariance(part),
    ),
  );
  const excess = { weight: Float64Array.of(1 - heavy.length), deviation: Float64Array.of(Math.sqrt(all)) };
  const { weight, deviation } = joined([...pieces, excess]);
  return {
    characteristic: (w) => {
      let sum = 0;
      for (let k = 0; k < weight.length; k++) {
        const z = w * (deviation[k] as number);
        if (z < 9) sum += (weight[k] as number) * Math.exp(-0.5 * z * z);
      }
      return sum;
    },
    at: (x) => {
      let value = 0;
      let slope = 0;
      for (let k = 0; k < weight.length; k++) {
        const one = 1 / (deviation[k] as number);
        value += (weight[k] as number) * normalShareBelow(x * one);
        slope += (weight[k] as number) * normalDensity(x * one) * one;
      }
      return { value, slope };
    },
  };
}
