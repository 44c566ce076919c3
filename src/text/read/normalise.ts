/** Distance from the full-width forms of ASCII (U+FF01 to U+FF5E) to ASCII. */
const FULL_WIDTH = 0xfee0;

/**
 * Typed text brought to one spelling, without a change of meaning: every kind of minus is `-`, every kind of space one
 * ordinary space, `+/-` and `+-` are `±`, micro signs are `u`, ohm signs `ohm`; invisible marks are gone.
 */
export function normalise(text: string): string {
  return text
    .replace(/[\uff01-\uff5e]/gu, (wide) => String.fromCharCode(wide.charCodeAt(0) - FULL_WIDTH))
    .replace(/\p{Cf}/gu, '')
    .replace(/[\u2010-\u2013\u2212\ufe63]/gu, '-')
    .replace(/[\u00b5\u03bc]/gu, 'u')
    .replace(/[\u2126\u03a9]/gu, 'ohm')
    .replace(/[\u2019\u02bc]/gu, "'")
    .replace(/\s+/gu, ' ')
    .replace(/\+ ?\/? ?-/gu, '\u00b1')
    .trim();
}
