import { h } from 'preact';
import { describe, expect, it } from 'vitest';
import { practiceTopics } from '../../src/layouts/practice/topics.ts';
import type { Answers } from '../../src/practice/answers.ts';
import type { PaperWish } from '../../src/practice/paper.ts';
import type { Book } from '../../src/practice/use-book.ts';
import { usePaper } from '../../src/practice/use-paper.ts';
import { AroundContext } from '../../src/practice/views/context.ts';
import { bankQuestions } from '../../src/questions/bank/index.ts';
import { probe } from '../hooks/probe.ts';

const around = {
  root: '/',
  lessons: {},
  questions: bankQuestions().map(({ id, topic }) => ({ id, topic })),
  topics: practiceTopics(),
};
const wish = (seed: number): PaperWish => ({ seed, length: 5, topics: 'ratios' });

/** A paper's page, with what was noted in its book. */
async function page() {
  const noted: Answers[] = [];
  const book: Book = {
    isRead: true,
    answers: new Map(),
    unreadable: 0,
    problem: undefined,
    add: async (answers) => void noted.push(answers),
    note: async () => undefined,
    clear: async () => true,
  };
  const use = await probe(
    () => usePaper(book),
    (inner) => h(AroundContext.Provider, { value: around }, inner),
  );
  const ids = () => use.now().paper?.sittings.map(({ id, seed }) => `${id} ${seed}`);
  return { ...use, ids, noted };
}

describe('a paper', () => {
  it('says what it was made of', async () => {
    const { does, now, ids } = await page();
    await does(({ begin }) => begin(wish(3), false));
    expect(ids()).toHaveLength(5);
    expect(now().made).toEqual(wish(3));
    await does(({ leave }) => leave());
    expect(now()).toMatchObject({ paper: undefined, made: undefined });
  });

  it('is the one that was asked for last, whichever comes first', async () => {
    const whole = { ...wish(4), length: 40, topics: '' }; // takes longer than five questions of one topic
    const { does, now, ids } = await page();
    await does(({ begin }) => Promise.all([begin(whole, false), begin(wish(3), true)]));
    expect(now().made).toEqual(wish(3));
    expect(ids()).toHaveLength(5);
  });

  it('is marked and noted once, however often it is handed in', async () => {
    const { does, now, noted } = await page();
    await does(({ begin }) => begin(wish(3), false));
    const [first] = now().paper?.sittings ?? [];
    if (first === undefined) throw new Error('a paper must have a question');
    await does(({ give }) => give(first.id, first.payload.kind === 'order' ? [] : 'a'));
    await does(({ handIn }) => Promise.all([handIn(), handIn()]));
    expect(now().paper?.handed?.marks.size).toBe(5);
    expect(noted).toHaveLength(1);
  });

  it('counts as it was when it was handed in', async () => {
    const { does, now } = await page();
    await does(({ begin }) => begin(wish(3), false));
    const [first] = now().paper?.sittings ?? [];
    if (first === undefined) throw new Error('a paper must have a question');
    await does(async ({ handIn, give }) => {
      const handed = handIn();
      give(first.id, 'late');
      await handed;
    });
    expect(now().paper?.given.get(first.id)).toBeUndefined();
  });
});
