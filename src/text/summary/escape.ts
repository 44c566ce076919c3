import { cleanText } from '../clean.ts';
import { cleanedApart, inDirection, withoutIsolates } from '../isolate.ts';

/** The reader's words as plain text: one line, no control characters; what runs from right to left is kept apart. */
export const plainWords = (text: string): string =>
  inDirection(cleanedApart(text, cleanText).replace(/ +/g, ' ').trim());

/**
 * Words without web and mail addresses: boards make links of them however they are escaped, and labels may come from
 * somebody else's address. A space breaks them up.
 */
const unlinked = (text: string): string =>
  text
    .replace(/:(?=\/\/)/g, ': ')
    .replace(/www\./gi, 'www .')
    .replace(/@/g, ' @ ');

/** Marks that Markdown gives a meaning to; CommonMark lets each be escaped by a backslash. */
const MARKDOWN = /[\\`*_{}[\]<>()#+\-.!|~&$:@=^"'/]/g;

/** The reader's words in Markdown: nothing in them becomes a link, a mark or a tag (CommonMark 2.4). */
export const markdownWords = (text: string): string => unlinked(plainWords(text)).replace(MARKDOWN, '\\$&');

/**
 * The reader's words in BBCode, which knows no escape: square brackets become round ones, and an asterisk, which begins a list's
 * item on some boards, the sign of multiplication that looks like it.
 */
export const bbcodeWords = (text: string): string =>
  unlinked(plainWords(text)).replaceAll('[', '(').replaceAll(']', ')').replaceAll('*', '\u2217');

const asciiOf = (): Readonly<Record<string, string>> => ({
  '\u2212': '-',
  '\u2010': '-',
  '\u2011': '-',
  '\u2013': '-',
  '\u2014': '-',
  '\u2018': "'",
  '\u2019': "'",
  '\u201c': '"',
  '\u201d': '"',
  '\u2026': '...',
  '\u00b1': '+/-',
  '\u00d7': 'x',
  '\u00b7': '.',
  '\u00b0': 'deg',
  '\u00b5': 'u',
  '\u03bc': 'u',
  '\u03a9': 'ohm',
  '\u2126': 'ohm',
  '\u00df': 'ss',
  '\u00e6': 'ae',
  '\u00c6': 'AE',
  '\u0153': 'oe',
  '\u00f8': 'o',
  '\u00d8': 'O',
  '\u0142': 'l',
  '\u0141': 'L',
  '\u0111': 'd',
});

/** The reader's words in ASCII: accents go, what has no likeness becomes `?`. The Unicode form keeps everything. */
export function asciiWords(text: string): string {
  const table = asciiOf();
  return [...withoutIsolates(plainWords(text))]
    .map((char) => table[char] ?? char)
    .join('')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^ -~]/gu, '?');
}
