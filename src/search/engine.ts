import MiniSearch, { type Options, type Query, type SearchOptions, type SearchResult } from 'minisearch';
import type { Kind, Part, SearchDocument } from './document.ts';
import { LONGEST_QUERY } from './query.ts';
import { fold, tokensOf, wordsOf } from './terms.ts';

/** Most words of a query that count. */
const MOST_TERMS = 12;

/** The one set of options that the index is made, read and asked with. */
const options: Options<SearchDocument> = {
  fields: ['title', 'names', 'also', 'heads', 'text'],
  storeFields: ['kind', 'title', 'path', 'names', 'parts'],
  extractField: (document, field) => {
    if (field === 'heads') return document.parts.map(({ title }) => title).join('\n');
    if (field === 'text') return document.parts.map(({ text }) => text).join('\n');
    // nothing is asked for but the fields, what is stored beside them, and the id
    return document[field as keyof SearchDocument] as string;
  },
  stringifyField: (value) => (Array.isArray(value) ? value.join('\n') : String(value)),
  tokenize: wordsOf,
  processTerm: (word) => fold(word) ?? null,
};

/** What somebody who asks wants most, other things being equal: what explains, before what is asked or listed. */
const KINDS: Readonly<Record<Kind, number>> = {
  lesson: 3,
  example: 3,
  word: 2.5,
  page: 2,
  table: 1.5,
  formula: 0.6,
  question: 0.5,
  checks: 0.5,
};

/** How a term may differ: its end may be missing, and letters may be wrong, of numbers none. */
const asking = (share: number, shortest: number): SearchOptions => ({
  boost: { title: 6, names: 6, also: 2, heads: 3 },
  boostDocument: (_id, _term, stored) => KINDS[stored?.kind as Kind],
  prefix: (term) => term.length > 1,
  fuzzy: (term) => (term.length >= shortest && !/\d/.test(term) ? share : false),
  weights: { prefix: 0.4, fuzzy: 0.2 },
});

/** One letter of five may be wrong; where that finds nothing, two in the wrong order as well, and one of a short word. */
const strictly = asking(0.2, 5);
const loosely = asking(0.4, 3);

export type SearchIndex = MiniSearch<SearchDocument>;

/** The index of everything that can be found. */
export function makeIndex(documents: readonly SearchDocument[]): SearchIndex {
  const index = new MiniSearch(options);
  index.addAll(documents);
  return index;
}

/** The index as it was written into a file. @throws if the text is none. */
export const readIndex = (json: string): SearchIndex => MiniSearch.loadJSON(json, options);

/** Something that was found. */
export interface Hit {
  readonly kind: Kind;
  readonly title: string;
  readonly path: string;
  readonly parts: readonly Part[];
  /** Terms by which it was found. */
  readonly terms: readonly string[];
}

/** What a query finds. */
export interface Found {
  /** Whether each has all words of the query; if none has all, those that have some are given. */
  readonly whole: boolean;
  /** Whether the query had a word that can be looked for. */
  readonly said: boolean;
  readonly hits: readonly Hit[];
}

const plain = (text: string): string =>
  wordsOf(text)
    .map((word) => fold(word) ?? word.toLowerCase())
    .join(' ');

/** What is written into the index beside the words comes back as it was. */
const hitOf = ({ kind, title, path, parts, terms }: SearchResult): Hit =>
  ({ kind, title, path, parts, terms }) as Hit;

/** Words of a query that count, as they were typed. */
const asked = (query: string): readonly string[] =>
  tokensOf(query.slice(0, LONGEST_QUERY).normalize('NFKC'))
    .map(({ word }) => word)
    .filter((word) => fold(word) !== undefined)
    .slice(0, MOST_TERMS);

/** Finds what a query asks for, the likeliest first; something whose title is the query comes before all. Never throws. */
export function find(index: SearchIndex, query: string): Found {
  const words = asked(query);
  if (words.length === 0) return { whole: true, said: false, hits: [] };
  const search = (combineWith: 'AND' | 'OR', how: SearchOptions): readonly SearchResult[] =>
    index.search({ combineWith, queries: [...words] } satisfies Query, how);
  const firstOf = (combineWith: 'AND' | 'OR'): readonly SearchResult[] => {
    const found = search(combineWith, strictly);
    return found.length > 0 ? found : search(combineWith, loosely);
  };
  const all = firstOf('AND');
  const found = all.length > 0 ? all : firstOf('OR');
  const name = plain(query);
  const isNamed = ({ title, names }: SearchResult): boolean =>
    [title, ...names].some((each) => plain(String(each)) === name);
  return {
    whole: all.length > 0 || found.length === 0,
    said: true,
    hits: [...found.filter(isNamed), ...found.filter((each) => !isNamed(each))].map(hitOf),
  };
}
