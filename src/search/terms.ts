/** A word or a number; an apostrophe belongs to its word, a point between digits to its number. */
const WORD = /\d+(?:[.,]\d+)*|\p{L}(?:[\p{L}\p{M}]|['’](?=\p{L}))*/gu;

/** A word where it stands in a text. */
export interface Token {
  readonly word: string;
  readonly from: number;
}

/** Words and numbers of a text, in order. */
export const tokensOf = (text: string): readonly Token[] =>
  [...text.matchAll(WORD)].map(({ 0: word, index }) => ({ word, from: index }));

/** The same as mere texts, composed characters (`㎑`, the ohm sign) in their plain form. */
export const wordsOf = (text: string): string[] => tokensOf(text.normalize('NFKC')).map(({ word }) => word);

/** Words that nearly every page has, and that a question in plain words is made of. */
const COMMON = new Set(
  `a an and are as at be but by can do does for from had has have how i if in into is it its me my of on or
  so than that the their them then there these they this to was we were what when where which who why will
  with would you your get gets`.split(/\s+/),
);

/** Endings by which American and British spelling differ, the form of the one for the form of the other; then what a word ends in. */
const ENDINGS: readonly (readonly [RegExp, string])[] = [
  [/(?<=\p{L}{3})is(?=(?:e|es|ed|er|ers|ing|ation|ations)$)/u, 'iz'],
  [/(?<=\p{L}{3})our(?=(?:s|ed|ing|al|able|hood|ite)?$)/u, 'or'],
  [/(?<=\p{L}{4})metre(?=s?$)/u, 'meter'],
  [/^(cen|lit|fib|theat)re(?=s?$)/u, '$1er'],
  [/^(licen|defen|offen)ce(?=[sd]?$)/u, '$1se'],
  [/(?<=\p{L}{3}[aeiou])ll(?=(?:ed|ing|er|ers)$)/u, 'l'],
  [/(?<=\p{L}{2})ies$/u, 'y'],
  [/(?<=ss|sh|ch|x|z)es$/u, ''],
  [/(?<=\p{L}{2}[^aisu\P{L}])s$/u, ''],
  [/(?<=\p{L}{4})(?:at)?(?:ion|ed|ing|or|e)$/u, ''],
];

/**
 * The form in which words are compared: lower case, without accents and apostrophes, one spelling for both sides of the Atlantic,
 * one form for one and several, for doing and done. `undefined` for a word that says nothing.
 */
export function fold(word: string): string | undefined {
  const plain = word
    .normalize('NFKD')
    .replace(/[\p{M}'’]/gu, '')
    .toLowerCase();
  if (plain === '' || COMMON.has(plain)) return undefined;
  return ENDINGS.reduce((term, [ending, other]) => term.replace(ending, other), plain);
}
