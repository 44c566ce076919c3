/** An address longer than this was not made here: two hundred links with long names have half of it. It is not read. */
export const LONGEST_ADDRESS = 100_000;

/** Percent signs that were themselves escaped (%253D) need a second and third round. */
const ROUNDS = 3;

/** `=3D` for `=`, as mail encodes it, shows itself at the version, whose value is one digit. */
const QUOTED_PRINTABLE = /(?:^|[&.?#])v=3D\d/i;

function quotedPrintable(text: string): string {
  // Soft line breaks may stand anywhere, even within the version.
  const joined = text.replace(/=\r?\n/g, '');
  return QUOTED_PRINTABLE.test(joined)
    ? joined.replace(/=([2-7][0-9a-f])/gi, (_, hex: string) => ascii(hex))
    : text;
}

const ascii = (hex: string): string => String.fromCharCode(Number.parseInt(hex, 16));

function unescaped(text: string): string {
  return text
    .replace(/&(?:amp|#38|#x26);/gi, '&')
    .replace(/%([2-7][0-9a-f])/gi, (_, hex: string) => ascii(hex));
}

/** Without what follows the last sign that an address can end on. A loop, since `+$` would be quadratic on dots. */
function withoutTail(text: string): string {
  let end = text.length;
  while (end > 0 && !/[A-Za-z0-9=&#?%-]/.test(text.charAt(end - 1))) end--;
  return text.slice(0, end);
}

/**
 * An address without the damage that mail and forum software does: `&amp;`, `%23`, `%3D`, `=3D`, line breaks and quotation
 * marks of replies in the middle, punctuation at the end. Nothing of this stands in an address made here, so that
 * taking it away changes no value. A `#` or `?` in the middle separates, like `&`.
 */
export function repaired(address: string): string {
  let text = quotedPrintable(address);
  for (let round = 0; round < ROUNDS; round++) text = unescaped(text);
  return withoutTail(text)
    .replace(/[\s<>"'\\\u00ad\u200b-\u200f\u2018-\u201f\u202a-\u202e\u2060-\u2069\ufeff]/gu, '')
    .replace(/[?#]/g, '&');
}
