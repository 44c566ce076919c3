import { normalQuantile, normalShareBelow } from '../special/normal.ts';
import { studentPeak, studentQuantile, studentShareBelow } from '../special/student.ts';

/** A density symmetric about 0 that falls from 1 there, as the ziggurat needs it. The logarithm of its height is concave in ln x. */
export interface Bell {
  /** ln of the height at x. */
  logHeight(x: number): number;
  /** The x >= 0 with this height, above 0 and at most 1. */
  place(height: number): number;
  /** How fast the logarithm of the height falls with ln x, at x > 0. */
  steepness(x: number): number;
  /** Area under the heights beyond x >= 0. */
  areaBeyond(x: number): number;
  /** The x beyond which this part, 0 to 1/2, of the whole area lies. */
  farPlace(part: number): number;
}

function normalBell(): Bell {
  return {
    logHeight: (x) => -0.5 * x * x,
    place: (height) => Math.sqrt(-2 * Math.log(height)),
    steepness: (x) => x * x,
    areaBeyond: (x) => Math.sqrt(2 * Math.PI) * normalShareBelow(-x),
    farPlace: (part) => -normalQuantile(part),
  };
}

function studentBell(degreesOfFreedom: number): Bell {
  const n = degreesOfFreedom;
  const peak = studentPeak(n);
  return {
    logHeight: (x) => -0.5 * (n + 1) * Math.log1p((x * x) / n),
    place: (height) => Math.sqrt(n * Math.expm1((-2 / (n + 1)) * Math.log(height))),
    steepness: (x) => ((n + 1) * x * x) / (n + x * x),
    areaBeyond: (x) => studentShareBelow({ t: -x, degreesOfFreedom }) / peak,
    farPlace: (part) => -studentQuantile({ share: part, degreesOfFreedom }),
  };
}

/** The bell of Student's t; Infinity gives that of the normal distribution. */
export function bellOf(degreesOfFreedom: number): Bell {
  return degreesOfFreedom === Number.POSITIVE_INFINITY ? normalBell() : studentBell(degreesOfFreedom);
}
