import { asciiWords } from '../text/summary/escape.ts';

/** Longest name without its ending: what mail and old disks take. */
const LONGEST = 48;

/** Names that some systems keep for themselves. */
const RESERVED = /^(?:con|prn|aux|nul|com\d|lpt\d)$/;

/** A name for a file from the reader's words: small letters, digits and hyphens; `sheet` where nothing of them is left. */
export function fileName(words: string, ending: string): string {
  const plain = asciiWords(words)
    .toLowerCase()
    .replace(/'/g, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-/, '')
    .slice(0, LONGEST)
    .replace(/-$/, '');
  return `${plain === '' || RESERVED.test(plain) ? 'sheet' : plain}.${ending}`;
}
