import type { Point } from '../../sheet/measurement.ts';
import { isolated } from '../../text/isolate.ts';
import { fewestDecimals } from '../../text/place.ts';
import { quantityText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import { FREQUENCY_DECIMALS, HZ_PER_MHZ } from '../read/spec.ts';
import type { PointResult } from '../results/point-result.ts';
import { pointsStrings as strings } from './points-strings.ts';

/** A point with its result, as far as that is worked out. */
export interface PointWithResult {
  readonly point: Point;
  /** The reader's own name of it, its frequency, or its place in the sheet. */
  readonly label: string;
  readonly result: PointResult | undefined;
}

/** How a point is called: by its own label, else its frequency, else its place in the sheet. */
export function pointLabel(style: Style, { label, unnamed, frequencyHz }: Point, position: number): string {
  if (!unnamed && label.trim() !== '') return isolated(label);
  if (frequencyHz === undefined) return strings.unnamed(position + 1);
  return frequencyText(style, frequencyHz);
}

/** A frequency in megahertz, with as many decimals as it has. */
export function frequencyText(style: Style, frequencyHz: number): string {
  const megahertz = frequencyHz / HZ_PER_MHZ;
  return quantityText(style, {
    value: megahertz,
    decimals: fewestDecimals(megahertz, FREQUENCY_DECIMALS),
    unit: 'MHz',
  });
}

/** Points with their results, by frequency where each has one, else as they stand in the sheet. */
export function pointsInOrder(
  style: Style,
  points: readonly Point[],
  results: readonly (PointResult | undefined)[],
): readonly PointWithResult[] {
  const named = points.map((point, index) => ({
    point,
    label: pointLabel(style, point, index),
    result: results[index],
  }));
  return isByFrequency(points)
    ? named.toSorted((a, b) => (a.point.frequencyHz ?? 0) - (b.point.frequencyHz ?? 0))
    : named;
}

/** Whether every point has a frequency. */
export const isByFrequency = (points: readonly Point[]): boolean =>
  points.every(({ frequencyHz }) => frequencyHz !== undefined);
