import type { Standard } from '../distribution/standard.ts';
import { besselJ0 } from '../special/bessel.ts';
import { sinc } from '../special/sinc.ts';
import { studentCharacteristicAlong } from '../special/student-characteristic.ts';

/** E cos(w z) at whole multiples j of a step in w. */
type Along = (multiple: number) => number;

/**
 * Characteristic function of a standard shape, E cos(w z), at whole multiples of a step in w (1/unit of z, above 0), as a function of the
 * multiple, 0 or more; undefined where no quick form is known. Absolute error below 1e-11. It stands apart from the shapes, since only
 * what finds a whole distribution asks for it.
 */
export function characteristicAlong(
  { shape, topRatio, degreesOfFreedom }: Standard,
  step: number,
): Along | undefined {
  if (shape === 'normal') return (j) => Math.exp(-0.5 * (step * j) ** 2);
  if (shape === 'arcsine') return (j) => besselJ0(step * j);
  if (degreesOfFreedom !== undefined) return studentCharacteristicAlong(degreesOfFreedom, step);
  if (topRatio === undefined) return undefined;
  // the sum of two uniform values of these half-widths
  const [wide, narrow] = [(1 + topRatio) / 2, (1 - topRatio) / 2];
  return (j) => sinc(wide * step * j) * sinc(narrow * step * j);
}
