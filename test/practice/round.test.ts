import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GRADES } from '../../src/practice/answers.ts';
import type { ListedQuestion } from '../../src/practice/facts.ts';
import {
  askedNow,
  isAskedLater,
  isOver,
  noRound,
  type RoundAction,
  type RoundState,
  reduceRound,
  sumOf,
} from '../../src/practice/round.ts';
import { strings } from '../../src/practice/strings.ts';

const listed = (...ids: readonly string[]): readonly ListedQuestion[] =>
  ids.map((id) => ({ id, topic: 'ratios' }));

const stateAfter = (actions: readonly RoundAction[], from: RoundState = noRound): RoundState =>
  actions.reduce(reduceRound, from);

const right: RoundAction = { type: 'answered', grade: 'right', mistake: '' };
const wrong: RoundAction = { type: 'answered', grade: 'wrong', mistake: 'peak' };
const next: RoundAction = { type: 'next' };
const begin: RoundAction = { type: 'begin', questions: listed('a', 'b') };

const action = fc.oneof(
  fc
    .uniqueArray(fc.constantFrom('a', 'b', 'c', 'd'), { maxLength: 4 })
    .map((ids): RoundAction => ({ type: 'begin', questions: listed(...ids) })),
  fc
    .record({ grade: fc.constantFrom(...GRADES), mistake: fc.constantFrom('', 'peak', 'sign') })
    .map((went): RoundAction => ({ type: 'answered', ...went })),
  fc.constant(next),
  fc.constant<RoundAction>({ type: 'leave' }),
);

describe('a round', () => {
  it('asks one question after the other and is over after the last', () => {
    const asked = [begin, right, next, right, next].map(
      (_, at, all) => askedNow(stateAfter(all.slice(0, at + 1)))?.id,
    );
    expect(asked).toEqual(['a', 'a', 'b', 'b', undefined]);
    expect(isOver(stateAfter([begin, right, next, right, next]))).toBe(true);
    expect(isOver(noRound)).toBe(false);
  });

  it('asks what went wrong once more at the end, and only once', () => {
    const first = stateAfter([begin, wrong, next, right, next]);
    expect(askedNow(first)).toMatchObject({ id: 'a', again: true });
    expect(isOver(stateAfter([wrong, next], first))).toBe(true);
  });

  it('knows that what went wrong comes once more, and that what was right or asked again does not', () => {
    expect(isAskedLater(stateAfter([begin, wrong]))).toBe(true);
    expect(isAskedLater(stateAfter([begin, right]))).toBe(false);
    expect(isAskedLater(stateAfter([begin, wrong, next, right, next, wrong]))).toBe(false);
    expect(isAskedLater(noRound)).toBe(false);
    expect(strings.round.comesBack({ days: 1, inRound: true })).toBe(
      'It comes back at the end of this round, and tomorrow.',
    );
    expect(strings.round.comesBack({ days: 3, inRound: false })).toBe('It comes back in 3 days.');
  });

  it('does not go on before there is an answer, and takes one answer a question', () => {
    expect(stateAfter([begin, next])).toEqual(stateAfter([begin]));
    expect(stateAfter([begin, right, wrong])).toEqual(stateAfter([begin, right]));
    expect(stateAfter([right])).toEqual(noRound);
  });

  it('can be left at any time', () => {
    expect(stateAfter([begin, wrong, { type: 'leave' }])).toEqual(noRound);
  });

  it('comes to an end whatever is answered', () => {
    fc.assert(
      fc.property(
        fc.array(action, { maxLength: 40 }),
        fc.infiniteStream(fc.constantFrom(right, wrong)),
        (actions, answers) => {
          let state = stateAfter(actions);
          const most = 2 * state.queue.length + 1;
          for (let turn = 0; turn < most && !isOver(state) && state.queue.length > 0; turn++)
            state = stateAfter([answers.next().value ?? right, next], state);
          expect(isOver(state) || state.queue.length === 0).toBe(true);
        },
      ),
    );
  });

  it('never answers more than it has asked', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 40 }), (actions) => {
        const state = stateAfter(actions);
        expect(state.at).toBeLessThanOrEqual(state.queue.length);
        expect(state.went.length - state.at).toBeLessThanOrEqual(1);
        expect(state.went.length).toBeGreaterThanOrEqual(state.at);
      }),
    );
  });
});

describe('the sum of a round', () => {
  it('counts first tries alone, a guess as right but unsure, and each mistake once', () => {
    const unsure: RoundAction = { type: 'answered', grade: 'unsure', mistake: '' };
    const state = stateAfter([begin, wrong, next, unsure, next, wrong, next]);
    expect(sumOf(state)).toEqual({ right: 1, unsure: 1, asked: 2, mistakes: ['peak'] });
  });

  it('names the mistakes of second tries too', () => {
    const other: RoundAction = { type: 'answered', grade: 'wrong', mistake: 'sign' };
    expect(sumOf(stateAfter([begin, wrong, next, right, next, other])).mistakes).toEqual(['peak', 'sign']);
  });
});
