import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { clubPad, MEANINGS, SLIPS } from '../../src/sheet/stated.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { type FieldsAction, fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { figureOf } from '../../src/widgets/stated/figure.ts';
import { type StatedFields, type StatedState, statedOf, statedSpec } from '../../src/widgets/stated/spec.ts';
import { strings } from '../../src/widgets/stated/strings.ts';
import { answersOf, figureWords, ratioText, summarise } from '../../src/widgets/stated/words.ts';
import { anyState } from '../address/any-state.ts';

const { fields } = statedSpec;
const prepared: StatedState = defaultState(fields);
const nb = '\u00a0';
const start = fieldsState<StatedFields>(prepared);
const reduce = reduceFields<StatedFields>(fields);
const action: fc.Arbitrary<FieldsAction<StatedFields>> = fc.oneof(
  fc.record({
    type: fc.constant('set' as const),
    name: fc.constantFrom(...Object.keys(fields), 'nobody'),
    value: fc.oneof(fc.double(), fc.constantFrom(0, 0.2, 2.9, ...MEANINGS, ...SLIPS, 'zz')),
  }),
  fc.constantFrom({ type: 'grasp' } as const, { type: 'release' } as const, { type: 'cancel' } as const),
  fc.constant({ type: 'reset', values: prepared } as const),
);

describe('the stated number under any sequence of actions', () => {
  it('can always be drawn and said, with finite numbers, all of them on its axis unless it is held still', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 30 }), (actions) => {
        const state = actions.reduce(reduce, start);
        const { span, halfWidth, lump, reach, said } = figureOf(state);
        for (const value of [halfWidth, lump, reach, said?.lump ?? 0, said?.reach ?? 0])
          if (!state.held) expect(value).toBeLessThanOrEqual(span * (1 + 1e-12));
        const answers = answersOf(state.values).flatMap((answer) => Object.values(answer));
        const written = [summarise(state.values), ...answers, ...Object.values(figureWords(state.values))];
        expect(written.join(' ')).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 60 },
    );
  });

  it('keeps its axis while the knob is held', () => {
    const held = reduce(start, { type: 'grasp' });
    const pulled = reduce(held, { type: 'set', name: 'halfWidth', value: 3 });
    expect(figureOf(pulled).span).toBe(figureOf(held).span);
    expect(figureOf(reduce(pulled, { type: 'release' })).span).toBeGreaterThan(figureOf(held).span);
  });

  it('is compared on one axis, whatever is meant by it', () => {
    const spans = MEANINGS.map(
      (meaning) => figureOf(fieldsState<StatedFields>({ ...prepared, meaning })).span,
    );
    expect(new Set(spans).size).toBe(1);
  });
});

describe('the address of the stated number', () => {
  it('has a specification free of faults, and words for every code', () => {
    expect(specFaults(statedSpec)).toEqual([]);
    expect(kindOf(fields.halfWidth.kind).base).toBe(strings.settings.units.halfWidth);
    expect(Object.keys(strings.settings.choices.meaning).toSorted()).toEqual([...MEANINGS].toSorted());
    expect(Object.keys(strings.settings.choices.slip).toSorted()).toEqual([...SLIPS].toSorted());
  });

  it('gives back every state that it was made from', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(statedSpec, encode(statedSpec, state))).toMatchObject({ state, problems: [] });
      }),
    );
  });

  it('begins with the club’s pad', () => expect(statedOf(prepared)).toEqual(clubPad()));
});

describe('the answers', () => {
  it('give u with its divisor, what lies within, and U', () => {
    const [standard, shares, expanded] = answersOf(prepared);
    expect(standard.figure).toBe(`u = 0.29${nb}dB`);
    expect(standard.words).toContain('divided by √3');
    expect(shares.figure).toBe(`58${nb}% within ±u`);
    expect(shares.words).toBe(strings.allWithin);
    expect(expanded.figure).toBe(`U = 0.58${nb}dB`);
  });

  it('follow the statement', () => {
    const at = (meaning: StatedState['meaning']) => answersOf({ ...prepared, meaning });
    expect(at('middle')[0].figure).toBe(`u = 0.20${nb}dB`);
    expect(at('middle')[1].words).toBe(`97${nb}% within ±2u, and nothing beyond the limits`);
    expect(at('plateau')[0].words).toContain('divided by 2.19');
    expect(at('wave')[0].words).toContain('divided by √2');
    expect(at('certificate')[1].words).toContain(`4.6${nb}% lies beyond ±2u`);
    expect(at('certificate')[2].figure).toBe(`U = 0.50${nb}dB`);
  });

  it('say what a slip makes of it, and where it is none', () => {
    const at = (now: Partial<StatedState>) => answersOf({ ...prepared, ...now })[2].figure;
    expect(at({ slip: 'asStandard' })).toBe(`Said: u = 0.50${nb}dB, 1.73 times what it is`);
    expect(at({ slip: 'asExpanded' })).toBe(`Said: u = 0.25${nb}dB, 13${nb}% too small`);
    expect(at({ slip: 'rootThree' })).toBe(`Said: u = 0.29${nb}dB, just right`);
    expect(at({ slip: 'rootThree', meaning: 'wave' })).toContain(`18${nb}% too small`);
    expect(ratioText('shown', { said: 2, right: 1 })).toBe('2.00 times what it is');
  });

  it('stand in the figure as well', () => {
    expect(figureWords(prepared).lumps).toBe(`two lumps, as hard to twirl: ±0.29${nb}dB`);
    expect(figureWords({ ...prepared, slip: 'asStandard' }).lumps).toContain(`dashed: ±0.50${nb}dB`);
    expect(figureWords({ ...prepared, meaning: 'certificate' }).bar).toContain(`U = 0.50${nb}dB, k = 2`);
  });

  it('speak in words without signs', () => {
    expect(summarise(prepared)).toBe(
      'Standard uncertainty 0.29 decibels. 58 percent within plus or minus u. Expanded uncertainty 0.58 decibels.',
    );
  });
});
