import { rangeError } from '../quantity.ts';

/** Returns a probability unchanged if it is 0 to 1. @throws RangeError otherwise. */
export function shareWithin(where: string, share: number): number {
  if (!(share >= 0 && share <= 1)) throw rangeError({ where, wish: 'share must be 0 to 1', got: share });
  return share;
}

/** Returns `value` unchanged unless it is not a number; infinities are allowed. @throws RangeError otherwise. */
export function aNumber(where: string, name: string, value: number): number {
  if (Number.isNaN(value)) throw rangeError({ where, wish: `${name} must be a number`, got: value });
  return value;
}
