import { inDirection } from './isolate.ts';

/** Longest piece of foreign text that is repeated in a sentence. */
const QUOTED_LENGTH = 40;

/** Printable ASCII, which is clean as it is: nearly all of what is typed. */
const PRINTABLE = /^[ -~]*$/;

/**
 * Text from outside without what could disturb the text around it: control characters, line ends, marks that turn the
 * direction of writing (Unicode Bidi_Control), invisible formatting and halves of surrogate pairs. Spaces of all kinds
 * become ordinary ones. The joiners U+200C and U+200D stay: some scripts need them for spelling.
 */
export function cleanText(text: string): string {
  if (PRINTABLE.test(text)) return text;
  return text
    .toWellFormed()
    .replace(/[\s\u0085]/gu, ' ')
    .replace(/(?![\u200c\u200d])[\p{Cc}\p{Cf}\p{Cs}\p{Co}\p{Cn}\ufffd]/gu, '');
}

/** Foreign text as repeated in a sentence: cleaned, cut to 40 characters, in quotation marks. */
export function quoted(text: string): string {
  const clean = [...cleanText(text.slice(0, 4 * QUOTED_LENGTH)).trim()];
  const cut =
    clean.length > QUOTED_LENGTH ? `${clean.slice(0, QUOTED_LENGTH).join('')}\u2026` : clean.join('');
  return `\u201c${inDirection(cut)}\u201d`;
}

/** "a", "a or b", "a, b or c". */
export function orList(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} or ${last}`;
}
