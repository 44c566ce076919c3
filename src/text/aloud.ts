/** Letters of the trade that a listener would hear as letters, before the sign that gives them a value. */
const LETTERS: Readonly<Record<string, string>> = {
  u: 'standard uncertainty ',
  U: 'expanded uncertainty ',
  k: 'coverage factor ',
  r: 'correlation coefficient ',
  ν: 'degrees of freedom ',
};

const inWords = (text: string): string =>
  text
    .replace(/(?<!\p{L})([uUkrν])\s?=\s?/gu, (_, letter: string) => LETTERS[letter] ?? '')
    .replace(/±\s?/g, 'plus or minus ')
    .replace(/\s?%/g, ' percent');

const finished = (text: string): string => {
  const begun = `${text[0]?.toUpperCase() ?? ''}${text.slice(1)}`;
  return /[.!?…]$/.test(begun) ? begun : `${begun}.`;
};

/**
 * Parts of a summary as sentences for somebody who listens: each begins with a capital and ends with a full stop, and letters of the
 * trade are said in words. What is empty is left out.
 */
export const aloud = (parts: readonly string[]): string =>
  parts
    .filter((part) => part !== '')
    .map((part) => finished(inWords(part)))
    .join(' ');
