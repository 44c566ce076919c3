import { cleanText } from '../text/clean.ts';

const CODE_POINT = /\.([0-9a-f]{1,6})\./gi;
const LAST_CODE_POINT = 0x10ffff;

/**
 * A line of text in letters, digits, `-` and `.` alone: a space is `-`, anything else its code point in hexadecimal
 * between points. `3 m of coax, thin` is `3-m-of-coax.2c.-thin`. No percent signs, which mail and forums rewrite.
 */
export const encodeText = (text: string): string =>
  [...text]
    .map((char) => {
      if (/[A-Za-z0-9]/.test(char)) return char;
      return char === ' ' ? '-' : `.${char.codePointAt(0)?.toString(16)}.`;
    })
    .join('');

/**
 * The text of a value, and whether something in it could not be: then what can be read is left, without marks that disturb
 * the text around.
 */
export function decodeText(value: string): { readonly text: string; readonly damaged: boolean } {
  const raw = value.replace(/[^.]+|\.([0-9a-f]{1,6})\.|\./gi, (piece, hex: string | undefined) => {
    if (hex !== undefined) return charOf(Number.parseInt(hex, 16));
    return piece.replaceAll('-', ' ');
  });
  const text = cleanText(raw);
  const rest = value.replace(CODE_POINT, '');
  return { text, damaged: text !== raw || !/^[A-Za-z0-9-]*$/.test(rest) };
}

const charOf = (codePoint: number): string =>
  codePoint <= LAST_CODE_POINT ? String.fromCodePoint(codePoint) : '\ufffd';
