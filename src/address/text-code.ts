import { cleanText } from '../text/clean.ts';

const LAST_CODE_POINT = 0x10ffff;

/** A sign that does not go into an address as it is: its code point in hexadecimal between `_` and `-`. */
const coded = (char: string): string => `_${char.codePointAt(0)?.toString(16)}-`;

/**
 * Text in letters, digits and `- . _` alone: a space is `-`, but a hyphen at the very start is itself, so that numbers stay
 * readable; anything else is its code point in hexadecimal, as in `3-m-of-coax_2c--thin` for `3 m of coax, thin`. No percent
 * signs, which mail and forums rewrite; and a `_` is always followed by a digit or letter, so that it never closes an
 * emphasis in Markdown.
 */
export const encodeText = (text: string): string =>
  text.replace(/[^A-Za-z0-9.]/gsu, (char, index: number) =>
    char === (index === 0 ? '-' : ' ') ? '-' : coded(char),
  );

/** Text of one or several lines without what could disturb the text around it. Tabs stay: they set columns apart. */
export const cleanLines = (text: string): string =>
  text
    .split(/\r\n|\r|\n/)
    .map((line) => line.split('\t').map(cleanText).join('\t'))
    .join('\n');

/**
 * The text of a value, and whether something in it could not be: then what can be read is left, without marks that disturb
 * the text around.
 * @param lines whether line ends belong to the text.
 */
export function decodeText(
  value: string,
  lines = false,
): { readonly text: string; readonly damaged: boolean } {
  const raw = value.replace(/_([0-9a-f]{1,6})-|^-|-/gi, (sign, hex: string | undefined, at: number) => {
    if (hex !== undefined) return charOf(Number.parseInt(hex, 16));
    return at === 0 ? sign : ' ';
  });
  const text = lines ? cleanLines(raw) : cleanText(raw);
  const rest = value.replace(/_[0-9a-f]{1,6}-/gi, '');
  return { text, damaged: text !== raw || !/^[A-Za-z0-9.-]*$/.test(rest) };
}

const charOf = (codePoint: number): string =>
  codePoint <= LAST_CODE_POINT ? String.fromCodePoint(codePoint) : '\ufffd';
