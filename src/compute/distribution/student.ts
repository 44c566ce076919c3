import { finite, positive } from '../quantity.ts';
import {
  isAsNormal,
  studentPeak,
  studentProfile,
  studentQuantile,
  studentShareBelow,
} from '../special/student.ts';
import type { Random } from './distribution.ts';
import { normal } from './normal.ts';
import { type Member, memberOf, type Standard } from './standard.ts';

/** A random t by R. W. Bailey's polar method, Math. Comp. 62 (1994), 779 to 781: right for any real degrees. */
function randomStudent(random: Random, degreesOfFreedom: number): number {
  for (;;) {
    const u = 2 * random() - 1;
    const v = 2 * random() - 1;
    const w = u * u + v * v;
    if (w > 0 && w <= 1)
      return u * Math.sqrt((degreesOfFreedom * Math.expm1((-2 / degreesOfFreedom) * Math.log(w))) / w);
  }
}

function studentShape(degreesOfFreedom: number): Standard {
  const n = degreesOfFreedom;
  const peak = studentPeak(n);
  return {
    shape: 'student',
    hasMean: n > 1,
    standardDeviation: n > 2 ? Math.sqrt(n / (n - 2)) : undefined,
    limit: Number.POSITIVE_INFINITY,
    degreesOfFreedom,
    density: (t) => peak * studentProfile(t, n),
    lowerShare: (t) => studentShareBelow({ t, degreesOfFreedom }),
    lowerQuantile: (share) => studentQuantile({ share, degreesOfFreedom }),
    sample: (random) => randomStudent(random, degreesOfFreedom),
  };
}

/**
 * Student's t, moved to `location` and stretched by `scale` (for n readings their mean and s/sqrt(n); JCGM 101, 6.4.9).
 * Its standard deviation is scale x sqrt(n/(n - 2)) for n > 2 degrees and does not exist otherwise; its mean needs
 * n > 1. degreesOfFreedom may be any real number > 0; Infinity (and 1e15 or more) gives the normal distribution. Unit: the
 * quantity's.
 * @throws RangeError unless location is finite, scale > 0 and degreesOfFreedom > 0.
 */
export function student({
  location,
  scale,
  degreesOfFreedom,
}: {
  location: number;
  scale: number;
  degreesOfFreedom: number;
}): Member {
  finite('student', 'location', location);
  positive('student', 'scale', scale);
  if (isAsNormal(degreesOfFreedom)) return normal({ mean: location, standardDeviation: scale });
  positive('student', 'degreesOfFreedom', degreesOfFreedom);
  return memberOf(studentShape(degreesOfFreedom), { location, scale });
}
