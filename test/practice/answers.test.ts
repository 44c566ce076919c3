import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sheetsInFile } from '../../src/bench/export/sheet-file.ts';
import {
  type Answer,
  answerFrom,
  joinedAnswers,
  LARGEST_SEED,
  MOST_ANSWERS,
  nextSeed,
} from '../../src/practice/answers.ts';
import { answersAsFile, answersInFile } from '../../src/practice/answers-file.ts';
import { anAnswer, answersOf } from './given.ts';

const answers = fc.array(anAnswer, { maxLength: 12 });

describe('answers to a question from two places', () => {
  it('are the same whichever place comes first', () => {
    fc.assert(
      fc.property(answers, answers, (a, b) => {
        expect(joinedAnswers(a, b)).toEqual(joinedAnswers(b, a));
      }),
    );
  });

  it('are each there once, however often they are joined', () => {
    fc.assert(
      fc.property(answers, answers, (a, b) => {
        const joined = joinedAnswers(a, b);
        expect(joinedAnswers(joined, a)).toEqual(joined);
        expect(joinedAnswers(joined, joined)).toEqual(joined);
        for (const answer of [...a, ...b]) expect(joined).toContainEqual(answer);
      }),
    );
  });

  it('stand in the order of time', () => {
    fc.assert(
      fc.property(answers, answers, (a, b) => {
        const times = joinedAnswers(a, b).map(({ at }) => Date.parse(at));
        expect(times).toEqual(times.toSorted((one, other) => one - other));
      }),
    );
  });

  it('are kept to the latest when there are very many', () => {
    const many = Array.from({ length: MOST_ANSWERS + 40 }, (_, minute) => ({
      at: new Date(60_000 * minute).toISOString(),
      seed: 1,
      grade: 'right' as const,
      mistake: '',
    }));
    expect(joinedAnswers(many.slice(0, 100), many.slice(100))).toEqual(many.slice(40));
  });
});

describe('the next seed', () => {
  it('is one at first, another each time, and never too large to type', () => {
    const given: Answer[] = [];
    for (let round = 1; round <= 5; round++) {
      expect(nextSeed(given)).toBe(round);
      given.push({ at: '2031-05-04T00:00:00.000Z', seed: nextSeed(given), grade: 'wrong', mistake: '' });
    }
    expect(nextSeed([{ at: '', seed: LARGEST_SEED, grade: 'right', mistake: '' }])).toBe(1);
  });
});

describe('what claims to be an answer', () => {
  const good = { at: '2031-05-04T10:00:00.000Z', seed: 3, grade: 'wrong', mistake: 'peak-for-rms' };

  it('is taken with its four fields and nothing else', () => {
    expect(answerFrom({ ...good, more: 1 })).toEqual(good);
  });

  it('has its time written in one way, so that letters are in the order of time', () => {
    expect(answerFrom({ ...good, at: '2031-05-04T10:00:00Z' })).toEqual(good);
  });

  it.each([
    { at: 'yesterday' },
    { at: '2031-13-04T10:00:00.000Z' },
    { at: '2031-05-04T10:00:00.000+02:00' },
    { at: 7 },
    { seed: 0 },
    { seed: 1.5 },
    { seed: LARGEST_SEED + 1 },
    { seed: '3' },
    { grade: 'easy' },
    { grade: undefined },
    { mistake: undefined },
  ])('is none with %j', (change) => {
    expect(answerFrom({ ...good, ...change })).toBeUndefined();
  });

  it.each([undefined, null, 'text', 4, []])('is none as %j', (value) => {
    expect(answerFrom(value)).toBeUndefined();
  });

  it('never throws', () => {
    fc.assert(fc.property(fc.anything(), (value) => void answerFrom(value)));
  });
});

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const asBytes = (content: object): Uint8Array =>
  bytes(JSON.stringify({ file: 'how-sure-is-a-watt', version: 1, ...content }));

