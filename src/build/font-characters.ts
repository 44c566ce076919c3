/** A run of characters by their first and last code point. */
const run = (first: number, last: number): string =>
  String.fromCodePoint(...Array.from({ length: last - first + 1 }, (_, i) => first + i));

/**
 * The characters that the site's text face keeps: Latin for English, Greek, superior and inferior figures, and the signs of
 * measuring. What is not here falls back to the system's face.
 */
export function fontCharacters(): string {
  const latin = run(0x20, 0x7e) + run(0xa0, 0xff);
  const greek = run(0x391, 0x3a1) + run(0x3a3, 0x3a9) + run(0x3b1, 0x3c9);
  const figures = `${run(0x2070, 0x2071) + run(0x2074, 0x207e) + run(0x2080, 0x208e)}⅓⅔⅛`;
  const punctuation = '–—‘’‚“”„†‡•…‰′″‹›€™\u2009\u200a\u202f\u2011\u2212';
  const signs = '←↑→↓↔⇒⇔∂∆∏∑√∝∞∠∫≈≠≤≥∈⋅×÷±·µΩ℮◊○●■□▲△▼▽✓';
  return latin + greek + figures + punctuation + signs;
}
