import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { EIRP, figureOf, pulledTo, rowsOf, SOCKET } from '../../src/widgets/level-diagram/figure.ts';
import {
  fieldsFor,
  type LineFields,
  type LineState,
  stairsSpec,
} from '../../src/widgets/level-diagram/spec.ts';
import { strings } from '../../src/widgets/level-diagram/strings.ts';
import { answersOf, summarise } from '../../src/widgets/level-diagram/words.ts';
import { type FieldsAction, fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { anyState } from '../address/any-state.ts';

const { fields } = stairsSpec;
const prepared: LineState = defaultState(fields);
const reduce = reduceFields<LineFields>(fields);
const nb = '\u00a0';
const action: fc.Arbitrary<FieldsAction<LineFields>> = fc.oneof(
  fc.record({
    type: fc.constant('set' as const),
    name: fc.constantFrom(...Object.keys(fields), 'nobody'),
    value: fc.oneof(
      fc.double(),
      fc.double({ min: -40, max: 60, noNaN: true }),
      fc.constantFrom(
        'antenna',
        'instrument',
        'first',
        'second',
        'twice',
        'reference',
        'halfWaveDipole',
        'zz',
      ),
    ),
  }),
  fc.constantFrom({ type: 'grasp' } as const, { type: 'release' } as const, { type: 'cancel' } as const),
  fc.constant({ type: 'reset', values: prepared } as const),
);

describe('the line under any sequence of actions', () => {
  it('can always be drawn and said, every level on its axis', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 30 }), (actions) => {
        const state = actions.reduce(reduce, fieldsState<LineFields>(prepared));
        const { rows, within } = figureOf(state);
        if (!state.held)
          for (const { from, to } of rows)
            for (const level of [from, to]) expect(level > within.lower && level < within.upper).toBe(true);
        const said = [summarise(state.values), ...answersOf(state.values).flatMap(Object.values)].join(' ');
        expect(said).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 60 },
    );
  });
});

describe('a pulled handle', () => {
  it('puts the level behind its part where it was pulled to, as near as a step allows', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('first', 'second'),
        fc.double({ min: -10, max: 6, noNaN: true }),
        (id, off) => {
          const wish = (rowsOf(prepared).find((row) => row.id === id)?.to ?? 0) + off;
          const { values } = reduce(fieldsState<LineFields>(prepared), {
            type: 'set',
            ...pulledTo(prepared, id, wish),
          });
          const got = rowsOf(values).find((row) => row.id === id)?.to ?? 0;
          expect(Math.abs(got - wish)).toBeLessThanOrEqual(0.05 + 1e-9);
        },
      ),
    );
  });

  it('at the socket moves the level, at an amplifier its gain, at an antenna its gain over its own reference', () => {
    expect(pulledTo(prepared, SOCKET, 30)).toEqual({ name: 'level', value: 30 });
    expect(pulledTo(prepared, 'amplifier', 30)).toEqual({ name: 'amplifier', value: 3 });
    const dipole: LineState = { ...prepared, end: 'antenna', coax: 0, antenna: 0, over: 'halfWaveDipole' };
    expect(pulledTo(dipole, EIRP, 27 + 2.15 + 3)).toMatchObject({
      name: 'antenna',
      value: expect.closeTo(3, 9),
    });
  });

  it('of a part that takes away cannot be pulled into a gain', () => {
    const { values } = reduce(fieldsState<LineFields>(prepared), {
      type: 'set',
      ...pulledTo(prepared, 'first', 40),
    });
    expect(values.first).toBe(0);
  });
});

describe('the address of the line', () => {
  it('has a specification free of faults, units as its kinds say, and words for every code', () => {
    expect(specFaults(stairsSpec)).toEqual([]);
    for (const [name, unit] of Object.entries(strings.settings.units)) {
      const field = fields[name as keyof typeof strings.settings.units];
      expect(kindOf(field.kind).base, name).toBe(unit);
    }
    for (const [name, words] of Object.entries(strings.settings.choices))
      expect(Object.keys(words)).toEqual(
        Object.keys(fields[name as keyof typeof strings.settings.choices].choices),
      );
  });

  it('gives back every state that it was made from', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(stairsSpec, encode(stairsSpec, state))).toMatchObject({ state, problems: [] });
      }),
    );
  });

  it('shows at each end the fields that matter there', () => {
    expect(fieldsFor('antenna')).not.toContain('first');
    expect(fieldsFor('instrument')).not.toContain('antenna');
    for (const end of ['instrument', 'antenna'] as const) expect(fieldsFor(end)).toContain('end');
  });
});

describe('what stands under the line', () => {
  it('are the input, the hottest part, and an invitation to leave one out', () => {
    // 28.5 - 19.5 - 0.05 - 19.5 = -10.55; 708 mW x (1 - 10^-2.05) = 702 mW
    const [input, heat, left] = answersOf(prepared);
    expect(input?.figure).toBe(`\u221213.1${nb}dBm, 49.0${nb}µW`);
    expect(input?.words).toContain(`at most \u221210.6${nb}dBm`);
    expect(input?.words).toContain(`10.6${nb}dB below what damages the input`);
    expect(heat).toEqual({
      figure: `702${nb}mW`,
      words: `of heat at most in the first pad, which takes 1.00${nb}W at its input`,
    });
    expect(left?.figure).toBe('Nothing left out');
  });

  it('say of a part that is left out that this is a calculation', () => {
    const left = answersOf({ ...prepared, without: 'first' })[2];
    expect(left?.figure).toBe(`9.0${nb}dBm without the first pad`);
    expect(left?.words).toBe(
      `9.0${nb}dB above what damages the input; the second pad would get 700${nb}mW and takes 250${nb}mW. This is a calculation. Never try it.`,
    );
  });

  it('are EIRP and ERP at an antenna, and the slip with its error', () => {
    const state: LineState = { ...prepared, end: 'antenna', coax: 0.6, antenna: 5, slip: 'reference' };
    const figures = answersOf(state).map(({ figure }) => figure);
    expect(figures).toEqual([
      `31.40${nb}dBm, 1.38${nb}W EIRP`,
      `29.25${nb}dBm, 841${nb}mW ERP`,
      `33.55${nb}dBm, 2.26${nb}W stated`,
    ]);
    expect(answersOf(state)[2]?.words).toBe(`dBi and dBd mixed up: +2.15${nb}dB`);
    expect(answersOf({ ...prepared, slip: 'reference' }).at(-1)?.words).toMatch(/other end/);
  });

  it('are spoken without signs', () => {
    expect(summarise({ ...prepared, slip: 'forgotten' })).toMatch(
      /^Minus 13\.1 decibel-milliwatts, 49\.0 microwatts, .*Pads and coax forgotten: minus 40\.1 decibels\.$/,
    );
  });
});
