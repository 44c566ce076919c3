import { rangeError } from '#compute';
import { numberText, percentText } from './quantity-text.ts';
import { type Style, signsOf } from './style.ts';

function checkedShare(where: string, share: number): number {
  if (!(share >= 0 && share <= 1)) throw rangeError({ where, wish: 'share must be from 0 to 1', got: share });
  return share;
}

/** A share that was added up from others, which may miss 0 or 1 by the last bit. */
export const addedShare = (share: number): number => Math.min(1, Math.max(0, share));

/** A share as a percentage with the zeros left off that say nothing: 0.95 is `95 %`, 0.9545 is `95.45 %`. @throws RangeError outside 0 to 1. */
export function shareText(style: Style, share: number): string {
  const percent = 100 * checkedShare('shareText', share);
  const digits = percent.toFixed(2).replace(/\.?0+$/, '');
  return percentText(style, { percent, decimals: digits.split('.')[1]?.length ?? 0 });
}

/**
 * A probability as one says it: `66 %`; a tenth of a percent below 1 % and above 99 %; `less than 0.1 %` and `more than
 * 99.9 %` beyond, since no model of a home measurement bears more.
 * @throws RangeError outside 0 to 1.
 */
export function probabilityText(style: Style, probability: number): string {
  const percent = 100 * checkedShare('probabilityText', probability);
  if (percent < 0.1) return `less than ${percentText(style, { percent: 0.1, decimals: 1 })}`;
  if (percent > 99.9) return `more than ${percentText(style, { percent: 99.9, decimals: 1 })}`;
  return percentText(style, { percent, decimals: percent < 1 || percent > 99 ? 1 : 0 });
}

/**
 * Coverage factor and coverage probability, which always go together (GUM 7.2.3): `k = 2, 95 %`;
 * spoken `coverage factor 2, coverage probability 95 percent`. A whole factor without decimals, any other to two.
 */
export function coverageText(
  style: Style,
  { factor, probability }: { factor: number; probability: number },
): string {
  const decimals = Number(factor.toFixed(2)) === Math.round(factor) ? 0 : 2;
  const k = numberText(style, { value: factor, decimals });
  const share = shareText(style, probability);
  if (style === 'spoken') return `coverage factor ${k}, coverage probability ${share}`;
  const { space } = signsOf(style);
  return `k${space}=${space}${k}, ${share}`;
}
