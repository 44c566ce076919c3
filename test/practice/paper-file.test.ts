import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answersAsFile, answersInFile } from '../../src/practice/answers-file.ts';
import type { BegunPaper } from '../../src/practice/begun-paper.ts';
import type { PaperById } from '../../src/practice/paper-file.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const SAVED = '2031-05-06T08:00:00.000Z';
const asFile = (content: object): Uint8Array =>
  bytes(JSON.stringify({ file: 'how-sure-is-a-watt', version: 1, ...content }));

const given = fc.oneof(
  fc.constantFrom('a', 'b', '26,8 dBm', '0.5', '−7 dBm', 'about ten'),
  fc.uniqueArray(fc.constantFrom('one', 'two', 'three', 'four'), { minLength: 2 }),
);
const paper: fc.Arbitrary<BegunPaper> = fc.record({
  version: fc.constant(1 as const),
  seed: fc.integer({ min: 1, max: 9999 }),
  length: fc.integer({ min: 5, max: 60 }),
  topics: fc.constantFrom('', 'ratios', 'ratios.volts'),
  count: fc.integer({ min: 1, max: 60 }),
  hasClock: fc.boolean(),
  spentMs: fc.integer({ min: 0, max: 1e10 }),
  answers: fc.array(
    fc.record({
      id: fc.constantFrom('watts-to-dbm', 'doublings'),
      asked: fc.integer({ min: 0, max: 2 ** 32 - 1 }),
      given,
    }),
    { maxLength: 60 },
  ),
});
const papers: fc.Arbitrary<readonly PaperById[]> = fc.array(
  fc.record({ id: fc.stringMatching(/^[0-9a-f]{0,16}$/), paper }),
  { minLength: 1, maxLength: 4 },
);

describe('papers in a file', () => {
  it('come back as they were', () => {
    fc.assert(
      fc.property(papers, (all) => {
        const file = answersAsFile(new Map(), all, SAVED);
        const read = file.ok ? answersInFile(bytes(file.text)) : undefined;
        expect(read).toEqual({ ok: true, answers: new Map(), papers: all, notes: [] });
      }),
    );
  });

  it('are no list where there are none: the file is as it was before papers went into it', () => {
    const file = answersAsFile(new Map([['a', []]]), [], SAVED);
    expect(file.ok && Object.keys(JSON.parse(file.text))).toEqual(['file', 'version', 'saved', 'practice']);
  });

  it('that could not be used are told and left out, and the others are taken', () => {
    const read = answersInFile(asFile({ papers: [{ id: 'a1' }, { id: 'no id' }] }));
    expect(read).toMatchObject({
      ok: true,
      papers: [{ id: 'a1', paper: { seed: 1, length: 20, count: 20, answers: [] } }],
      notes: ['1 mock paper that could not be used was left out.'],
    });
    expect(answersInFile(asFile({ papers: [{ id: '?' }] }))).toMatchObject({ ok: false });
  });

  it.each([
    ['a number that no paper has', { seed: 0 }],
    ['more questions than any has', { count: 61 }],
    ['another clock', { clock: 'sand' }],
    ['time that runs backwards', { spentMs: -1 }],
    ['an answer of another kind', { answers: [{ id: 'a', kind: 'guess' }] }],
  ])('are refused as a whole in one sentence, like all of a file: %s', (_, damage) => {
    expect(answersInFile(asFile({ papers: [damage] }))).toEqual({
      ok: false,
      problem: expect.stringMatching(/^\S.*\.$/s),
    });
  });

  it('may be anything without a throw', () => {
    fc.assert(
      fc.property(fc.anything(), (value) => {
        expect(() => answersInFile(asFile({ papers: [value] }))).not.toThrow();
      }),
    );
  });

  it('as they were first written open for ever', () => {
    const file = readFileSync(new URL('../corpus/practice-files/practice-1-papers.json', import.meta.url));
    expect(answersInFile(file)).toEqual({
      ok: true,
      notes: [],
      answers: new Map([
        ['doublings', [{ at: '2031-05-04T10:00:00.000Z', seed: 3, grade: 'right', mistake: '' }]],
      ]),
      papers: [
        {
          id: '',
          paper: {
            version: 1,
            seed: 7,
            length: 20,
            topics: '',
            count: 20,
            hasClock: false,
            spentMs: 0,
            answers: [],
          },
        },
        {
          id: '0123456789abcdef',
          paper: {
            version: 1,
            seed: 40,
            length: 6,
            topics: 'ratios.volts',
            count: 6,
            hasClock: true,
            spentMs: 61_000,
            answers: [
              { id: 'watts-to-dbm', asked: 4_000_000_000, given: '26,8 dBm' },
              { id: 'order-of-levels', asked: 12, given: ['minus', 'one', 'low', 'middle', 'watts', 'high'] },
            ],
          },
        },
      ],
    });
  });
});
