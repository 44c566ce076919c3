import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { figureOf, shareRows } from '../../src/widgets/envelope/figure.ts';
import { type KeyedFields, type KeyedState, keyedSpec } from '../../src/widgets/envelope/spec.ts';
import { strings } from '../../src/widgets/envelope/strings.ts';
import { answersOf, powerThere, summarise } from '../../src/widgets/envelope/words.ts';
import { type FieldsAction, fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { anyState } from '../address/any-state.ts';

const { fields } = keyedSpec;
const prepared: KeyedState = defaultState(fields);
const reduce = reduceFields<KeyedFields>(fields);
const nb = '\u00a0';
const action: fc.Arbitrary<FieldsAction<KeyedFields>> = fc.oneof(
  fc.record({
    type: fc.constant('set' as const),
    name: fc.constantFrom(...Object.keys(fields), 'nobody'),
    value: fc.oneof(
      fc.double(),
      fc.double({ min: 0, max: 6, noNaN: true }),
      fc.constantFrom(
        'keyDown',
        'twoEqualTones',
        'carrier',
        'load',
        'delivered',
        'peakOverMean',
        'twiceTheMean',
        'zz',
      ),
    ),
  }),
  fc.constantFrom({ type: 'grasp' } as const, { type: 'release' } as const, { type: 'cancel' } as const),
  fc.constant({ type: 'reset', values: prepared } as const),
);

describe('the keyed transmitter under any sequence of actions', () => {
  it('can always be drawn and said, with finite numbers', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 30 }), (actions) => {
        const state = actions.reduce(reduce, fieldsState<KeyedFields>(prepared));
        const { spanW, peakW, meanW } = figureOf(state);
        expect(spanW).toBeGreaterThan(0);
        expect(meanW).toBeLessThanOrEqual(peakW * (1 + 1e-12));
        expect(shareRows(state.values).length).toBeGreaterThan(0);
        const said = [summarise(state.values), ...answersOf(state.values).flatMap(Object.values)].join(' ');
        expect(said).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 60 },
    );
  });

  it('keeps its axis still while the knob is held', () => {
    const held = reduce(fieldsState<KeyedFields>(prepared), { type: 'grasp' });
    const pulled = reduce(held, { type: 'set', name: 'peak', value: 0.1 });
    expect(figureOf(pulled).spanW).toBe(figureOf(held).spanW);
  });
});

describe('the address of the keyed transmitter', () => {
  it('has a specification free of faults, units as its kinds say, and words for every code', () => {
    expect(specFaults(keyedSpec)).toEqual([]);
    for (const [name, unit] of Object.entries(strings.settings.units))
      expect(kindOf(fields[name as keyof typeof strings.settings.units].kind).base, name).toBe(unit);
    for (const [name, words] of Object.entries(strings.settings.choices))
      expect(Object.keys(words)).toEqual(
        Object.keys(fields[name as keyof typeof strings.settings.choices].choices),
      );
  });

  it('gives back every state that it was made from', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(keyedSpec, encode(keyedSpec, state))).toMatchObject({ state, problems: [] });
      }),
    );
  });
});

describe('what stands under the envelope', () => {
  it('are the power that is meant in a sentence, the slow meter, and the efficiency', () => {
    // 0.44 x 0.5 W = 220 mW; 12 V x 0.12 A x 0.44 = 634 mW
    expect(answersOf(prepared)).toEqual([
      {
        figure: `220${nb}mW`,
        words:
          'mean power of the wave towards the load, at the transmitter’s socket, keyed with the word PARIS',
      },
      {
        figure: `220${nb}mW on a meter that averages`,
        words: `44${nb}% of the PEP, \u22123.57${nb}dB: what it would show at the socket`,
      },
      {
        figure: `35${nb}% efficiency`,
        words: `220${nb}mW out of 634${nb}mW from the supply, both as means; 414${nb}mW stays in the transmitter as heat`,
      },
    ]);
  });

  it('tell what is not known instead of a number', () => {
    const tones = answersOf({ ...prepared, keying: 'twoEqualTones', kind: 'carrier' });
    expect(tones.map(({ figure }) => figure)).toEqual([
      'No carrier',
      `250${nb}mW on a meter that averages`,
      'Efficiency not known',
    ]);
    expect(answersOf({ ...prepared, amperes: 0.01 })[2]?.words).toMatch(/more would come out/);
    expect(answersOf({ ...prepared, keying: 'twoEqualTones', slip: 'peakOverMean' })[3]?.words).toMatch(
      /nothing to go by/,
    );
  });

  it('are a slip with its error and the truth', () => {
    expect(answersOf({ ...prepared, slip: 'meanAsPeak' })[3]).toEqual({
      figure: `220${nb}mW stated`,
      words: `A mean reading stated as PEP: \u22123.57${nb}dB, the truth being 500${nb}mW`,
    });
    expect(answersOf({ ...prepared, slip: 'peakOverMean' })[3]?.figure).toBe(`79${nb}% efficiency stated`);
  });

  it('are spoken without signs', () => {
    expect(summarise({ ...prepared, keying: 'keyDown' })).toMatch(
      /^500 milliwatts, mean power .* key down\. 500 milliwatts on a meter that averages, the PEP itself/,
    );
  });
});

describe('a power at a place', () => {
  it('is less at the load than at the socket, and less delivered than incident', () => {
    const at = (plane: 'socket' | 'load', delivery: 'incident' | 'delivered'): number =>
      powerThere(prepared, { kind: 'mean', plane, delivery }) ?? Number.NaN;
    expect(at('load', 'incident')).toBeCloseTo(0.22 * 10 ** -0.05, 9);
    expect(at('load', 'delivered')).toBeCloseTo(0.22 * 10 ** -0.05 * 0.96, 9);
    expect(at('socket', 'delivered')).toBeCloseTo(0.22 * (1 - 0.04 * 10 ** -0.1), 9);
  });

  it('is none for the carrier of two tones', () => {
    const tones: KeyedState = { ...prepared, keying: 'twoEqualTones' };
    expect(powerThere(tones, { kind: 'carrier', plane: 'load', delivery: 'incident' })).toBeUndefined();
  });
});
