import type { Fields, NumberSpec, StateOf } from '../address/field-spec.ts';
import { LARGEST_SEED } from './answers.ts';
import { type BegunAnswer, type BegunPaper, begunFrom, LONGEST_GIVEN } from './begun-paper.ts';
import { PAPER } from './paper.ts';
import { progressStrings as strings } from './progress-strings.ts';

/** A paper that is not handed in, and the id by which it is known. */
export interface PaperById {
  readonly id: string;
  readonly paper: BegunPaper;
}

const whole = (
  key: string,
  label: string,
  [min, max, usual]: readonly [min: number, max: number, usual: number],
): NumberSpec => ({
  type: 'number',
  key,
  label,
  kind: 'number',
  min,
  max,
  default: usual,
  decimals: 0,
  step: 1,
  whole: true,
});

const LONGEST_ID = 60;
const { fields } = strings;

const filedAnswer = {
  id: { type: 'text', key: 'q', label: fields.question, maxLength: LONGEST_ID, default: '' },
  asked: whole('h', fields.asked, [0, 2 ** 32, 0]),
  /** The places of an order are ids with a space between. */
  kind: {
    type: 'choice',
    key: 'k',
    label: fields.kind,
    choices: { one: 'o', order: 'r' },
    default: 'one',
  },
  given: { type: 'text', key: 'a', label: fields.given, maxLength: LONGEST_GIVEN, default: '' },
} as const;

/** A paper that is not handed in, as a file has it. */
export const filedPaper = {
  id: { type: 'text', key: 'i', label: fields.id, maxLength: LONGEST_ID, default: '' },
  seed: whole('s', fields.paper, [1, LARGEST_SEED, 1]),
  length: whole('n', fields.length, [PAPER.least, PAPER.most, PAPER.usual]),
  topics: { type: 'text', key: 't', label: fields.topics, maxLength: 200, default: '' },
  count: whole('c', fields.count, [1, PAPER.most, PAPER.usual]),
  clock: {
    type: 'choice',
    key: 'k',
    label: fields.clock,
    choices: { none: 'n', each: 'e' },
    default: 'none',
  },
  spentMs: whole('m', fields.spent, [0, Number.MAX_SAFE_INTEGER, 0]),
  answers: {
    type: 'list',
    key: 'a',
    label: fields.answers,
    of: filedAnswer,
    maxLength: PAPER.most,
    default: [],
  },
} as const satisfies Fields;

type Filed = StateOf<typeof filedPaper>;

const answerToFile = ({ id, asked, given }: BegunAnswer): Filed['answers'][number] =>
  typeof given === 'string'
    ? { id, asked, kind: 'one', given }
    : { id, asked, kind: 'order', given: given.join(' ') };

/** A paper for a file. */
export function paperToFile({ id, paper }: PaperById): Filed {
  const { seed, length, topics, count, hasClock, spentMs, answers } = paper;
  const clock = hasClock ? 'each' : 'none';
  return { id, seed, length, topics, count, clock, spentMs, answers: answers.map(answerToFile) };
}

/** A paper from a file; undefined where it has no id, or is none. */
export function paperFromFile({ id, clock, answers, ...made }: Filed): PaperById | undefined {
  const paper = begunFrom({
    version: 1,
    ...made,
    hasClock: clock === 'each',
    answers: answers.map(({ kind, given, ...answer }) => ({
      ...answer,
      given: kind === 'one' ? given : given.split(' '),
    })),
  });
  return paper && /^[0-9a-z]*$/.test(id) ? { id, paper } : undefined;
}
