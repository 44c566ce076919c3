import { type MismatchMagnitudes, mismatchLimits } from '../mismatch-limits.ts';
import { dilogarithm } from '../special/dilogarithm.ts';
import { arcsine } from './arcsine.ts';
import { constant } from './constant.ts';
import type { Distribution } from './distribution.ts';
import { mismatchThroughTwoPort } from './mismatch-two-port.ts';
import { DB_PER_LOG } from './phase.ts';
import { transformed } from './transformed.ts';

/** 20 lg|1 - r e^(i phase)| for every phase alike: a U shape turned into decibels. Small r keeps all its digits. */
function circle(r: number): Distribution {
  const { limits, density, shareBelow, quantile, sample } = transformed({
    of: arcsine({ centre: 0, halfWidth: 1 }),
    forward: (cosine) => DB_PER_LOG * Math.log1p(r * (r - 2 * cosine)),
    inverse: (level) => (r - Math.expm1(level / DB_PER_LOG) / r) / 2,
    slope: (cosine) => (-2 * r * DB_PER_LOG) / (1 + r * r - 2 * r * cosine),
  });
  // The mean of ln|1 - z| over a circle inside the unit circle is exactly 0 (Jensen's formula); its series in z gives the variance.
  const standardDeviation = DB_PER_LOG * Math.sqrt(2 * dilogarithm(r * r));
  return { shape: 'mismatch', mean: 0, standardDeviation, limits, density, shareBelow, quantile, sample };
}

/**
 * Correction in dB for mismatch between a source and a load of known reflection magnitudes and unknown phases, to the
 * power into an ideal load: 20 lg|1 - Gs Gl|, U-shaped and lopsided; with a two-port between,
 * 20 lg|(1 - Gs S11)(1 - Gl S22) - S21^2 Gs Gl| with all phases independent and alike. Exact: no small-reflection
 * approximation, and the mean is exactly 0 dB. The limits are those of `mismatchLimits`. A constant 0 dB where nothing
 * is reflected.
 *
 * Source: signal-flow analysis of source and load; U shape of unknown phase: JCGM 101, 6.4.6.
 * Shares below: exact, or with a two-port within 1e-5; within 5e-4 where both ends reflect strongly (0.4 and 0.5 through a pad of
 * 3 dB, counted over 22 million settings), and there the density, a mean over 1/64 of the width, within a sixth in the outer tails and
 * within 5 % elsewhere. @throws RangeError as `mismatchLimits`.
 */
export function mismatch(magnitudes: MismatchMagnitudes): Distribution {
  const limits = mismatchLimits(magnitudes);
  const { source, load, between } = magnitudes;
  if (between) return mismatchThroughTwoPort({ source, load, between, limits });
  const r = source * load;
  return r === 0 ? constant(0) : circle(r);
}
