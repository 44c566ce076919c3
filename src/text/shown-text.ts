import type { Decimal } from './style.ts';

/** The number of a rule, which is left; or a number with a point, also before the full stop of a sentence, but no part of a version. */
const NUMBER = /No\.[\s\d.]+|(^|[^\d.,])(\d+)\.(\d+)(?!\.?\d)/g;

/**
 * A text that this site made to be seen, with the reader's decimal sign in its numbers: `10 lg 2.5 = 3.98 dB.` is `10 lg 2,5 = 3,98 dB.`
 * For whole sentences; where a number is at hand its style says the sign. Not for a field, where the text is read back (`fieldText`).
 */
export const shownText = (text: string, decimal: Decimal): string =>
  decimal === 'point'
    ? text
    : text.replace(NUMBER, (all, before: string, whole: string | undefined, fraction: string) =>
        whole === undefined ? all : `${before}${whole},${fraction}`,
      );
