import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { questionIds, questionOf } from '../../src/questions/index.ts';
import { type ChoiceAction, chosenOption, noChoice, reduceChoice } from '../../src/widgets/choice/state.ts';
import { strings } from '../../src/widgets/choice/strings.ts';

const action: fc.Arbitrary<ChoiceAction> = fc.oneof(
  fc.record({ type: fc.constant('choose' as const), option: fc.constantFrom('a', 'b', 'zz') }),
  fc.constant({ type: 'give' } as const),
  fc.constant({ type: 'again' } as const),
  fc.record({ type: fc.constant('recall' as const), option: fc.constantFrom('a', 'gone') }),
);

describe('a choice under any sequence of actions', () => {
  it('is never given without one being chosen', () => {
    fc.assert(
      fc.property(fc.array(action), (actions) => {
        const state = actions.reduce(reduceChoice, noChoice);
        if (state.given) expect(state.chosen).toBeDefined();
      }),
    );
  });
});

describe('a guess that is kept', () => {
  it.each(['34.0 dBm', 'By 11 %.'])(
    'ends what is said of it, whether it is a sentence or not: %s',
    (guess) => {
      expect(strings.guess.kept(guess)).toBe(`Read on, or open the answer. Your guess is kept: ${guess}`);
    },
  );
});

describe('an answer', () => {
  const given = [{ type: 'choose', option: 'a' } as const, { type: 'give' } as const].reduce(
    reduceChoice,
    noChoice,
  );

  it('stands until the reader chooses again', () => {
    expect(reduceChoice(given, { type: 'choose', option: 'b' })).toEqual({ chosen: 'a', given: true });
    expect(reduceChoice(given, { type: 'again' })).toEqual(noChoice);
  });

  it('cannot be given before one is chosen', () => {
    expect(reduceChoice(noChoice, { type: 'give' })).toEqual(noChoice);
  });

  it('recalled from an earlier visit counts as given', () => {
    expect(reduceChoice(noChoice, { type: 'recall', option: 'c' })).toEqual({ chosen: 'c', given: true });
  });

  it('that the question no longer has is no option', () => {
    const question = questionOf('chain-weakest-rung');
    expect(chosenOption(question, { chosen: 'zz', given: true })).toBeUndefined();
    expect(chosenOption(question, { chosen: 'd', given: true })?.id).toBe('d');
  });
});

describe('every question', () => {
  for (const id of questionIds()) {
    const question = questionOf(id);
    it(`${id} has one right answer among options that all read differently`, () => {
      expect(question.id).toBe(id);
      expect(question.options.filter((option) => option.id === question.answer)).toHaveLength(1);
      expect(new Set(question.options.map(({ text }) => text)).size).toBe(question.options.length);
      expect(question.options.every(({ reply }) => reply.length > 20)).toBe(true);
      expect(question.worked.length).toBeGreaterThan(40);
    });
  }

  it('is refused by a name that none has', () => {
    expect(() => questionOf('__proto__')).toThrow(/questionOf: no question has the id, got "__proto__"/);
  });
});
