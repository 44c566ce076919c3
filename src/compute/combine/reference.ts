import type { Member } from '../distribution/standard.ts';
import { normalDensity, normalShareBelow } from '../special/normal.ts';
import { type Normals, normalsAlong } from '../special/normals-along.ts';
import { studentMixture } from '../special/student-characteristic.ts';
import type { Extent } from './extent.ts';

/**
 * A stand-in with the same long tails as the sum and a share below that is known in closed form. Only the small
 * difference between sum and stand-in then goes through the Fourier series, so that no long tail wraps around.
 *
 * Far out, a sum with long-tailed parts is large because ONE of them is: the stand-in adds, for each, the t smeared by a
 * normal of the variance of all others, and takes away the normals counted too often.
 */
export interface Reference {
  /** Characteristic function about the centre (real, as the stand-in is symmetric) at whole multiples of a step. */
  characteristicAlong(step: number): (multiple: number) => number;
  /** Share below and density at `x` from the centre. */
  at(x: number): { value: number; slope: number };
}

/** Variance that stands for a long-tailed part where another one is far out. */
function coreVariance({ scale, standardDeviation, standard }: Member): number {
  const known = (standard.degreesOfFreedom ?? 0) > 2.5 && standardDeviation !== undefined;
  return known ? standardDeviation ** 2 : 4 * scale * scale;
}

function smeared({ weight, variance }: Normals, scale: number, added: number): Normals {
  return { weight, variance: variance.map((value) => value * scale * scale + added) };
}

function joined(pieces: readonly Normals[]): Normals {
  return {
    weight: Float64Array.from(pieces.flatMap((piece) => [...piece.weight])),
    variance: Float64Array.from(pieces.flatMap((piece) => [...piece.variance])),
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
  const excess = { weight: Float64Array.of(1 - heavy.length), variance: Float64Array.of(all) };
  const normals = joined([...pieces, excess]);
  const { weight } = normals;
  const deviation = normals.variance.map(Math.sqrt);
  return {
    characteristicAlong: (step) => normalsAlong(normals, step),
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
