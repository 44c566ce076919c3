import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { LARGEST_SEED } from '../../src/practice/answers.ts';
import type { ListedQuestion } from '../../src/practice/facts.ts';
import {
  chosenTopics,
  MOST_PAPERS,
  paperAddress,
  questionAddress,
  seedsFrom,
  topicsText,
  topicTitles,
  USUAL_PAPER,
  USUAL_SHEETS,
  worksheetAddress,
} from '../../src/practice/paper.ts';
import { drawnPapers, paperPlan } from '../../src/practice/paper-plan.ts';
import { bankQuestions } from '../../src/questions/bank/index.ts';
import { queryWith, readQuery } from '../../src/widgets/parts/address.ts';

const TOPICS = ['ratios', 'volts', 'lines', 'cautions'] as const;

/** A bank of so many questions a topic. */
const bankOf = (counts: readonly number[]): readonly ListedQuestion[] =>
  TOPICS.flatMap((topic, at) =>
    Array.from(
      { length: counts[at] ?? 0 },
      (_, number): ListedQuestion => ({ id: `${topic}-${number}`, topic }),
    ),
  );

const banks = fc.array(fc.integer({ min: 0, max: 12 }), { minLength: 4, maxLength: 4 }).map(bankOf);
const seeds = fc.integer({ min: 1, max: LARGEST_SEED });
const lengths = fc.integer({ min: 5, max: 60 });

describe('a paper', () => {
  it('is the same whenever its number is, and has no question twice', () => {
    fc.assert(
      fc.property(banks, seeds, lengths, (bank, seed, length) => {
        const plan = paperPlan(bank, { seed, length });
        expect(paperPlan(bank, { seed, length })).toEqual(plan);
        expect(new Set(plan.map(({ id }) => id)).size).toBe(plan.length);
        expect(plan).toHaveLength(Math.min(length, bank.length));
      }),
    );
  });

  it('takes as many from one topic as from another, as far as there are any', () => {
    fc.assert(
      fc.property(banks, seeds, lengths, (bank, seed, length) => {
        const plan = paperPlan(bank, { seed, length });
        const taken = TOPICS.map((topic) => plan.filter((one) => one.topic === topic).length);
        const left = TOPICS.map(
          (topic, at) => bank.filter((one) => one.topic === topic).length - (taken[at] ?? 0),
        );
        const most = Math.max(...taken);
        taken.forEach((count, at) => {
          if ((left[at] ?? 0) > 0) expect(count).toBeGreaterThanOrEqual(most - 1);
        });
      }),
    );
  });

  it('keeps to the topics that were chosen', () => {
    const plan = paperPlan(bankOf([9, 9, 9, 9]), { seed: 3, length: 12, topics: ['volts', 'lines'] });
    expect(plan).toHaveLength(12);
    expect(new Set(plan.map(({ topic }) => topic))).toEqual(new Set(['volts', 'lines']));
  });

  it('differs from its ten neighbours', () => {
    const bank = bankOf([14, 14, 14, 14]);
    const papers = seedsFrom(41, MOST_PAPERS).map((seed) =>
      paperPlan(bank, { seed, length: 20 })
        .map(({ id }) => id)
        .join(),
    );
    expect(new Set(papers).size).toBe(MOST_PAPERS);
  });

  it('asks every question of a topic about as often as another over many papers', () => {
    const bank = bankOf([10]);
    const counts = new Map<string, number>();
    const papers = 2000;
    for (const seed of seedsFrom(1, papers))
      for (const { id } of paperPlan(bank, { seed, length: 5 })) counts.set(id, (counts.get(id) ?? 0) + 1);
    // half of them in each paper: a standard deviation of 22 around 1000
    for (const { id } of bank) expect(Math.abs((counts.get(id) ?? 0) - papers / 2)).toBeLessThan(110);
  });
});

