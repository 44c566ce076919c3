import { comparingWords } from './words/comparing.ts';
import { decidingWords } from './words/deciding.ts';
import { measuringWords } from './words/measuring.ts';
import { powerWords } from './words/power.ts';
import { unitWords } from './words/units.ts';
import type { Defined, Word } from './words/word.ts';

/** The vocabulary by what it speaks of, each group with its title. */
export const wordGroups: readonly {
  readonly title: string;
  readonly words: Readonly<Record<string, Word>>;
}[] = [
  { title: 'Measuring and doubting', words: measuringWords },
  { title: 'Comparing and passing on', words: comparingWords },
  { title: 'Promising and deciding', words: decidingWords },
  { title: 'Power, levels and ratios', words: powerWords },
  { title: 'Units and what they rest on', words: unitWords },
];

const all: Readonly<Record<string, Word>> = {
  ...measuringWords,
  ...comparingWords,
  ...decidingWords,
  ...powerWords,
  ...unitWords,
};

/** Ids of every word: the last part of its address, `/reference/words/#calibration`. */
export const wordIds = (): readonly string[] => Object.keys(all);

/** The word with an id. @throws RangeError for an id that none has: the build then fails with the id in its message. */
export function wordOf(id: string): Word {
  const word = Object.hasOwn(all, id) ? all[id] : undefined;
  if (word === undefined) throw new RangeError(`wordOf: no word has the id, got ${JSON.stringify(id)}`);
  return word;
}

/** Where a word is defined, with the edition beside its number, and whether the number is from memory. */
export function definedText({ in: document, entry, checked = false }: Defined): string {
  const number = entry === undefined ? '' : ` ${entry}`;
  const memory = checked || entry === undefined ? '' : ' (number from memory)';
  switch (document) {
    case 'vim':
      return `VIM (2012)${number}${memory}`;
    case 'conformity':
      return `JCGM 106 (2012)${number}${memory}`;
    case 'radioRegulations':
      return `ITU Radio Regulations, Article 1${entry === undefined ? '' : `, ${entry}`}${memory}`;
    case 'decibelUse':
      return 'ITU-R V.574';
    case 'siBrochure':
      return `SI Brochure, 9th edition${number}${memory}`;
    case 'trade':
      return 'a word of the trade';
  }
}

/** Ids of the words that a lesson's source tags, in the order in which they first stand there. */
export const wordsIn = (mdx: string): readonly string[] => [
  ...new Set([...mdx.matchAll(/<Word\s+of="([^"]+)"/g)].map(([, id]) => id ?? '')),
];
