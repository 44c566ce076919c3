/** An id that nothing else has, as two hexadecimal digits a byte. */
export const randomId = (bytes: number): string =>
  [...crypto.getRandomValues(new Uint8Array(bytes))]
    .map((byte) => byte.toString(16).padStart(2, '0'))
    .join('');
