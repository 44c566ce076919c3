import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { defaultState } from '../../src/address/field-spec.ts';
import { type FieldsAction, fieldsState, onStep, reduceFields } from '../../src/widgets/parts/fields.ts';

const fields = {
  pad: {
    type: 'number',
    key: 'p',
    label: 'Pad',
    kind: 'gain',
    min: -40,
    max: 0,
    step: 0.5,
    decimals: 1,
    default: -20,
  },
  shape: { type: 'choice', key: 's', label: 'Shape', choices: { round: 'r', flat: 'f' }, default: 'round' },
} as const;
type Of = typeof fields;

const prepared = defaultState(fields);
const reduce = reduceFields<Of>(fields);
const start = fieldsState<Of>(prepared);
const wild = fc.oneof(
  fc.double({ min: -100, max: 100 }),
  fc.constantFrom(
    Number.NaN,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    'round',
    'flat',
    'zz',
    '__proto__',
  ),
);
const action: fc.Arbitrary<FieldsAction<Of>> = fc.oneof(
  fc.record({
    type: fc.constant('set' as const),
    name: fc.constantFrom('pad', 'shape', 'nobody', '__proto__', 'toString'),
    value: wild,
  }),
  fc.constant({ type: 'grasp' } as const),
  fc.constant({ type: 'release' } as const),
  fc.constant({ type: 'cancel' } as const),
  fc.constant({ type: 'reset', values: prepared } as const),
  fc.constant({ type: 'open', values: { pad: -6, shape: 'flat' } } as const),
);

describe('a widget of plain fields under any sequence of actions', () => {
  it('keeps numbers on their step within their limits, and choices among the known', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 40 }), (actions) => {
        const { values, before, held } = actions.reduce(reduce, start);
        for (const state of [values, before, held]) {
          if (state === undefined) continue;
          expect(state.pad >= -40 && state.pad <= 0).toBe(true);
          expect(Number.isInteger(state.pad / 0.5)).toBe(true);
          expect(['round', 'flat']).toContain(state.shape);
          expect(Object.keys(state)).toEqual(['pad', 'shape']);
        }
      }),
    );
  });

  it('does not change the state that it was given', () => {
    fc.assert(
      fc.property(fc.array(action), action, (actions, last) => {
        const state = actions.reduce(reduce, start);
        const copy = structuredClone(state);
        reduce(state, last);
        expect(state).toEqual(copy);
      }),
    );
  });
});

describe('a change', () => {
  it('remembers what was there before, and one that changes nothing forgets nothing', () => {
    const changed = reduce(start, { type: 'set', name: 'pad', value: -6 });
    expect(changed).toEqual({
      values: { pad: -6, shape: 'round' },
      before: prepared,
      held: undefined,
      touched: true,
    });
    expect(reduce(changed, { type: 'set', name: 'pad', value: -6.1 }).before).toEqual(prepared);
  });

  it('to what is no number, no code or no field leaves the values', () => {
    for (const [name, value] of [
      ['pad', Number.NaN],
      ['pad', 'flat'],
      ['shape', 'zz'],
      ['shape', 3],
      ['shape', 'toString'],
    ] as const)
      expect(reduce(start, { type: 'set', name, value }).values).toEqual(prepared);
    expect(reduce(start, { type: 'set', name: 'nobody', value: 1 })).toBe(start);
  });
});

describe('a handle that is held', () => {
  const pulled = [
    { type: 'grasp' },
    { type: 'set', name: 'pad', value: -10 },
    { type: 'set', name: 'pad', value: -5 },
  ] as const satisfies readonly FieldsAction<Of>[];
  const state = pulled.reduce<ReturnType<typeof reduce>>(reduce, start);

  it('keeps as ghost what was there when it was grasped', () => {
    expect(state).toMatchObject({ values: { pad: -5 }, before: prepared, held: prepared });
  });

  it('leaves everything as it was when the pointer is taken away', () => {
    expect(reduce(state, { type: 'cancel' })).toMatchObject({ values: prepared, held: undefined });
    expect(reduce(state, { type: 'cancel' }).before).toBeUndefined();
  });

  it('stays where it was let go', () => {
    expect(reduce(state, { type: 'release' })).toMatchObject({
      values: { pad: -5 },
      held: undefined,
      touched: true,
    });
  });

  it('that nobody holds can be let go and cancelled without a change', () => {
    expect(reduce(start, { type: 'release' })).toEqual(start);
    expect(reduce(start, { type: 'cancel' })).toBe(start);
  });
});

describe('opening and resetting', () => {
  it('an address changes the values but not the address', () => {
    const opened = reduce(start, { type: 'open', values: { pad: -3, shape: 'flat' } });
    expect(opened).toEqual(fieldsState<Of>({ pad: -3, shape: 'flat' }));
    expect(opened.touched).toBe(false);
  });

  it('an address that is read late leaves what was changed before, and follows', () => {
    const changed = reduce(start, { type: 'set', name: 'pad', value: -6 });
    const opened = reduce(changed, { type: 'open', values: { pad: -3, shape: 'flat' } });
    expect(opened).toMatchObject({ values: { pad: -6, shape: 'flat' }, touched: true });
  });

  it('an address that is read while a handle is held leaves it in the hand, and is what giving up leads back to', () => {
    const held = reduce(reduce(start, { type: 'grasp' }), { type: 'set', name: 'pad', value: -6 });
    const opened = reduce(held, { type: 'open', values: { pad: -3, shape: 'flat' } });
    expect(opened.values).toEqual({ pad: -6, shape: 'flat' });
    expect(reduce(opened, { type: 'cancel' }).values).toEqual({ pad: -3, shape: 'flat' });
  });

  it('back to the prepared values is a change that the address follows', () => {
    expect(reduce(start, { type: 'reset', values: prepared }).touched).toBe(true);
  });
});

describe('a number on its step', () => {
  it('is the nearest allowed, and one on the grid stays', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -80, max: 0 }),
        fc.double({ min: -0.24, max: 0.24, noNaN: true }),
        (n, off) => {
          expect(onStep(fields.pad, n / 2 + off, 0)).toBe(n / 2 === 0 ? onStep(fields.pad, 0, 0) : n / 2);
        },
      ),
    );
  });

  it('does not gather the rounding of its step: 0.1 eight times is 0.8', () => {
    const tenths = { ...fields.pad, min: 0, max: 100, step: 0.1 };
    expect([0.8, 14.1, 99.9].map((value) => onStep(tenths, value, 0))).toEqual([0.8, 14.1, 99.9]);
    expect(onStep(tenths, Number.NaN, 7)).toBe(7);
  });
});