describe('papers that are drawn', () => {
  it('have the numbers of their seed, and as many questions as were wished for', async () => {
    const bank = bankQuestions().map(({ id, topic }): ListedQuestion => ({ id, topic }));
    const papers = await drawnPapers(
      bank,
      [3, 4].map((seed) => ({ seed, length: 6 })),
    );
    expect(papers.map(({ seed, sittings }) => [seed, sittings.length])).toEqual([
      [3, 6],
      [4, 6],
    ]);
    expect(papers.map(({ topics }) => topics)).toEqual([[], []]);
    for (const { seed, sittings } of papers)
      expect(sittings.map((one) => [one.id, one.seed])).toEqual(
        paperPlan(bank, { seed, length: 6 }).map(({ id }) => [id, seed]),
      );
  });
});

describe('numbers of papers in a row', () => {
  it('count up, and begin again after the largest', () => {
    expect(seedsFrom(7, 3)).toEqual([7, 8, 9]);
    expect(seedsFrom(LARGEST_SEED, 3)).toEqual([LARGEST_SEED, 1, 2]);
  });
});

describe('topics in an address', () => {
  it('come back as they were chosen; all and none are all', () => {
    fc.assert(
      fc.property(fc.subarray([...TOPICS]), (chosen) => {
        const back = chosenTopics(topicsText(chosen, TOPICS), TOPICS);
        expect(back).toEqual(chosen.length === 0 ? TOPICS : chosen);
      }),
    );
    expect(topicsText(TOPICS, TOPICS)).toBe('');
  });

  it('that nobody knows are passed over', () => {
    expect(chosenTopics('volts.weather', TOPICS)).toEqual(['volts']);
    expect(chosenTopics('weather', TOPICS)).toEqual(TOPICS);
  });
});

describe('titles of topics', () => {
  const all = [
    { id: 'ratios', title: 'Ratios' },
    { id: 'volts', title: 'Volts' },
  ];

  it('are those of the chosen ones in their order, and none where all are meant', () => {
    expect(topicTitles(['volts'], all)).toEqual(['Volts']);
    expect(topicTitles(['volts', 'ratios'], all)).toEqual([]);
    expect(topicTitles([], all)).toEqual([]);
  });
});

describe('addresses of practice', () => {
  it('without a state stand for what the pages begin with', () => {
    expect(defaultState(paperAddress.fields)).toEqual(USUAL_PAPER);
    expect(defaultState(worksheetAddress.fields)).toEqual(USUAL_SHEETS);
  });

  it.each([questionAddress, paperAddress, worksheetAddress])(
    'are made of keys that do not collide',
    (spec) => {
      expect(specFaults(spec)).toEqual([]);
    },
  );

  it('carry a question’s numbers', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const query = queryWith({ spec: questionAddress, state: { seed }, query: '', instance: undefined });
        expect(readQuery(questionAddress, query, undefined).state).toEqual({ seed });
      }),
    );
  });

  it('carry a worksheet whole', () => {
    const state = { seed: 71, length: 25, topics: 'ratios.volts', papers: 10, answers: 'after' } as const;
    const query = queryWith({ spec: worksheetAddress, state, query: '', instance: undefined });
    expect(readQuery(worksheetAddress, query, undefined).state).toEqual(state);
  });

  it.each(['?s=0&v=1', '?s=99999&v=1', '?s=1.5&v=1', '?s=seven&v=1'])(
    'with a seed that is none (%s) tell of it and keep to what can be shown',
    (query) => {
      const { state, problems } = readQuery(questionAddress, query, undefined);
      expect(problems).toHaveLength(1);
      expect(Number.isInteger(state.seed) && state.seed >= 1 && state.seed <= LARGEST_SEED).toBe(true);
    },
  );

  it('as they were given out first open for ever', () => {
    expect(readQuery(questionAddress, '?s=12&v=1', undefined)).toMatchObject({
      state: { seed: 12 },
      problems: [],
    });
    expect(readQuery(paperAddress, '?s=7&n=30&t=volts.lines&v=1', undefined)).toMatchObject({
      state: { seed: 7, length: 30, topics: 'volts.lines' },
      problems: [],
    });
    expect(readQuery(worksheetAddress, '?s=7&n=15&t=&c=10&a=a&v=1', undefined)).toMatchObject({
      state: { seed: 7, length: 15, topics: '', papers: 10, answers: 'after' },
      problems: [],
    });
  });
});