describe('a file of answers', () => {
  it('gives back what was saved', () => {
    fc.assert(
      fc.property(answersOf, (all) => {
        const file = answersAsFile(all, [], '2031-05-04T10:00:00.000Z');
        const read = file.ok ? answersInFile(bytes(file.text)) : undefined;
        if (all.size === 0) expect(read).toMatchObject({ ok: false });
        else expect(read).toEqual({ ok: true, answers: all, papers: [], notes: [] });
      }),
    );
  });

  it('joins what it has on one question in several places', () => {
    const [one, two] = [1, 2].map((seed) => ({
      at: '2031-05-04T10:00:00.000Z',
      seed,
      grade: 'right',
      mistake: '',
    }));
    const read = answersInFile(
      asBytes({
        practice: [
          { question: 'a', answers: [two] },
          { question: 'a', answers: [one] },
        ],
      }),
    );
    expect(read.ok && [...read.answers]).toEqual([['a', [one, two]]]);
  });

  it('tells of answers without a usable time or question, and takes the others', () => {
    const good = { at: '2031-05-04T10:00:00.000Z' };
    const read = answersInFile(
      asBytes({ practice: [{ question: 'a', answers: [good, { at: 'soon' }] }, { answers: [good] }] }),
    );
    expect(read).toEqual({
      ok: true,
      answers: new Map([['a', [{ ...good, seed: 1, grade: 'right', mistake: '' }]]]),
      papers: [],
      notes: ['2 answers without a usable time or question were left out.'],
    });
    const one = answersInFile(asBytes({ practice: [{ question: 'a', answers: [good, { at: 'soon' }] }] }));
    expect(one.ok && one.notes).toEqual(['1 answer without a usable time or question was left out.']);
  });

  it.each([
    ['a newer one', asBytes({ version: 2, practice: [] }), /later version/],
    [
      'one with nothing usable',
      asBytes({ practice: [{ question: 'a', answers: [{}] }] }),
      /no answer in the file/,
    ],
    ['one of sheets', asBytes({ sheets: [{}] }), /holds sheets/],
    ['one of instruments', asBytes({ instruments: [{}] }), /holds instruments/],
    ['another grade', asBytes({ practice: [{ question: 'a', answers: [{ grade: 'easy' }] }] }), /easy/],
    ['a seed that is none', asBytes({ practice: [{ question: 'a', answers: [{ seed: 0 }] }] }), /at least 1/],
    ['no JSON', bytes('answers'), /no JSON/],
  ])('is refused in one sentence: %s', (_, file, sentence) => {
    expect(answersInFile(file)).toEqual({ ok: false, problem: expect.stringMatching(sentence) });
  });

  it('as version 1 wrote it opens for ever', () => {
    const file = readFileSync(new URL('../corpus/practice-files/practice-1.json', import.meta.url));
    expect(answersInFile(file)).toEqual({
      ok: true,
      notes: [],
      papers: [],
      answers: new Map([
        ['order-of-levels', [{ at: '2031-05-04T10:00:00.000Z', seed: 3, grade: 'unsure', mistake: '' }]],
        [
          'point-at-ratio',
          [
            { at: '2031-05-04T10:02:00.000Z', seed: 1, grade: 'wrong', mistake: 'ten-per-doubling' },
            { at: '2031-05-05T19:30:00.000Z', seed: 2, grade: 'right', mistake: '' },
          ],
        ],
      ]),
    });
  });

  it('is told on the bench, where it does not belong', () => {
    const file = answersAsFile(new Map([['a', []]]), [], '2031-05-04T10:00:00.000Z');
    expect(file.ok && sheetsInFile(bytes(file.text))).toEqual({
      ok: false,
      problem: expect.stringContaining('the page of practice'),
    });
  });

  it('may be anything without a throw', () => {
    fc.assert(
      fc.property(fc.anything(), (value) => {
        expect(() => answersInFile(asBytes({ practice: [value] }))).not.toThrow();
      }),
    );
  });
});
