import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { wholeSumOf } from '../../src/sheet/evaluated-link-sum.ts';
import {
  badMatch,
  COVERAGES,
  comparedChain,
  halfDecibels,
  LINK_SHAPES,
  longChain,
  receiverChain,
  SIZES,
} from '../../src/sheet/link-sum.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { figureOf, sizeFor } from '../../src/widgets/link-sum/figure.ts';
import {
  firstStatedDb,
  LINKS,
  type LinkSumFields,
  type LinkSumState,
  linkSumSpec,
  sumOf,
} from '../../src/widgets/link-sum/spec.ts';
import { strings } from '../../src/widgets/link-sum/strings.ts';
import { answersOf, lanesOf, shareText, summarise } from '../../src/widgets/link-sum/words.ts';
import { type FieldsAction, fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { anyState } from '../address/any-state.ts';

const { fields } = linkSumSpec;
const prepared: LinkSumState = defaultState(fields);
const nb = '\u00a0';
const start = fieldsState<LinkSumFields>(prepared);
const reduce = reduceFields<LinkSumFields>(fields);
const opened = (address: string): LinkSumState => {
  const { state, problems } = decode(linkSumSpec, address);
  expect(problems).toEqual([]);
  return state as LinkSumState;
};
const figures = (state: LinkSumState): readonly string[] =>
  answersOf(state, wholeSumOf(sumOf(state))).map(({ figure }) => figure);
const action: fc.Arbitrary<FieldsAction<LinkSumFields>> = fc.oneof(
  fc.record({
    type: fc.constant('set' as const),
    name: fc.constantFrom(...Object.keys(fields), 'nobody'),
    value: fc.oneof(
      fc.double(),
      fc.integer({ min: -2, max: 12 }),
      fc.constantFrom(...LINK_SHAPES, ...SIZES, ...COVERAGES, 'zz'),
    ),
  }),
  fc.constantFrom({ type: 'grasp' } as const, { type: 'release' } as const, { type: 'cancel' } as const),
  fc.constant({ type: 'reset', values: prepared } as const),
);

describe('the links under any sequence of actions', () => {
  it('can always be drawn and said, with finite numbers', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 20 }), (actions) => {
        const state = actions.reduce(reduce, start);
        const whole = wholeSumOf(sumOf(state.values));
        const { domain, curve, compared, part = [], lanes } = figureOf(state, whole);
        for (const { x, density } of [...curve, ...compared, ...part]) {
          expect(Number.isFinite(x)).toBe(true);
          expect(density).toBeGreaterThanOrEqual(0);
          expect(Number.isFinite(density)).toBe(true);
        }
        if (state.held === undefined)
          for (const { interval } of lanes)
            if (interval) expect(interval.upper).toBeLessThanOrEqual(domain.upper + 1e-9);
        const words = answersOf(state.values, whole).flatMap(Object.values);
        expect([summarise(state.values, whole), ...words].join(' ')).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 40 },
    );
  });

  it('keep their axis while the knob is held, and go back to what they were', () => {
    const held = reduce(start, { type: 'grasp' });
    const pulled = reduce(held, { type: 'set', name: 'first', value: 8 });
    expect(figureOf(pulled).domain).toEqual(figureOf(held).domain);
    expect(reduce(pulled, { type: 'cancel' }).values).toEqual(prepared);
    expect(figureOf(reduce(pulled, { type: 'release' })).domain.upper).toBeGreaterThan(5);
  });

  it('put the knob where what is stated of the first link ends, on either side', () => {
    fc.assert(
      fc.property(anyState(fields), fc.double({ min: -5, max: 5, noNaN: true }), (state, place) => {
        expect(figureOf(fieldsState<LinkSumFields>(state)).handle).toBe(firstStatedDb(state));
        const pulled = { ...state, first: sizeFor(state, place) };
        expect(firstStatedDb(pulled)).toBeCloseTo(Math.abs(place), 9);
      }),
    );
  });
});

