import { constant } from '../distribution/constant.ts';
import type { Distribution, Interval } from '../distribution/distribution.ts';
import { normalQuantile } from '../special/normal.ts';
import { shareWithin } from '../special/share.ts';
import { solveRising } from '../special/solve.ts';
import { extentOf } from './extent.ts';
import { referenceOf } from './reference.ts';
import { seriesOf } from './series.ts';
import { spectrumOf } from './spectrum.ts';

/** What a sum can be asked; a `Distribution` without its name and its random values. */
export type Summed = Omit<Distribution, 'shape' | 'sample'>;

/** Searches stop within this part of the spread. */
const TOLERANCE = 1e-11;

function limitsOf(parts: readonly Distribution[]): Interval {
  const end = (side: keyof Interval) => parts.reduce((sum, part) => sum + part.limits[side], 0);
  return { lower: end('lower'), upper: end('upper') };
}

function momentsOf(parts: readonly Distribution[]): Pick<Summed, 'mean' | 'standardDeviation'> {
  let mean: number | undefined = 0;
  let variance: number | undefined = 0;
  for (const part of parts) {
    mean = mean === undefined || part.mean === undefined ? undefined : mean + part.mean;
    const deviation = part.standardDeviation;
    variance = variance === undefined || deviation === undefined ? undefined : variance + deviation ** 2;
  }
  return { mean, standardDeviation: variance === undefined ? undefined : Math.sqrt(variance) };
}

/** Share below and density, from the centre: by series within the period, by the reference (or certainty) beyond. */
function curveOf(parts: readonly Distribution[], extent: ReturnType<typeof extentOf>) {
  const reference = extent.heavy.length > 0 ? referenceOf(extent) : undefined;
  const series = seriesOf(spectrumOf(parts, extent, reference), reference === undefined);
  return (x: number) => {
    const base = reference?.at(x);
    if (Math.abs(x) >= extent.period / 2) return base ?? { value: x > 0 ? 1 : 0, slope: 0 };
    const { value, slope } = series(x);
    return { value: value + (base?.value ?? 0), slope: slope + (base?.slope ?? 0) };
  };
}

/** A sum in which nothing is in doubt. */
export function certain(value: number): Summed {
  return constant(value);
}

/** The same distribution, `shift` further up. */
export function moved(sum: Summed, shift: number): Summed {
  if (shift === 0) return sum;
  return {
    mean: sum.mean === undefined ? undefined : sum.mean + shift,
    standardDeviation: sum.standardDeviation,
    limits: { lower: sum.limits.lower + shift, upper: sum.limits.upper + shift },
    density: (x) => sum.density(x - shift),
    shareBelow: (x) => sum.shareBelow(x - shift),
    quantile: (share) => sum.quantile(share) + shift,
  };
}

/** Distribution of the sum of independent parts, one or more, none of them constant. */
export function sumOfParts(parts: readonly Distribution[]): Summed {
  if (parts.length === 1) return parts[0] as Distribution;
  const extent = extentOf(parts);
  const limits = limitsOf(parts);
  const curve = curveOf(parts, extent);
  const quantileFromCentre = (share: number) => {
    let reach = extent.period / 2;
    while (curve(-reach).value > share || curve(reach).value < share) reach *= 2;
    const start = normalQuantile(share) * extent.spread;
    return solveRising(curve, {
      wanted: share,
      lower: -reach,
      upper: reach,
      start,
      tolerance: TOLERANCE * extent.spread,
    });
  };
  return {
    ...momentsOf(parts),
    limits,
    density: (x) => (x < limits.lower || x > limits.upper ? 0 : Math.max(0, curve(x - extent.centre).slope)),
    shareBelow: (x) => {
      if (x <= limits.lower) return 0;
      if (x >= limits.upper) return 1;
      return Math.min(1, Math.max(0, curve(x - extent.centre).value));
    },
    quantile: (share) => {
      shareWithin('quantile', share);
      if (share === 0) return limits.lower;
      if (share === 1) return limits.upper;
      const x = extent.centre + quantileFromCentre(share);
      return Math.min(limits.upper, Math.max(limits.lower, x));
    },
  };
}
