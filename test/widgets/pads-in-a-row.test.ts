import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { wholeRowOf } from '../../src/sheet/evaluated-pads.ts';
import { BETWEEN, clubRow, METER_SAYS } from '../../src/sheet/pads-in-a-row.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { figureOf, perStated, saidOf } from '../../src/widgets/pads-in-a-row/figure.ts';
import {
  CLAIMS,
  LAYS,
  type Lay,
  type RowFields,
  type RowState,
  rowOf,
  rowSpec,
} from '../../src/widgets/pads-in-a-row/spec.ts';
import { strings } from '../../src/widgets/pads-in-a-row/strings.ts';
import { answersOf, figureWords, shareText, summarise } from '../../src/widgets/pads-in-a-row/words.ts';
import { type FieldsAction, fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { anyState } from '../address/any-state.ts';

const nb = '\u00a0';
const prepared = (lay: Lay): RowState => defaultState(rowSpec(lay).fields);
const reduce = reduceFields<RowFields>(rowSpec('straight').fields);
const answers = (lay: Lay, now: Partial<RowState> = {}, known = true) => {
  const values = { ...prepared(lay), ...now };
  return answersOf(lay, values, known ? wholeRowOf(rowOf(values)) : undefined);
};
const names = ['count', 'pad', 'between', 'meter', 'says', 'claim', 'nobody'];
const action: fc.Arbitrary<FieldsAction<RowFields>> = fc.oneof(
  fc.record({
    type: fc.constant('set' as const),
    name: fc.constantFrom(...names),
    value: fc.oneof(fc.double(), fc.constantFrom(0, 0.2, 5, 'zz', ...BETWEEN, ...METER_SAYS, ...CLAIMS)),
  }),
  fc.constantFrom({ type: 'grasp' } as const, { type: 'release' } as const, { type: 'cancel' } as const),
  fc.constant({ type: 'reset', values: prepared('straight') } as const),
);

describe.each(LAYS)('a row of pads, laid %s, under any sequence of actions', (lay) => {
  it('can always be drawn and said, known or being worked out', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 20 }), fc.boolean(), (actions, known) => {
        const state = actions.reduce(reduce, fieldsState<RowFields>(prepared(lay)));
        const whole = known ? wholeRowOf(rowOf(state.values)) : undefined;
        const { lengths, result = 1, knob, said = 1 } = figureOf(lay, state, whole);
        for (const value of [...lengths, result, knob, said]) expect(value).toBeGreaterThan(0);
        const written = [
          summarise(lay, state.values, whole),
          ...answersOf(lay, state.values, whole).flatMap((answer) => Object.values(answer)),
          ...Object.values(figureWords(lay, state.values, whole)),
        ];
        expect(written.join(' ')).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 40 },
    );
  });

  it('keeps its axis while the knob is held', () => {
    const held = reduce(fieldsState<RowFields>(prepared(lay)), { type: 'grasp' });
    const pulled = reduce(held, { type: 'set', name: 'pad', value: 1 });
    const of = (state: typeof held) => figureOf(lay, state, undefined);
    expect(of(pulled).reach).toEqual(of(held).reach);
    expect(of(pulled).knob).toBeGreaterThan(of(held).knob);
    expect(of(reduce(pulled, { type: 'release' })).reach).not.toEqual(of(held).reach);
  });

  it('has an address free of faults that gives back every state, and words for every code', () => {
    const spec = rowSpec(lay);
    expect(specFaults(spec)).toEqual([]);
    for (const name of ['count', 'pad', 'meter'] as const)
      expect(kindOf(spec.fields[name].kind).base).toBe(strings.settings.units[name]);
    for (const name of ['between', 'says', 'claim'] as const)
      expect(Object.keys(strings.settings.choices[name])).toEqual(Object.keys(spec.fields[name].choices));
    fc.assert(
      fc.property(anyState(spec.fields), (state) => {
        expect(decode(spec, encode(spec, state))).toMatchObject({ state, problems: [] });
      }),
    );
  });
});