describe('the address of the links', () => {
  it('has a specification free of faults, units as its kinds say, and words for every code', () => {
    expect(specFaults(linkSumSpec)).toEqual([]);
    for (const [name, unit] of Object.entries(strings.settings.units))
      expect(kindOf(fields[name as keyof typeof strings.settings.units].kind).base, name).toBe(unit);
    for (const [, shape] of LINKS)
      expect(Object.keys(strings.settings.choices[shape])).toEqual([...LINK_SHAPES]);
    expect(Object.keys(strings.settings.choices.sizes)).toEqual([...SIZES]);
    expect(Object.keys(strings.settings.choices.coverage)).toEqual([...COVERAGES]);
  });

  it('gives back every state that it was made from', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(linkSumSpec, encode(linkSumSpec, state))).toMatchObject({ state, problems: [] });
      }),
    );
  });

  it('begins with one link, and opens the sums that the prose speaks of', () => {
    expect(sumOf(prepared)).toEqual(halfDecibels(1));
    expect(sumOf(opened('n=4&v=1'))).toEqual(halfDecibels(4));
    expect(sumOf(opened('n=5&a=2&d=0.1&e=0.2&es=u&v=1'))).toEqual(receiverChain());
    expect(sumOf(opened('n=5&a=0.3&b=0.1&c=0.1&d=0.1&e=0.2&es=u&v=1'))).toEqual(comparedChain());
    expect(sumOf(opened('n=5&a=2&b=0.1&c=0.1&d=0.1&e=0.1&v=1'))).toEqual(longChain());
    expect(sumOf(opened('n=2&a=0.9&as=u&b=0.2&v=1'))).toEqual(badMatch());
  });
});

describe('the answers', () => {
  it('of one link: the bell reaches beyond the limits', () => {
    expect(figures(prepared)).toEqual([
      `±0.48${nb}dB`,
      `±0.58${nb}dB`,
      `k = 2 holds 100${nb}%`,
      'k = 1.65',
      `±0.50${nb}dB`,
    ]);
  });

  it('of the receiver’s chain', () => {
    expect(figures(opened('n=5&a=2&d=0.1&e=0.2&es=u&v=1'))).toEqual([
      `±2.21${nb}dB`,
      `±2.47${nb}dB`,
      `k = 2 holds 98.4${nb}%`,
      'k = 1.79',
      `±3.30${nb}dB`,
    ]);
  });

  it('have no worst case where a link is a bell, and say at which probability they are asked', () => {
    const state = opened('n=2&as=n&co=95&v=1');
    const [own, bell, , factor, worst] = answersOf(state, wholeSumOf(sumOf(state)));
    expect(worst?.figure).toBe('No worst case');
    expect(own?.words).toContain(`the middle 95${nb}%`);
    expect(bell?.words).toContain('times 1.96');
    expect(factor?.words).toContain(`95${nb}%`);
    expect(lanesOf(state)[2]?.interval).toBeUndefined();
    expect(answersOf(prepared)[0]?.words).toContain(`95.45${nb}%`);
  });

  it('wait for a whole distribution that is not there yet, and draw nothing of it', () => {
    expect(answersOf(prepared).map(({ figure }) => figure)).toEqual([
      'Not worked out yet',
      `±0.58${nb}dB`,
      'Not worked out yet',
      'Not worked out yet',
      `±0.50${nb}dB`,
    ]);
    expect(figureOf(start).curve).toEqual([]);
    expect(lanesOf(prepared)[0]).toMatchObject({ number: 'not yet', interval: undefined });
  });

  it('never round a share up to all of it', () => {
    expect(shareText('shown', 0.99997)).toBe(`100${nb}%`);
    expect(shareText('shown', 0.9996)).toBe(`99.96${nb}%`);
    expect(shareText('shown', 0.954)).toBe(`95.4${nb}%`);
  });

  it('speak in words without signs', () => {
    expect(summarise(prepared, wholeSumOf(halfDecibels(1)))).toBe(
      'Links in the sum: 1. Bell: plus or minus 0.58 decibels. Whole distribution: plus or minus 0.48 decibels.',
    );
  });
});
