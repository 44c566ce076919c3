import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { randomFrom } from '#compute';
import { type Answer, GRADES, type Grade } from '../../src/practice/answers.ts';
import { daysUntil, isDue, overdue } from '../../src/practice/due.ts';
import { givenBy, LONGEST_REST_DAYS, standingOf } from '../../src/practice/schedule.ts';
import { first, type Mark, type Memory, next, restAfter } from './second-schedule.ts';

const DAY = 86_400_000;
const START = Date.parse('2031-05-04T18:20:00.000Z');
const MARKS: Readonly<Record<Grade, Mark>> = { wrong: 1, unsure: 2, right: 3 };

const answerAt = (day: number, grade: Grade): Answer => ({
  at: new Date(START + day * DAY).toISOString(),
  seed: 1,
  grade,
  mistake: '',
});

interface Step {
  readonly day: number;
  readonly grade: Grade;
}

/** A history as a reader might leave it: on time, early, late, twice on a day. */
function historyOf(seed: number): readonly Step[] {
  const random = randomFrom(seed);
  const steps: Step[] = [];
  let day = 0;
  for (let count = 3 + Math.floor(18 * random()); count > 0; count--) {
    const chance = random();
    steps.push({ day, grade: chance < 0.25 ? 'wrong' : chance < 0.4 ? 'unsure' : 'right' });
    day += random() < 0.2 ? 0 : Math.ceil(60 * random() ** 3);
  }
  return steps;
}

/** The same history by the second implementation. */
function bySecond(steps: readonly Step[]): Memory & { readonly dueDay: number } {
  let memory: Memory | undefined;
  let [last, dueDay] = [0, 0];
  for (const { day, grade } of steps) {
    const mark = MARKS[grade];
    dueDay = day + restAfter(memory, day - last, mark, LONGEST_REST_DAYS);
    memory = memory ? next(memory, day - last, mark) : first(mark);
    last = day;
  }
  if (memory === undefined) throw new Error('bySecond: wish a step, got none');
  return { ...memory, dueDay };
}

describe('the schedule', () => {
  it.each(Array.from({ length: 50 }, (_, seed) => seed))(
    'agrees with a plain second implementation of the published formulas at every answer of history %i',
    (seed) => {
      const steps = historyOf(seed);
      steps.forEach((_, index) => {
        const upTo = steps.slice(0, index + 1);
        const standing = standingOf(upTo.map(({ day, grade }) => answerAt(day, grade)));
        const wished = bySecond(upTo);
        // the library rounds to eight decimals at each step
        expect(Math.abs((standing?.stabilityDays ?? 0) / wished.stability - 1)).toBeLessThan(1e-6);
        expect(Math.abs((standing?.difficulty ?? 0) / wished.difficulty - 1)).toBeLessThan(1e-6);
        expect(standing?.due).toBe(new Date(START + wished.dueDay * DAY).toISOString());
      });
    },
  );

  it('has nothing to say of a question that was never asked', () => {
    expect(standingOf([])).toBeUndefined();
  });

  it('brings a question back on another day, within a year and a day, whatever was answered', () => {
    const grade = fc.constantFrom(...GRADES);
    const gaps = fc.array(fc.record({ gap: fc.integer({ min: 0, max: 900 }), grade }), {
      minLength: 1,
      maxLength: 30,
    });
    fc.assert(
      fc.property(gaps, (steps) => {
        let day = 0;
        const answers = steps.map((step) => {
          day += step.gap;
          return answerAt(day, step.grade);
        });
        const standing = standingOf(answers);
        const rest = (Date.parse(standing?.due ?? '') - Date.parse(answers.at(-1)?.at ?? '')) / DAY;
        expect(rest).toBeGreaterThanOrEqual(1);
        // the day more: a good answer rests longer than a hard one, whatever the limit
        expect(rest).toBeLessThanOrEqual(LONGEST_REST_DAYS + 1);
        expect(Number.isInteger(rest)).toBe(true);
      }),
    );
  });

  it('lets a question rest longer the better it went', () => {
    const rests = (grade: Grade): number => {
      const standing = standingOf([answerAt(0, 'right'), answerAt(3, grade)]);
      return Date.parse(standing?.due ?? '');
    };
    expect(rests('right')).toBeGreaterThan(rests('unsure'));
    expect(rests('unsure')).toBeGreaterThan(rests('wrong'));
  });

  it('lets a question rest longer after each right answer that was given in time', () => {
    const answers: Answer[] = [];
    let [day, before] = [0, 0];
    for (let round = 0; round < 5; round++) {
      answers.push(answerAt(day, 'right'));
      const due = (Date.parse(standingOf(answers)?.due ?? '') - START) / DAY;
      expect(due - day).toBeGreaterThan(before);
      [before, day] = [due - day, due];
    }
  });
});

describe('a question', () => {
  const standing = { due: '2031-05-09T18:20:00.000Z', last: '2031-05-04T18:20:00.000Z', stabilityDays: 5 };

  it.each([
    ['2031-05-08T23:59:59.999Z', false, 1],
    ['2031-05-09T00:00:00.000Z', true, 0],
    ['2031-06-09T00:00:00.000Z', true, 0],
    ['2031-05-04T18:20:00.000Z', false, 5],
  ])('is due from the beginning of its day on: at %s %s, with %i days to go', (now, due, days) => {
    expect(isDue(standing, now)).toBe(due);
    expect(daysUntil(standing, now)).toBe(days);
  });

  it('has waited as long as it was meant to when the days are its stability', () => {
    expect(overdue(standing, '2031-05-09T01:00:00.000Z')).toBe(1);
    expect(overdue(standing, '2031-05-14T01:00:00.000Z')).toBe(2);
  });
});

describe('an answer by a clock that is far ahead', () => {
  const answers = [answerAt(0, 'right'), answerAt(2, 'unsure'), answerAt(5000, 'right')];
  const nowAt = (day: number): string => answerAt(day, 'right').at;

  it('does not have its question rest for years', () => {
    const standing = standingOf(givenBy(answers, nowAt(2)));
    expect(standing).toEqual(standingOf(answers.slice(0, 2)));
    expect(standing && daysUntil(standing, nowAt(2))).toBeLessThan(LONGEST_REST_DAYS);
    expect(standingOf(givenBy(answers.slice(2), nowAt(2)))).toBeUndefined();
  });

  it('counts once its day has come, and by a clock that is a few hours ahead at once', () => {
    expect(givenBy(answers, nowAt(5000))).toEqual(answers);
    expect(givenBy(answers, nowAt(1.5))).toEqual(answers.slice(0, 2));
  });
});
