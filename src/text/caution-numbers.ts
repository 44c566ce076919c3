import type { CautionStatus } from '#compute';
import { powerText } from './power-text.ts';
import { levelText, quantityText } from './quantity-text.ts';
import type { Style } from './style.ts';
import { toldApart } from './told-apart.ts';

/** Digits of a heat or a power in a caution, and decimals of a level or volts: what it warns of is never known better. */
const DIGITS = 2;
const DECIMALS = 1;

/** How a caution writes a kind of number, with so many digits more than usual. */
export const cautionNumber = {
  power: (style: Style, powerW: number, more = 0): string =>
    powerText(style, { powerW, digits: DIGITS + more }),
  level: (style: Style, levelDbm: number, more = 0): string =>
    levelText(style, { levelDbm, decimals: DECIMALS + more }),
  volts: (style: Style, value: number, more = 0): string =>
    quantityText(style, { value, decimals: DECIMALS + more, unit: 'V' }),
} as const;

export type CautionKind = keyof typeof cautionNumber;

export interface AgainstLimit {
  readonly value: number;
  /** Undefined where none is stated. */
  readonly limit: number | undefined;
  readonly status: CautionStatus;
}

/** A number and its limit as texts; where it is over that, with as many digits as show it. */
export function againstLimit(
  style: Style,
  kind: CautionKind,
  { value, limit, status }: AgainstLimit,
): { readonly value: string; readonly limit: string | undefined } {
  const write = cautionNumber[kind];
  if (limit === undefined) return { value: write(style, value), limit };
  const both = (more: number): readonly [string, string] => [
    write(style, value, more),
    write(style, limit, more),
  ];
  const [own, other] = status === 'exceeded' ? toldApart(both) : both(0);
  return { value: own, limit: other };
}
