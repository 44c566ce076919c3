import type { LinkUnit } from '../../sheet/method.ts';

/** Least and greatest amount that a rung may add, and the step, in dB. */
export const AMOUNT = { min: 0, max: 3, step: 0.01, decimals: 2 } as const;
/** The same in percent, of volts or of power: beyond half, nothing is a small deviation. */
const PERCENT_AMOUNT = { ...AMOUNT, max: 50 } as const;

/** What a rung's amount may be, by the unit it is stated in. */
export const rangeOf = ({ unit }: { readonly unit: LinkUnit }) =>
  unit === 'dB'
    ? ({ kind: 'halfWidthDb', unit: 'dB', range: AMOUNT } as const)
    : ({ kind: 'percent', unit: 'percent', range: PERCENT_AMOUNT } as const);
