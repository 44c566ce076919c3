import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { blankGiven, type Given } from '../../src/practice/answering.ts';
import { begunFrom, begunOf, resumedPaper } from '../../src/practice/begun-paper.ts';
import { MINUTES_EACH } from '../../src/practice/paper.ts';
import { minutesLeft, minutesOf, type PaperState } from '../../src/practice/paper-state.ts';
import { BegunOffer } from '../../src/practice/views/BegunOffer.tsx';
import { allSittings, choiceSitting, orderSitting, typedSitting } from './sittings.ts';

const MINUTE = 60_000;
const wish = { seed: 7, length: 5, topics: 'ratios.volts' };
const answers = new Map<string, Given>([
  [choiceSitting.id, 'b'],
  [typedSitting.id, '7 dBm'],
  [orderSitting.id, ['one', 'two', 'three']],
]);
const table = (change: Partial<PaperState> = {}): PaperState => ({
  sittings: allSittings,
  given: answers,
  begunMs: 100 * MINUTE,
  hasClock: true,
  handed: undefined,
  ...change,
});
/** What comes out of the browser's storage again. */
const stored = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

describe('a paper that is kept', () => {
  it('comes back with its answers, and its clock stood still while it was away', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 12 * MINUTE }),
        fc.integer({ min: 0, max: 1e12 }),
        (spent, away) => {
          const paper = table();
          const left = paper.begunMs + spent;
          const kept = begunFrom(stored(begunOf(paper, wish, left)));
          if (kept === undefined) throw new TypeError('a paper was expected');
          const again = resumedPaper(kept, allSittings, left + away);
          expect(again.given).toEqual(answers);
          expect(minutesLeft(again, left + away)).toBe(minutesLeft(paper, left));
        },
      ),
    );
  });

  it('says what it was made of', () => {
    expect(begunOf(table(), wish, 100 * MINUTE)).toMatchObject({
      ...wish,
      count: allSittings.length,
      hasClock: true,
    });
  });

  it('has no answer where nothing was done, an untouched order included', () => {
    const given = new Map([
      [orderSitting.id, blankGiven(orderSitting.payload)],
      [typedSitting.id, ''],
    ]);
    expect(begunOf(table({ given }), wish, 0).answers).toEqual([]);
  });

  it('leaves out an answer to a question that reads otherwise by now, and keeps the others', () => {
    const kept = begunOf(table(), wish, 100 * MINUTE);
    const changed = allSittings.map((one) =>
      one.id === choiceSitting.id ? { ...one, stem: `${one.stem} Or so.` } : one,
    );
    const again = resumedPaper(kept, changed, 0);
    expect([...again.given.keys()].sort()).toEqual([orderSitting.id, typedSitting.id].sort());
    expect(resumedPaper(kept, [typedSitting], 0).given.size).toBe(1);
  });

  it('has no clock unless it had one', () => {
    const kept = begunOf(table({ hasClock: false }), wish, 101 * MINUTE);
    expect(minutesLeft(resumedPaper(kept, allSittings, 0), 0)).toBeUndefined();
  });
});

describe('what claims to be a kept paper', () => {
  const good = begunOf(table(), wish, 101 * MINUTE);

  it('is taken where it is one', () => {
    expect(begunFrom(stored(good))).toEqual(good);
  });

  it.each([
    ['nothing', undefined],
    ['no object', 7],
    ['null', null],
    ['a list', []],
    ['another version', { ...good, version: 2 }],
    ['a number that no paper has', { ...good, seed: 0 }],
    ['a length that no paper has', { ...good, length: 1e6 }],
    ['half a question', { ...good, count: 1.5 }],
    ['topics that are no text', { ...good, topics: ['ratios'] }],
    ['a clock that is no yes or no', { ...good, hasClock: 'yes' }],
    ['time that runs backwards', { ...good, spentMs: -1 }],
    ['answers that are no list', { ...good, answers: {} }],
    ['an answer that is none', { ...good, answers: [null] }],
    ['an answer to nothing', { ...good, answers: [{ id: 7, asked: 1, given: 'a' }] }],
    ['an answer of another kind', { ...good, answers: [{ id: 'q', asked: 1, given: { a: 1 } }] }],
    ['a flood', { ...good, answers: Array.from({ length: 61 }, () => good.answers[0]) }],
  ])('is none: %s', (_, value) => {
    expect(begunFrom(value)).toBeUndefined();
  });

  it('never throws, whatever it is', () => {
    fc.assert(
      fc.property(fc.anything(), (value) => {
        expect(begunFrom(value)).toBeUndefined();
      }),
    );
  });
});

describe('the minutes that are left', () => {
  it('begin with all of them and never go below none', () => {
    expect(minutesOf(10, 0)).toBe(10 * MINUTES_EACH);
    expect(minutesOf(10, 14.5 * MINUTE)).toBe(1);
    expect(minutesOf(10, 99 * MINUTE)).toBe(0);
  });
});

describe('a text that is longer than any answer', () => {
  it('is kept in part rather than spoil the paper', () => {
    const given = new Map([[typedSitting.id, '7'.repeat(900)]]);
    const kept = begunFrom(stored(begunOf(table({ given }), wish, 0)));
    expect(kept?.answers.map((answer) => answer.given.length)).toEqual([500]);
  });
});

describe('the offer to go on', () => {
  const left = (id: string, hasClock: boolean) => ({
    id,
    text: '',
    paper: { ...begunOf(table({ hasClock }), wish, 102 * MINUTE), topics: '' },
  });
  const offer = (hasClock: boolean, change: Partial<Parameters<typeof BegunOffer>[0]> = {}): string =>
    render(
      <BegunOffer
        left={[left('a', hasClock)]}
        unreadable={0}
        onResume={() => undefined}
        onForget={() => undefined}
        {...change}
      />,
    );

  it('says which paper it is, how far it went, and what its clock has left', () => {
    expect(offer(true)).toContain('Mock paper, number 7, 4 questions, all topics.');
    expect(offer(true)).toContain('3 of 4 answered.');
    expect(offer(true)).toContain('4 minutes left');
    expect(offer(false)).not.toContain('minute');
  });

  it('has a way on and a way out', () => {
    expect(offer(true).match(/<button/g)).toHaveLength(2);
    expect(offer(true)).toContain('A paper that you have not handed in');
  });

  it('has them for each of several, told apart by what each was made of', () => {
    const html = offer(true, { left: [left('a', true), left('b', false)] });
    expect(html).toContain('Papers that you have not handed in');
    const described = [...html.matchAll(/<button[^>]*aria-describedby="([^"]+)"/g)].map(([, id]) => id);
    expect(described).toHaveLength(4);
    expect(new Set(described).size).toBe(2);
    for (const id of described) expect(html).toContain(`<p id="${id}">`);
  });

  it('tells of what cannot be read, though nothing else was left', () => {
    const html = offer(true, { left: [], unreadable: 1 });
    expect(html).toContain('1 paper of these cannot be read by this page');
    expect(html).not.toContain('<button');
  });
});
