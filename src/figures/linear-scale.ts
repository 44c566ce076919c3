/** A straight-line scale: value to coordinate and back. Twenty lines instead of the ten kilobytes of a general one. */
export interface LinearScale {
  /** Coordinate of a value, not rounded. */
  (value: number): number;
  /** Value at a coordinate. */
  invert(coordinate: number): number;
}

/** @throws RangeError if the domain or the range has no width. */
export function linearScale({
  domain: [d0, d1],
  range: [r0, r1],
}: {
  domain: readonly [number, number];
  range: readonly [number, number];
}): LinearScale {
  if (!(d1 !== d0 && r1 !== r0))
    throw new RangeError(`linearScale: domain and range need a width, got ${d0}, ${d1}, ${r0}, ${r1}`);
  const slope = (r1 - r0) / (d1 - d0);
  const scale = (value: number): number => r0 + (value - d0) * slope;
  return Object.assign(scale, { invert: (coordinate: number): number => d0 + (coordinate - r0) / slope });
}

/** Rounded to 0.01 of a unit, as every coordinate in a figure is: finer than any screen, and the markup stays small. */
export const coordinate = (value: number): number => Math.round(value * 100) / 100;
