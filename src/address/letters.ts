/**
 * Bytes in letters and digits alone, which nothing between two readers rewrites: six bits a sign, and the last three of 64 values
 * take two signs. That makes it a twentieth longer than 64 signs of which two are marks.
 */
const SIGNS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxy';
/** Stands before 0, 1 or 2 for the values that have no sign of their own. */
const ESCAPE = 'z';
const BITS = 6;
const BYTE = 8;

/** @returns letters and digits only; empty for no bytes. */
export function lettersOf(bytes: Uint8Array): string {
  let held = 0;
  let bits = 0;
  let out = '';
  const put = (value: number): void => {
    out += SIGNS[value] ?? `${ESCAPE}${value - SIGNS.length}`;
  };
  for (const byte of bytes) {
    held = (held << BYTE) | byte;
    bits += BYTE;
    while (bits >= BITS) {
      bits -= BITS;
      put((held >> bits) & 0x3f);
      held &= (1 << bits) - 1;
    }
  }
  if (bits > 0) put((held << (BITS - bits)) & 0x3f);
  return out;
}

/** The bytes behind letters, as many as are whole; undefined where a sign is none of ours. */
export function bytesOf(letters: string): Uint8Array | undefined {
  const bytes: number[] = [];
  let held = 0;
  let bits = 0;
  for (let at = 0; at < letters.length; at++) {
    const value = valueAt(letters, at);
    if (value === undefined) return undefined;
    if (value >= SIGNS.length) at++;
    held = (held << BITS) | value;
    bits += BITS;
    if (bits >= BYTE) {
      bits -= BYTE;
      bytes.push(held >> bits);
      held &= (1 << bits) - 1;
    }
  }
  return new Uint8Array(bytes);
}

/** The value of the sign at a place, or of that sign and the next. */
function valueAt(letters: string, at: number): number | undefined {
  const sign = letters.charAt(at);
  const value = sign === ESCAPE ? SIGNS.length + '012'.indexOf(letters[at + 1] ?? '!') : SIGNS.indexOf(sign);
  return value < 0 || (sign === ESCAPE && value < SIGNS.length) ? undefined : value;
}
