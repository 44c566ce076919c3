import { aNumber } from './share.ts';

const ONE_OVER_ROOT_PI = 0.5641895835477563;
/** End of Cody's first interval. */
const SMALL = 0.46875;

/** exp(-y^2), with y split so that the square's rounding does not reach the exponent. */
function expMinusSquare(y: number): number {
  const coarse = Math.trunc(y * 16) / 16;
  return Math.exp(-coarse * coarse) * Math.exp(-(y - coarse) * (y + coarse));
}

/** erf(x) for |x| <= 0.46875 (Cody's first interval). */
function erfCentre(x: number): number {
  const z = x * x;
  const top =
    (((0.18577770618460315 * z + 3.1611237438705655) * z + 113.86415415105016) * z + 377.485237685302) * z +
    3209.3775891384694;
  const bottom =
    (((z + 23.601290952344122) * z + 244.02463793444417) * z + 1282.6165260773723) * z + 2844.236833439171;
  return (x * top) / bottom;
}

/** erfc(y) exp(y^2) for 0.46875 <= y <= 4 (Cody's second interval). */
function scaledMiddle(y: number): number {
  const top =
    (((((((2.1531153547440383e-8 * y + 0.5641884969886701) * y + 8.883149794388377) * y + 66.11919063714163) *
      y +
      298.6351381974001) *
      y +
      881.952221241769) *
      y +
      1712.0476126340707) *
      y +
      2051.0783778260716) *
      y +
    1230.3393547979972;
  const bottom =
    (((((((y + 15.744926110709835) * y + 117.6939508913125) * y + 537.1811018620099) * y +
      1621.3895745666903) *
      y +
      3290.7992357334597) *
      y +
      4362.619090143247) *
      y +
      3439.3676741437216) *
      y +
    1230.3393548037495;
  return top / bottom;
}

/** erfc(y) exp(y^2) for y >= 4 (Cody's third interval). */
function scaledFar(y: number): number {
  const z = 1 / (y * y);
  const top =
    ((((0.016315387137302097 * z + 0.30532663496123236) * z + 0.36034489994980445) * z +
      0.12578172611122926) *
      z +
      0.016083785148742275) *
      z +
    0.0006587491615298378;
  const bottom =
    ((((z + 2.568520192289822) * z + 1.8729528499234673) * z + 0.5279051029514285) * z +
      0.06051834131244132) *
      z +
    0.0023352049762686918;
  return (ONE_OVER_ROOT_PI - (z * top) / bottom) / y;
}

/**
 * Complementary error function, 1 - erf(x), any x (infinite too). No unit.
 *
 * Rational approximations of W. J. Cody, "Rational Chebyshev approximations for the error function", Math. Comp. 23
 * (1969), 631 to 637. Worst relative error against 50-digit values, -6 <= x <= 26: 1e-14. @throws RangeError for NaN.
 */
export function erfc(x: number): number {
  aNumber('erfc', 'x', x);
  if (Math.abs(x) <= SMALL) return 1 - erfCentre(x);
  const y = Math.abs(x);
  const far = y > 27 ? 0 : expMinusSquare(y) * (y <= 4 ? scaledMiddle(y) : scaledFar(y));
  return x > 0 ? far : 2 - far;
}

/** Error function, any x (infinite too); source and accuracy as `erfc`. @throws RangeError for NaN. */
export function erf(x: number): number {
  aNumber('erf', 'x', x);
  if (Math.abs(x) <= SMALL) return erfCentre(x);
  return x > 0 ? 1 - erfc(x) : erfc(-x) - 1;
}
