import { type BandPoint, type LineBandProps, spanFor } from '../../figures/line-band.layout.ts';
import { type DetectorUse, detectorFound, forgottenDb, leastVolts } from '../../sheet/detector.ts';
import type { FieldsState } from '../parts/fields.ts';
import { type DetectorFields, detectorSpec, useOf } from './spec.ts';

/** Places along the axis at which line and band are computed, closer where the line is steep. */
const PLACES = 32;

/** DC volts from which on something is drawn: the edge of the method, or the reading that a curve reaches down to. */
function firstVolts(use: DetectorUse): number {
  const edge = Math.max(detectorSpec.fields.detected.min, leastVolts(use));
  return use.dropFrom === 'curve' ? Math.min(edge, use.detectedV) : edge;
}

/** DC volts in equal ratios. */
function places(use: DetectorUse): readonly number[] {
  const first = firstVolts(use);
  const { max } = detectorSpec.fields.detected;
  return Array.from({ length: PLACES + 1 }, (_, index) => first * (max / first) ** (index / PLACES));
}

interface Seen {
  readonly line: readonly { readonly x: number; readonly y: number }[];
  readonly strip: readonly BandPoint[];
  readonly worst: readonly BandPoint[];
}

/** What is stated less what is there: all along with the drop forgotten, and about nothing with it added back. */
function seenOf(use: DetectorUse): Seen {
  const all = places(use).map((detectedV) => {
    const here = { ...use, detectedV };
    return { x: detectedV, off: forgottenDb(here), found: detectorFound(here) };
  });
  const bands = all.flatMap(({ x, found }) => (found.inRange ? [{ x, result: found.result }] : []));
  return {
    line: all.map(({ x, off }) => ({ x, y: off })),
    strip: bands.map(({ x, result: { propagation } }) => ({
      x,
      lower: 0 - propagation.expanded,
      upper: propagation.expanded,
    })),
    worst: bands.map(({ x, result: { worstCase, estimate } }) => ({
      x,
      lower: estimate - worstCase.interval.upper,
      upper: estimate - worstCase.interval.lower,
    })),
  };
}

const reachOf = ({ line, worst }: Seen): number =>
  Math.max(...line.map(({ y }) => -y), ...worst.flatMap(({ lower, upper }) => [-lower, upper]));

/** The figure's data of a state: what is stated less what is there, over the DC volts. */
export function figureOf({ values, held }: FieldsState<DetectorFields>): Omit<LineBandProps, 'frame'> {
  const use = useOf(values);
  const seen = seenOf(use);
  const edge = leastVolts(use);
  return {
    domain: { lower: 0, upper: detectorSpec.fields.detected.max },
    span: spanFor(reachOf(held === undefined ? seen : seenOf(useOf(held)))),
    line: seen.line,
    band: seen.strip,
    ghost: seen.worst,
    at: { x: values.detected, y: detectorFound(use).inRange ? forgottenDb(use) : undefined },
    edge: use.dropFrom === 'fixed' && edge > 0 ? edge : undefined,
  };
}
