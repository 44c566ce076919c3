import type { AddressSpec, NumberSpec } from '../address/field-spec.ts';
import { LARGEST_SEED } from './answers.ts';

/** Shortest and longest paper. */
export const PAPER = { least: 5, most: 60, usual: 20 } as const;
/** Most papers in a row. */
export const MOST_PAPERS = 10;
/** Time for a question on the clock, in minutes: generous for choosing, tight for computing. */
export const MINUTES_EACH = 1.5;

/** What a paper is made of, as the reader chose it. */
export interface PaperWish {
  readonly seed: number;
  readonly length: number;
  /** As in an address: ids with full stops between, empty for all. */
  readonly topics: string;
}

/** What a mock paper, and what worksheets begin with: the state that their addresses leave out. */
export const USUAL_PAPER = { seed: 1, length: PAPER.usual, topics: '' } as const;
export const USUAL_SHEETS = { ...USUAL_PAPER, length: 10, papers: 1, answers: 'none' } as const;

const whole = (
  key: string,
  label: string,
  limits: { min: number; max: number; usual: number },
): NumberSpec => ({
  type: 'number',
  key,
  label,
  kind: 'number',
  min: limits.min,
  max: limits.max,
  default: limits.usual,
  decimals: 0,
  step: 1,
  whole: true,
});

const seed = whole('s', 'Number of the paper', { min: 1, max: LARGEST_SEED, usual: USUAL_PAPER.seed });
const length = whole('n', 'Questions', { min: PAPER.least, max: PAPER.most, usual: USUAL_PAPER.length });
/** Topics by their ids with full stops between; empty for all. */
const topics = {
  type: 'text',
  key: 't',
  label: 'Topics',
  maxLength: 200,
  default: USUAL_PAPER.topics,
} as const;

/** What the address of one question says. */
export const questionAddress = {
  version: 1,
  fields: { seed: { ...seed, label: 'Seed of the numbers' } },
} as const satisfies AddressSpec;

/** What the address of a paper says. */
export const paperAddress = {
  version: 1,
  fields: { seed, length, topics },
} as const satisfies AddressSpec;

/** What the address of worksheets says. */
export const worksheetAddress = {
  version: 1,
  fields: {
    seed,
    length: { ...length, default: USUAL_SHEETS.length },
    topics,
    papers: whole('c', 'Papers', { min: 1, max: MOST_PAPERS, usual: USUAL_SHEETS.papers }),
    answers: {
      type: 'choice',
      key: 'a',
      label: 'Answers',
      choices: { none: 'n', after: 'a' },
      default: USUAL_SHEETS.answers,
    },
  },
} as const satisfies AddressSpec;

/** Topics that an address names; all where it names none that there is. */
export function chosenTopics<Id extends string>(text: string, all: readonly Id[]): readonly Id[] {
  const named = text.split('.');
  const found = all.filter((id) => named.includes(id));
  return found.length === 0 ? all : found;
}

/** The text for an address; all topics are none named. */
export const topicsText = (chosen: readonly string[], all: readonly string[]): string =>
  chosen.length === all.length ? '' : chosen.join('.');

/** Titles of chosen topics; none where all are chosen, or none. */
export const topicTitles = (
  chosen: readonly string[],
  all: readonly { readonly id: string; readonly title: string }[],
): readonly string[] =>
  chosen.length === all.length ? [] : all.filter(({ id }) => chosen.includes(id)).map(({ title }) => title);

/** The numbers of papers in a row; after the largest comes one. */
export const seedsFrom = (first: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, at) => ((first - 1 + at) % LARGEST_SEED) + 1);
