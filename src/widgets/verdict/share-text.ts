import { percentText } from '../../text/quantity-text.ts';
import type { Style } from '../../text/style.ts';
import { strings } from './strings.ts';

/** The closest to all and to nothing that one decimal of a percent can say. */
const MOST = 99.9;
const LEAST = 0.1;

/** A probability in percent, which is never rounded to all or nothing. */
export function shareText(style: Style, share: number): string {
  const percent = 100 * share;
  const said = (value: number): string => percentText(style, { percent: value, decimals: 1 });
  if (percent > (MOST + 100) / 2) return strings.over(said(MOST));
  return percent < LEAST / 2 ? strings.under(said(LEAST)) : said(percent);
}
