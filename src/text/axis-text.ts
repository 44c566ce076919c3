import { powerUnitFor } from './power-units.ts';
import { numberText } from './quantity-text.ts';
import type { Style } from './style.ts';
import { unitText } from './units.ts';

const MOST_DECIMALS = 6;

/**
 * Ticks of an axis of powers in one common unit, as few decimals as each needs: `400`, `450`, ... with `mW` said once.
 * @throws RangeError unless every power is finite.
 */
export function axisPowerText(
  powersW: readonly number[],
  style: Style = 'shown',
): {
  readonly texts: readonly string[];
  readonly unit: string;
} {
  const middle = powersW[Math.floor(powersW.length / 2)] ?? 1;
  const { unit, watts } = powerUnitFor(middle);
  const texts = powersW.map((power) => {
    const value = power / watts;
    return numberText(style, { value, decimals: decimalsOf(value) });
  });
  return { texts, unit: unitText(style, unit, '2') };
}

/** The fewest decimals that give the value back; axis ticks are round, so this is small. */
function decimalsOf(value: number): number {
  for (let decimals = 0; decimals < MOST_DECIMALS; decimals++)
    if (Math.abs(Number(value.toFixed(decimals)) - value) <= 1e-9 * Math.abs(value)) return decimals;
  return MOST_DECIMALS;
}
