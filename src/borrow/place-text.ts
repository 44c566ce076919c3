import { fewestDecimals } from '../text/place.ts';
import { quantityText } from '../text/quantity-text.ts';
import type { Style } from '../text/style.ts';
import type { Along } from './entries.ts';

/** Decimals of a level that is a mean of readings, and the most of a frequency as it was typed. */
const LEVEL_DECIMALS = 2;
const FREQUENCY_DECIMALS = 6;

/** Where readings were taken: `7.35 dBm`, `3.58 MHz`. */
export const placeText = (along: Along, at: number, style: Style = 'shown'): string =>
  along === 'level'
    ? quantityText(style, { value: at, decimals: LEVEL_DECIMALS, unit: 'dBm' })
    : quantityText(style, { value: at, decimals: fewestDecimals(at, FREQUENCY_DECIMALS), unit: 'MHz' });
