import { deflateSync, inflateSync, strFromU8, strToU8 } from 'fflate';
import { bytesOf, lettersOf } from './letters.ts';

/** Letters in front that tell whether what follows came through whole. */
const CHECK_LETTERS = 4;
const CHECK_BYTES = 3;
/** More than this no address says, packed or not; what claims to is not unfolded any further. */
const LONGEST_TEXT = 400_000;

/** What was packed, and whether it came through whole. */
export interface Unpacked {
  /** Where it is not whole, as much as could be read from the start. */
  readonly text: string;
  readonly whole: boolean;
}

/**
 * An address's pairs in fewer letters: compressed (DEFLATE, RFC 1951) on top of words that both sides know, in letters and digits
 * alone, with a check in front. Undefined for what is longer than any address.
 * @param pairs ASCII.
 * @param words text that pairs of this kind often have; the most likely last.
 */
export function packed(pairs: string, words: string): string | undefined {
  if (pairs.length > LONGEST_TEXT) return undefined;
  const bytes = deflateSync(strToU8(pairs, true), { level: 9, dictionary: strToU8(words, true) });
  return lettersOf(checkOf(pairs)) + lettersOf(bytes);
}

/** The pairs that `packed` was given, with the same words; undefined where nothing at all can be read. Never throws. */
export function unpacked(code: string, words: string): Unpacked | undefined {
  const { check, rest } = split(code);
  const bytes = bytesOf(rest);
  if (bytes === undefined || bytes.length === 0) return undefined;
  const text = inflated(bytes, words);
  return text === '' ? undefined : { text, whole: lettersOf(checkOf(text)) === check };
}

/** Check and rest; a letter of the check may be two signs. */
function split(code: string): { check: string; rest: string } {
  const check = new RegExp(`^(?:z.|[^z]){${CHECK_LETTERS}}`, 's').exec(code)?.[0] ?? code;
  return { check, rest: code.slice(check.length) };
}

/** As much as can be unfolded, damaged or not: the text has no zeros, so that the first one is behind its end. */
function inflated(bytes: Uint8Array, words: string): string {
  const out = new Uint8Array(LONGEST_TEXT);
  try {
    inflateSync(bytes, { out, dictionary: strToU8(words, true) });
  } catch {
    // What was unfolded until then stands in `out`.
  }
  const end = out.indexOf(0);
  return strFromU8(end < 0 ? out : out.subarray(0, end), true);
}

/** 24 bits that one changed letter changes (FNV-1a folded). */
function checkOf(text: string): Uint8Array {
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  const folded = (hash ^ (hash >>> 8)) >>> 0;
  return new Uint8Array(CHECK_BYTES).map((_, index) => (folded >>> (8 * index)) & 0xff);
}
