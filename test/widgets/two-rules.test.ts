import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { clubFrame, KNOWN } from '../../src/sheet/two-rules.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { type FieldsAction, fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { figureOf } from '../../src/widgets/two-rules/figure.ts';
import { type RulesFields, type RulesState, rulesOf, rulesSpec } from '../../src/widgets/two-rules/spec.ts';
import { strings } from '../../src/widgets/two-rules/strings.ts';
import { answersOf, summarise } from '../../src/widgets/two-rules/words.ts';
import { anyState } from '../address/any-state.ts';

const { fields } = rulesSpec;
const prepared: RulesState = defaultState(fields);
const nb = '\u00a0';
const start = fieldsState<RulesFields>(prepared);
const reduce = reduceFields<RulesFields>(fields);
const action: fc.Arbitrary<FieldsAction<RulesFields>> = fc.oneof(
  fc.record({
    type: fc.constant('set' as const),
    name: fc.constantFrom(...Object.keys(fields), 'nobody'),
    value: fc.oneof(fc.double(), fc.constantFrom('tenth', 'promise', 'compared', 'zz')),
  }),
  fc.constantFrom({ type: 'grasp' } as const, { type: 'release' } as const, { type: 'cancel' } as const),
  fc.constant({ type: 'reset', values: prepared } as const),
);

describe('the two rules under any sequence of actions', () => {
  it('can always be drawn and said, with finite numbers', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 30 }), (actions) => {
        const state = actions.reduce(reduce, start);
        const { span, band, line, at } = figureOf(state);
        for (const { lower, upper } of band) expect(Math.max(-lower, upper)).toBeLessThanOrEqual(span + 1e-9);
        for (const { y } of [...line, at]) expect(Math.abs(y ?? Number.NaN)).toBeLessThanOrEqual(span + 1e-9);
        const said = [summarise(state.values), ...answersOf(state.values).flatMap(Object.values)].join(' ');
        expect(said).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 60 },
    );
  });

  it('keep their axis while the knob is held', () => {
    const held = reduce(start, { type: 'grasp' });
    const pulled = reduce(held, { type: 'set', name: 'length', value: 2000 });
    expect(figureOf(pulled).span).toBe(figureOf(held).span);
    expect(reduce(pulled, { type: 'cancel' }).values).toEqual(prepared);
  });

  it('leave an outline of the claim before only where the claim is another', () => {
    expect(figureOf(reduce(start, { type: 'set', name: 'length', value: 900 })).ghost).toBeUndefined();
    expect(figureOf(reduce(start, { type: 'set', name: 'step', value: 'tenth' })).ghost).toBeDefined();
  });
});

describe('the address of the two rules', () => {
  it('has a specification free of faults, units as its kinds say, and words for every code', () => {
    expect(specFaults(rulesSpec)).toEqual([]);
    for (const name of ['length', 'first', 'second'] as const)
      expect(kindOf(fields[name].kind).base).toBe(strings.settings.units[name]);
    expect(Object.keys(strings.settings.choices.known)).toEqual([...KNOWN]);
    expect(Object.keys(strings.settings.choices.step)).toEqual(Object.keys(fields.step.choices));
  });

  it('gives back every state that it was made from', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(rulesSpec, encode(rulesSpec, state))).toMatchObject({ state, problems: [] });
      }),
    );
  });

  it('begins with the club’s frame', () => expect(rulesOf(prepared)).toEqual(clubFrame()));
});

describe('the answers', () => {
  it('give the misfit, the claim, and whether the one holds the other', () => {
    const [misfit, claim, cover] = answersOf(prepared);
    expect(misfit.figure).toBe(`+0.60${nb}mm: it fits`);
    expect(claim.figure).toBe(`±0.82${nb}mm`);
    expect(cover.figure).toBe('The claim holds');
    expect(cover.words).toContain(`fit up to 1000${nb}mm.`);
  });

  it('say where the claim is too narrow and where nothing fits', () => {
    const [misfit, , cover] = answersOf({ ...prepared, length: 1500, step: 'tenth' });
    expect(misfit.figure).toBe(`+1.50${nb}mm: it does not fit`);
    expect(cover.figure).toBe('The claim is too narrow');
  });

  it('say of a frame on the edge of the play that it fits, as of the longest that does', () => {
    const edge = { ...prepared, first: -0.14, second: -0.06, length: 1250 };
    const [misfit, , cover] = answersOf(edge);
    expect(misfit.figure).toBe(`\u22121.00${nb}mm: it fits`);
    expect(cover.words).toContain(`fit up to 1250${nb}mm.`);
    expect(answersOf({ ...edge, length: 1260 })[0].figure).toContain('does not fit');
  });

  it('promise no fit at every length where a longer frame than the figure has would not fit', () => {
    const nearly = { ...prepared, first: -0.03 };
    expect(answersOf(nearly)[2].words).toContain(`fit up to 3333${nb}mm.`);
  });

  it('call rules that agree just that, and corrected ones corrected', () => {
    expect(answersOf({ ...prepared, first: -0.06 })[2].words).toContain('fit at any length');
    const [corrected, , cover] = answersOf({ ...prepared, known: 'compared' });
    expect(corrected.figure).toBe('Corrected: it fits');
    expect(cover.words).not.toContain('fit up to');
  });

  it('speak in words without signs', () => {
    expect(summarise(prepared)).toBe(
      'Plus 0.60 millimetres: it fits. Claimed: plus or minus 0.82 millimetres. The claim holds.',
    );
  });
});
