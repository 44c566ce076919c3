import { unitNames, unitText } from './units.ts';

/**
 * A sentence with the symbols of its units in words, for those who hear it: "in dBm, W or mW, for example 23 dBm". A symbol is one where it
 * stands behind a number, or in a list: "A level" begins with no ampere.
 */
export function saidUnits(sentence: string): string {
  const words = new Map(
    unitNames().map((unit) => [unitText('shown', unit, '2'), unitText('spoken', unit, '2')] as const),
  );
  return sentence
    .replace(/(?<=\d[ \u00a0]|\b(?:in|or) |, )[^\s,.;:\u201d]+/g, (symbol) => words.get(symbol) ?? symbol)
    .replace(/\u2212(?=\d)/g, 'minus ');
}
