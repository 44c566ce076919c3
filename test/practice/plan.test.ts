import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Answer } from '../../src/practice/answers.ts';
import {
  type Listed,
  mixed,
  NEW_IN_SITTING,
  recurring,
  revisionPlan,
  SITTING,
  tallyOf,
  topicPlan,
} from '../../src/practice/plan.ts';
import type { Standing } from '../../src/practice/schedule.ts';

const NOW = '2031-06-01T12:00:00.000Z';
const day = (days: number): string => new Date(Date.parse(NOW) + 86_400_000 * days).toISOString();

const standing = (dueIn: number, change: Partial<Standing> = {}): Standing => ({
  due: day(dueIn),
  last: day(dueIn - 4),
  stabilityDays: 4,
  difficulty: 5,
  ...change,
});

const questions = fc
  .array(fc.constantFrom('ratios', 'volts', 'lines'), { maxLength: 60 })
  .map((topics) => topics.map((topic, index): Listed => ({ id: `q${index}`, topic })));

/** Questions, some of which were asked before. */
const asked = questions.chain((all) =>
  fc.tuple(
    fc.constant(all),
    fc.array(fc.option(fc.integer({ min: -40, max: 40 }), { nil: undefined }), {
      minLength: all.length,
      maxLength: all.length,
    }),
  ),
);
const standingsOf = (all: readonly Listed[], dues: readonly (number | undefined)[]) =>
  new Map(all.flatMap(({ id }, at) => (dues[at] === undefined ? [] : [[id, standing(dues[at])] as const])));

describe('mixed questions', () => {
  it('are all there, and within a topic in their order', () => {
    fc.assert(
      fc.property(questions, (all) => {
        const order = mixed(all);
        for (const topic of new Set(all.map((one) => one.topic)))
          expect(order.filter((one) => one.topic === topic)).toEqual(
            all.filter((one) => one.topic === topic),
          );
        expect(order).toHaveLength(all.length);
      }),
    );
  });

  it('follow one of their own topic only where nothing else is left', () => {
    fc.assert(
      fc.property(questions, (all) => {
        const order = mixed(all);
        order.forEach(({ topic }, at) => {
          if (at > 0 && order[at - 1]?.topic === topic)
            expect(order.slice(at).every((later) => later.topic === topic)).toBe(true);
        });
      }),
    );
  });
});

describe('a mixed sitting', () => {
  it('asks nothing that rests, each question once, and no more than a sitting holds', () => {
    fc.assert(
      fc.property(asked, ([all, dues]) => {
        const standings = standingsOf(all, dues);
        const plan = revisionPlan(all, standings, NOW);
        expect(new Set(plan.map(({ id }) => id)).size).toBe(plan.length);
        expect(plan.length).toBeLessThanOrEqual(SITTING);
        const resting = plan.filter(({ id }) => (dues[Number(id.slice(1))] ?? 0) > 0);
        expect(resting).toEqual([]);
      }),
    );
  });

  it('asks everything that is due while there is room, and then what is new', () => {
    fc.assert(
      fc.property(asked, ([all, dues]) => {
        const standings = standingsOf(all, dues);
        const plan = revisionPlan(all, standings, NOW);
        const { due, fresh } = tallyOf(all, standings, NOW);
        const old = plan.filter(({ id }) => standings.has(id)).length;
        expect(old).toBe(Math.min(due, SITTING));
        expect(plan.length - old).toBe(Math.min(fresh, NEW_IN_SITTING, SITTING - old));
      }),
    );
  });

  it('leaves for later what can wait best', () => {
    const all = Array.from({ length: SITTING + 5 }, (_, at): Listed => ({ id: `q${at}`, topic: 'ratios' }));
    const standings = new Map(all.map(({ id }, at) => [id, standing(0, { stabilityDays: at + 1 })]));
    const plan = revisionPlan(all, standings, NOW).map(({ id }) => id);
    expect(plan).toEqual(all.slice(0, SITTING).map(({ id }) => id));
  });
});

describe('a topic', () => {
  it('asks what is due, then what is new, then what rests, the earliest due first', () => {
    const all = ['rests', 'new', 'due', 'rests-longer'].map((id): Listed => ({ id, topic: 'ratios' }));
    const standings = new Map([
      ['rests', standing(3)],
      ['due', standing(-1)],
      ['rests-longer', standing(9)],
    ]);
    expect(topicPlan(all, standings, NOW).map(({ id }) => id)).toEqual([
      'due',
      'new',
      'rests',
      'rests-longer',
    ]);
  });

  it('is counted without a rest', () => {
    fc.assert(
      fc.property(asked, ([all, dues]) => {
        const { fresh, due, resting } = tallyOf(all, standingsOf(all, dues), NOW);
        expect(fresh).toBe(dues.filter((one) => one === undefined).length);
        expect(due).toBe(dues.filter((one) => one !== undefined && one <= 0).length);
        expect(resting).toBe(dues.filter((one) => one !== undefined && one > 0).length);
      }),
    );
  });
});

describe('a misconception', () => {
  const given = (...answers: readonly string[]): readonly Answer[] =>
    answers.map((answer, at) => ({
      at: day(at),
      seed: 1,
      grade: answer === 'right' || answer === 'unsure' ? answer : 'wrong',
      mistake: answer === 'right' || answer === 'unsure' || answer === 'unknown' ? '' : answer,
    }));

  it.each([
    ['once is no habit', { a: given('peak') }, []],
    ['twice in one question comes back', { a: given('peak', 'peak') }, [['peak', 2]]],
    ['in two questions comes back', { a: given('peak'), b: given('right', 'peak') }, [['peak', 2]]],
    [
      'put right in one question of two still stands',
      { a: given('peak', 'right'), b: given('peak') },
      [['peak', 2]],
    ],
    ['put right in both is done with', { a: given('peak', 'right'), b: given('peak', 'peak', 'right') }, []],
    ['is not put right by a guess', { a: given('peak', 'peak', 'unsure') }, [['peak', 2]]],
    ['that nobody recognised is none', { a: given('unknown', 'unknown') }, []],
    [
      'that is more frequent comes first',
      { a: given('x', 'x'), b: given('peak', 'peak', 'peak') },
      [
        ['peak', 3],
        ['x', 2],
      ],
    ],
  ] as const)('%s', (_, answers, wished) => {
    const found = recurring(new Map(Object.entries(answers)));
    expect(found.map(({ mistake, times }) => [mistake, times])).toEqual(wished);
  });
});
