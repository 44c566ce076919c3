import { finite, positive } from '../quantity.ts';
import { halfTurnSine } from '../special/half-turn-sine.ts';
import { type Member, memberOf, type Standard } from './standard.ts';

/** Cosine of an angle that may be anything: U-shaped between -1 and 1 (JCGM 101, 6.4.6). */
function arcsineShape(): Standard {
  return {
    shape: 'arcsine',
    hasMean: true,
    standardDeviation: Math.SQRT1_2,
    limit: 1,
    density: (z) => 1 / (Math.PI * Math.sqrt((1 - z) * (1 + z))),
    // asin(sqrt((1 + z)/2)) keeps the digits of a small share near the lower end, where asin(z) would lose them.
    lowerShare: (z) => (2 / Math.PI) * Math.asin(Math.sqrt((1 + z) / 2)),
    lowerQuantile: (share) => -Math.cos(Math.PI * share),
    sample: (random) => halfTurnSine(2 * random() - 1),
  };
}

/**
 * U-shaped distribution centre +- halfWidth of an influence that follows a sine of unknown phase, such as a mismatch
 * (JCGM 101, 6.4.6). Standard deviation halfWidth/sqrt(2); the density is infinite at both ends. Unit: the quantity's.
 * @throws RangeError unless centre is finite and halfWidth > 0.
 */
export function arcsine({ centre, halfWidth }: { centre: number; halfWidth: number }): Member {
  return memberOf(arcsineShape(), {
    location: finite('arcsine', 'centre', centre),
    scale: positive('arcsine', 'halfWidth', halfWidth),
  });
}
