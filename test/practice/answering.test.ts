import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  answerTexts,
  blankGiven,
  type Given,
  givenTexts,
  gradeOf,
  isBlank,
  movedItem,
  notedAnswer,
} from '../../src/practice/answering.ts';
import { drawn, marked, mistakesOf } from '../../src/practice/bank.ts';
import {
  minutesLeft,
  mistakesIn,
  openCount,
  type PaperState,
  rightCount,
} from '../../src/practice/paper-state.ts';
import { bankQuestions } from '../../src/questions/bank/index.ts';
import { allSittings, choiceSitting, orderSitting, placeSitting, typedSitting } from './sittings.ts';

describe('an answer form', () => {
  it('is blank at first, whatever the question', () => {
    for (const sitting of allSittings) {
      expect(isBlank(sitting, blankGiven(sitting.payload)), sitting.id).toBe(true);
      expect(givenTexts(sitting, blankGiven(sitting.payload)), sitting.id).toEqual([]);
    }
  });

  it.each([
    [choiceSitting, 'a', ['27 dBm']],
    [typedSitting, '7', ['7']],
    [placeSitting, 'left', ['at A, near 3 dB']],
    [orderSitting, ['one', 'two', 'three'], ['1 mW', '2 W', '3 W']],
  ] as const)('tells what was answered in the words of the question', (sitting, given, texts) => {
    expect(isBlank(sitting, given)).toBe(false);
    expect(givenTexts(sitting, given)).toEqual(texts);
  });

  it('tells the right answer in the words of the question', () => {
    expect(allSittings.map(answerTexts)).toEqual([
      ['7 dBm'],
      ['7.0 dBm'],
      ['1 mW', '2 W', '3 W'],
      ['at B, at 10 dB'],
    ]);
  });
});

describe('an item that is moved', () => {
  const orders = fc.uniqueArray(fc.constantFrom('a', 'b', 'c', 'd', 'e'), { minLength: 1 });

  it('changes places with its neighbour, and all items stay', () => {
    fc.assert(
      fc.property(orders, fc.nat(4), fc.constantFrom<-1 | 1>(-1, 1), (order: readonly string[], at, by) => {
        const id: string = order[at % order.length] ?? '';
        const moved = movedItem(order, id, by);
        expect(moved.toSorted()).toEqual(order.toSorted());
        const [from, to] = [order.indexOf(id), moved.indexOf(id)];
        expect(to).toBe(Math.min(order.length - 1, Math.max(0, from + by)));
        if (to !== from) expect(movedItem(moved, id, by === 1 ? -1 : 1)).toEqual(order);
      }),
    );
  });

  it('that is none moves nothing', () => {
    expect(movedItem(['a', 'b'], 'z', 1)).toEqual(['a', 'b']);
  });
});

describe('a mark', () => {
  const mark = (outcome: 'right' | 'near' | 'wrong') => ({ outcome, reply: '', misconception: undefined });

  it.each([
    ['right', false, 'right'],
    ['right', true, 'unsure'],
    ['near', false, 'wrong'],
    ['wrong', true, 'wrong'],
  ] as const)('of %s with doubt %s counts as %s', (outcome, unsure, grade) => {
    expect(gradeOf(mark(outcome), unsure)).toBe(grade);
  });

  it('is noted with its numbers, its time and the mistake behind it', async () => {
    const found = await marked(choiceSitting, 'a');
    expect(notedAnswer(choiceSitting, found, { unsure: false, at: '2031-05-04T10:00:00.000Z' })).toEqual({
      at: '2031-05-04T10:00:00.000Z',
      seed: 1,
      grade: 'wrong',
      mistake: 'link-left-out',
    });
  });

  it.each([
    [choiceSitting, 'b', 'right'],
    [choiceSitting, '', 'unread'],
    [typedSitting, '7 dBm', 'right'],
    [typedSitting, '47 dBm', 'near'],
    [typedSitting, 'seven', 'unread'],
    [orderSitting, ['one', 'two', 'three'], 'right'],
    [orderSitting, ['two', 'one', 'three'], 'wrong'],
    [placeSitting, 'right', 'right'],
    [placeSitting, 'left', 'wrong'],
  ] as const)('comes from the bank', async (sitting, given: Given, outcome) => {
    expect((await marked(sitting, given)).outcome).toBe(outcome);
  });
});

describe('the bank, as the pages fetch it', () => {
  it('gives every question of its list, with the numbers of a seed', async () => {
    for (const { id, topic } of bankQuestions())
      expect(await drawn({ id, topic }, 2)).toMatchObject({ id, topic, seed: 2 });
  });

  it('throws for a question that it does not have', async () => {
    await expect(drawn({ id: 'no-such', topic: 'ratios' }, 1)).rejects.toThrow('no-such');
  });

  it('names misconceptions, and leaves out what it does not know', async () => {
    const found = await mistakesOf(['sign-of-loss', 'gone', 'toString']);
    expect([...found.keys()]).toEqual(['sign-of-loss']);
    expect(found.get('sign-of-loss')?.cure).toMatch(/^[a-z]+\/[a-z-]+$/);
  });
});

describe('a paper on the table', () => {
  const paper: PaperState = {
    sittings: allSittings,
    given: new Map(),
    begunMs: 1_000_000,
    hasClock: true,
    handed: undefined,
  };
  const minutes = (count: number): number => paper.begunMs + 60_000 * count;

  it.each([
    [-9999, 6], // the clock was set back
    [0, 6],
    [0.1, 6],
    [5.5, 1],
    [6, 0],
    [60, 0],
  ])('after %d minutes has %i left', (after, left) => {
    expect(minutesLeft(paper, minutes(after))).toBe(left);
  });

  it('without a clock has no end', () => {
    expect(minutesLeft({ ...paper, hasClock: false }, minutes(999))).toBeUndefined();
  });

  it('counts what has no answer; an order left as it was shown has none', () => {
    expect(openCount(paper)).toBe(4);
    const given = new Map<string, Given>([
      [choiceSitting.id, 'a'],
      [orderSitting.id, blankGiven(orderSitting.payload)],
    ]);
    expect(openCount({ ...paper, given })).toBe(3);
    expect(
      openCount({ ...paper, given: new Map([...given, [orderSitting.id, ['one', 'two', 'three']]]) }),
    ).toBe(2);
  });

  it('comes to so many right, and the mistakes behind the others, the most frequent first', async () => {
    const answers = [
      [choiceSitting, 'c'],
      [typedSitting, '47'],
      [orderSitting, ['one', 'two', 'three']],
      [placeSitting, 'left'],
    ] as const;
    const marks = new Map(
      await Promise.all(
        answers.map(async ([sitting, given]) => [sitting.id, await marked(sitting, given)] as const),
      ),
    );
    expect(rightCount(marks)).toBe(1);
    expect(mistakesIn(marks)).toEqual(['sign-of-loss', 'ten-per-doubling']);
  });
});