describe('the row end to end', () => {
  it('begins with the club’s', () => expect(rowOf(prepared('straight'))).toEqual(clubRow()));

  it('gives guarantee, most sums, and how rarely one comes near', () => {
    const [guarantee, most, rare] = answers('straight');
    expect(guarantee).toEqual({ figure: `±1.8${nb}dB`, words: strings.guaranteed });
    expect(most.figure).toBe(`95${nb}% within ±1.0${nb}dB`);
    expect(most.words).toContain('1.73 times as wide');
    expect(rare.figure).toBe(`0.015${nb}% come near`);
    expect(answers('straight', { count: 8 })[2].figure).toBe(`less than 0.01${nb}% come near`);
  });

  it('guarantees nothing once the meter has a certificate, unless the meter is never off', () => {
    const [guarantee, most, beyond] = answers('straight', { says: 'certificate', pad: 0.1, meter: 1 });
    expect(guarantee).toEqual({ figure: `±0.30${nb}dB and no end`, words: strings.openWords });
    expect(most.words).toBe(strings.mostOpen);
    expect(beyond.figure).toBe(`1.1${nb}% farther out`);
    expect(answers('straight', { says: 'certificate', meter: 0 })[0].words).toBe(strings.guaranteed);
  });

  it('says how much lies within what somebody says', () => {
    const root = answers('straight', { claim: 'root' })[2];
    expect(root.figure).toBe(`Said: ±0.92${nb}dB`);
    expect(root.words).toContain(`holds 92${nb}% of all sums, k = 1.73`);
    expect(answers('straight', { claim: 'sum' })[2].words).toContain(`holds 100${nb}%`);
    expect(saidOf('none', prepared('straight'))).toBeUndefined();
  });

  it('waits with what has to be worked out, and not with the rest', () => {
    const [guarantee, most, rare] = answers('straight', { count: 4 }, false);
    expect(guarantee.figure).toBe(`±2.3${nb}dB`);
    expect(most.figure).toBe(strings.asked);
    expect(rare.words).toBe(strings.askedWords);
    expect(answers('straight', { claim: 'root' }, false)[2].words).toBe(strings.saidWords.root);
  });
});

describe('the row at right angles', () => {
  const u = Math.sqrt((3 * 0.3 ** 2 + 1) / 3);

  it('gives the root of the squares, the part that decides, and U with what it holds', () => {
    const [standard, dominant, expanded] = answers('angles');
    expect(standard.figure).toBe(`u = ${u.toFixed(2)}${nb}dB`);
    expect(standard.words).toContain(`${((0.9 + 1) / Math.sqrt(3)).toFixed(1)}${nb}dB`);
    expect(dominant.figure).toBe(`The meter: ${((100 * (1 / 3)) / u ** 2).toFixed(0)}${nb}%`);
    expect(dominant.words).toContain(`u = 0.30${nb}dB`);
    expect(expanded.figure).toBe(`U = ${(2 * u).toFixed(1)}${nb}dB`);
    expect(expanded.words).toContain(`holds 98${nb}%`);
    expect(answers('angles', {}, false)[2].words).toBe(strings.expandedWords);
  });

  it('names the pads where they decide', () => {
    const [, dominant] = answers('angles', { meter: 0 });
    expect(dominant.figure).toBe(`Each pad: 33${nb}%`);
    expect(dominant.words).toBe(strings.padsOnly);
    expect(answers('angles', { meter: 0.3 })[1].words).toContain(`the meter 25${nb}%`);
  });

  it('lays the longest first', () => {
    const { lengths } = figureOf('angles', fieldsState<RowFields>(prepared('angles')), undefined);
    expect(lengths[0]).toBeCloseTo(1 / Math.sqrt(3), 12);
    expect(lengths).toEqual([...lengths].sort((a, b) => b - a));
  });

  it('is pulled by standard uncertainties: a pad’s limits follow', () => {
    expect(perStated('straight', prepared('straight'), 'pad')).toBe(1);
    expect(perStated('angles', prepared('angles'), 'pad')).toBeCloseTo(1 / Math.sqrt(3), 12);
    const wave = { ...prepared('angles'), between: 'arcsine' } as const;
    expect(perStated('angles', wave, 'pad')).toBeCloseTo(Math.SQRT1_2, 12);
    // the meter's own, by its paper, also where it is set to nothing
    expect(perStated('angles', { ...wave, meter: 0 }, 'meter')).toBeCloseTo(1 / Math.sqrt(3), 12);
    expect(perStated('angles', { ...wave, says: 'certificate' }, 'meter')).toBeCloseTo(0.5, 12);
  });
});

describe('a share in words', () => {
  it('has more places near its ends, and is less than something where it is next to nothing', () => {
    expect(shareText('shown', 0.5)).toBe(`50${nb}%`);
    expect(shareText('shown', 0.0844)).toBe(`8.4${nb}%`);
    expect(shareText('shown', 0.992)).toBe(`99.2${nb}%`);
    expect(shareText('shown', 0.0015)).toBe(`0.15${nb}%`);
    expect(shareText('shown', 0.0001458)).toBe(`0.015${nb}%`);
    expect(shareText('shown', 3e-8)).toBe(`less than 0.01${nb}%`);
    expect(shareText('spoken', 0)).toBe('less than 0.01 percent');
    expect(shareText('shown', 1)).toBe(`100${nb}%`);
    expect(shareText('shown', 1 - 1e-12)).toBe(`100${nb}%`);
  });

  it('is not said to be all where a little is missing', () => {
    expect(shareText('shown', 0.9996)).toBe(`99.96${nb}%`);
    expect(shareText('shown', 0.99994)).toBe(`more than 99.99${nb}%`);
    expect(shareText('shown', 0.999999)).toBe(`more than 99.99${nb}%`);
  });
});
