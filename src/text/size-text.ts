/** Size of a file in words: `812 bytes`, `4.2 kB`, `5.0 MB`; powers of ten, as file managers of today count (IEC 80000-13). */
export function sizeText(bytes: number): string {
  if (bytes < 1000) return `${bytes} bytes`;
  const [value, unit] = bytes < 999_500 ? [bytes / 1e3, 'kB'] : [bytes / 1e6, 'MB'];
  return `${value.toFixed(value < 9.95 ? 1 : 0)}\u00a0${unit}`;
}
