import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { wholeClaimOf } from '../../src/sheet/evaluated-blocks.ts';
import { COUNTED, clubBlocks, differenceUm, endsOf, KNOWN } from '../../src/sheet/gauge-blocks.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { figureOf, warmthFor } from '../../src/widgets/gauge-blocks/figure.ts';
import {
  type BlocksFields,
  type BlocksState,
  blocksSpec,
  comparisonOf,
} from '../../src/widgets/gauge-blocks/spec.ts';
import { strings } from '../../src/widgets/gauge-blocks/strings.ts';
import { answersOf, summarise } from '../../src/widgets/gauge-blocks/words.ts';
import { type FieldsAction, fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { anyState } from '../address/any-state.ts';

const { fields } = blocksSpec;
const prepared: BlocksState = defaultState(fields);
const nb = '\u00a0';
const start = fieldsState<BlocksFields>(prepared);
const reduce = reduceFields<BlocksFields>(fields);
const action: fc.Arbitrary<FieldsAction<BlocksFields>> = fc.oneof(
  fc.record({
    type: fc.constant('set' as const),
    name: fc.constantFrom(...Object.keys(fields), 'nobody'),
    value: fc.oneof(
      fc.double(),
      fc.integer({ min: -2, max: 40 }),
      fc.constantFrom(...KNOWN, ...COUNTED, 'zz'),
    ),
  }),
  fc.constantFrom({ type: 'grasp' } as const, { type: 'release' } as const, { type: 'cancel' } as const),
  fc.constant({ type: 'reset', values: prepared } as const),
);

describe('the blocks under any sequence of actions', () => {
  it('can always be drawn and said, with finite numbers', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 30 }), (actions) => {
        const state = actions.reduce(reduce, start);
        const { span, lanes, claim } = figureOf(state);
        expect(lanes[0]?.lengthsMm).toHaveLength(state.values.count);
        if (state.held === undefined)
          for (const place of [...lanes.map(({ end }) => end), claim.there, claim.strip.upper])
            expect(Math.abs(place)).toBeLessThanOrEqual(span);
        const said = [summarise(state.values), ...answersOf(state.values).flatMap(Object.values)].join(' ');
        expect(said).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 60 },
    );
  });

  it('keep their axis while an end is held, and go back to what they were', () => {
    const held = reduce(start, { type: 'grasp' });
    const pulled = reduce(held, { type: 'set', name: 'stackC', value: 30 });
    expect(figureOf(pulled).span).toBe(figureOf(held).span);
    expect(reduce(pulled, { type: 'cancel' }).values).toEqual(prepared);
    expect(figureOf(reduce(pulled, { type: 'release' })).span).toBeGreaterThan(figureOf(held).span);
  });
});

describe('an end that is pulled', () => {
  it('becomes the temperature at which it would be there', () => {
    fc.assert(
      fc.property(
        anyState(fields),
        fc.constantFrom('stack', 'single'),
        fc.double({ min: -1, max: 3, noNaN: true }),
        (state, id, end) => {
          const found = warmthFor(state, id, end);
          const ppm = id === 'stack' ? state.stackPpm : state.singlePpm;
          if (ppm === 0) return expect(found).toBeUndefined();
          expect(found?.name).toBe(id === 'stack' ? 'stackC' : 'singleC');
          const value = found?.value ?? Number.NaN;
          expect(value).toBeGreaterThanOrEqual(15);
          expect(value).toBeLessThanOrEqual(35);
          if (value === 15 || value === 35) return undefined;
          const moved = comparisonOf({ ...state, [found?.name ?? '']: value });
          expect(endsOf(moved)[id].end).toBeCloseTo(end, 9);
        },
      ),
    );
  });

  it('that nobody knows changes nothing', () => {
    expect(warmthFor(prepared, 'plate', 1)).toBeUndefined();
    expect(warmthFor({ ...prepared, stackPpm: 0 }, 'stack', 1)).toBeUndefined();
  });
});

describe('the address of the blocks', () => {
  it('has a specification free of faults, units as its kinds say, and words for every code', () => {
    expect(specFaults(blocksSpec)).toEqual([]);
    for (const [name, unit] of Object.entries(strings.settings.units)) {
      const field = fields[name as keyof typeof strings.settings.units];
      expect(kindOf(field.kind).base, name).toBe(unit);
    }
    expect(Object.keys(strings.settings.choices.known)).toEqual([...KNOWN]);
    expect(Object.keys(strings.settings.choices.counted)).toEqual([...COUNTED]);
  });

  it('gives back every state that it was made from', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(blocksSpec, encode(blocksSpec, state))).toMatchObject({ state, problems: [] });
      }),
    );
  });

  it('begins with the club’s first evening', () => expect(comparisonOf(prepared)).toEqual(clubBlocks()));
});

describe('the answers', () => {
  it('give what is shown, whether the claim holds it, and the claim in three ways', () => {
    const [there, cover, roots, worst, whole] = answersOf(prepared, wholeClaimOf(clubBlocks()).interval);
    expect(there?.figure).toBe(`+2.37${nb}µm`);
    expect(cover?.figure).toBe('The claim is too narrow');
    expect(roots?.figure).toBe(`+0.07 ±0.20${nb}µm`);
    expect(worst?.figure).toBe('No worst case');
    expect(whole?.figure).toBe(`\u22120.13 to +0.27${nb}µm`);
    expect(whole?.words).toContain(`95.45${nb}%`);
  });

  it('have a worst case where the grade is all that is known', () => {
    const [, cover, , worst] = answersOf({ ...prepared, stackC: 20, known: 'grade' });
    expect(worst?.figure).toBe(`\u22121.70 to +1.74${nb}µm`);
    expect(cover?.figure).toBe('The claim holds');
  });

  it('wait for a whole distribution that is not there yet, and say nothing of it', () => {
    expect(answersOf(prepared)[4]?.figure).toBe('Not worked out yet');
  });

  it('write a claim of no uncertainty as such', () => {
    const sure = { ...prepared, count: 1, known: 'nominal' } as const;
    expect(answersOf(sure)[2]?.figure).toBe(`0.00 ±0.00${nb}µm`);
    expect(differenceUm(comparisonOf(sure))).toBeCloseTo(2.32, 12);
  });

  it('speak in words without signs', () => {
    expect(summarise(prepared)).toBe(
      'Stack less single block: plus 2.37 micrometres. Claimed: plus 0.07 plus or minus 0.20 micrometres. The claim is too narrow.',
    );
  });
});
