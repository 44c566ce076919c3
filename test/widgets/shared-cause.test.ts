import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { chapters } from '../../src/checks/index.ts';
import { checksOf } from '../../src/checks/summary.ts';
import { COMBINATIONS, clubPair } from '../../src/sheet/shared-cause.ts';
import { OUTPUTS } from '../../src/sheet/simultaneous.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { type FieldsAction, fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { figureOf, independentWidthOf, widthOf } from '../../src/widgets/shared-cause/figure.ts';
import {
  type SharedFields,
  type SharedState,
  sharedSpec,
  shownFields,
  subjectOf,
} from '../../src/widgets/shared-cause/spec.ts';
import { strings } from '../../src/widgets/shared-cause/strings.ts';
import { answersOf, summarise } from '../../src/widgets/shared-cause/words.ts';
import { anyState } from '../address/any-state.ts';

const { fields } = sharedSpec;
const prepared: SharedState = defaultState(fields);
const nb = '\u00a0';
const start = fieldsState<SharedFields>(prepared);
const reduce = reduceFields<SharedFields>(fields);
const action: fc.Arbitrary<FieldsAction<SharedFields>> = fc.oneof(
  fc.record({
    type: fc.constant('set' as const),
    name: fc.constantFrom(...Object.keys(fields), 'nobody'),
    value: fc.oneof(
      fc.double(),
      fc.integer({ min: -1, max: 110 }),
      fc.constantFrom(...COMBINATIONS, ...OUTPUTS, 'zz'),
    ),
  }),
  fc.constantFrom({ type: 'grasp' } as const, { type: 'release' } as const, { type: 'cancel' } as const),
  fc.constant({ type: 'reset', values: prepared } as const),
);

describe('two values with a common cause under any sequence of actions', () => {
  it('can always be drawn and said, with finite numbers', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 30 }), (actions) => {
        const state = actions.reduce(reduce, start);
        const { span, band, ghost = [], domain, at } = figureOf(state);
        expect(at.x).toBeGreaterThanOrEqual(domain.lower);
        expect(at.x).toBeLessThanOrEqual(domain.upper);
        if (!state.held) for (const { upper } of [...band, ...ghost]) expect(upper).toBeLessThanOrEqual(span);
        const said = [summarise(state.values), ...answersOf(state.values).flatMap(Object.values)].join(' ');
        expect(said).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 40 },
    );
  });

  it('keep their axis while the knob is held', () => {
    const held = reduce(start, { type: 'grasp' });
    const pulled = reduce(held, { type: 'set', name: 'own', value: 1 });
    expect(figureOf(pulled).span).toBe(figureOf(held).span);
  });
});

describe('the address of the common cause', () => {
  it('has a specification free of faults, and words for every code and unit', () => {
    expect(specFaults(sharedSpec)).toEqual([]);
    expect(Object.keys(strings.settings.choices.of)).toEqual([...COMBINATIONS, ...OUTPUTS]);
    for (const name of ['own', 'shared', 'counted'] as const)
      expect(kindOf(fields[name].kind).base).toBe(strings.settings.units[name]);
  });

  it('gives back every state that it was made from', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(sharedSpec, encode(sharedSpec, state))).toMatchObject({ state, problems: [] });
      }),
    );
  });

  it('begins with the club’s pads, and shows the fields that count', () => {
    expect(subjectOf(prepared)).toEqual({ kind: 'pair', pair: clubPair() });
    expect(shownFields(prepared)).toEqual(['of', 'own', 'shared']);
    expect(shownFields({ ...prepared, of: 'Z' })).toEqual(['of', 'counted']);
  });
});

describe('the figure', () => {
  it('has strip and outline that meet where nothing is shared', () => {
    fc.assert(
      fc.property(anyState(fields), (values) => {
        const { band, ghost = [] } = figureOf(fieldsState<SharedFields>(values));
        expect(band[0]?.upper).toBeCloseTo(ghost[0]?.upper ?? Number.NaN, 9);
        expect(band.map(({ lower, upper }) => lower + upper).every((sum) => sum === 0)).toBe(true);
      }),
    );
  });

  it('has its dot on the edge of the strip, at what was set', () => {
    fc.assert(
      fc.property(anyState(fields), (values) => {
        const { at, domain } = figureOf(fieldsState<SharedFields>(values));
        const isPair = subjectOf(values).kind === 'pair';
        expect(at.x).toBeCloseTo(isPair ? values.shared : values.counted, 9);
        expect(domain.upper).toBe(isPair ? 1 : 100);
        expect(at.y).toBe(widthOf(subjectOf(values)));
      }),
    );
  });
});

describe('the answers', () => {
  it('give the sum of the club’s pads, by hand, and what strangers would make', () => {
    const [result, tie, worst] = answersOf(prepared);
    const u = (variance: number) => `±${(2 * Math.sqrt(variance / 3)).toFixed(2)}${nb}dB`;
    expect(result.figure).toBe(u(2 * 0.04 + 4 * 0.16));
    expect(tie.figure).toBe(`r${nb}=${nb}0.80`);
    expect(tie.words).toContain(`${u(2 * (0.04 + 0.16))}, too little`);
    expect(worst.figure).toBe(`±1.2${nb}dB`);
  });

  it('say of a difference that strangers claim too much, and of nothing shared that it is the same', () => {
    expect(answersOf({ ...prepared, of: 'difference' })[1].words).toContain('too much');
    expect(answersOf({ ...prepared, of: 'mean' })[1].words).toContain('too little');
    expect(answersOf({ ...prepared, shared: 0 })[1].words).toContain('the same');
  });

  it('of two exact values are a band of no width', () => {
    const [result, tie, worst] = answersOf({ ...prepared, own: 0, shared: 0 });
    expect([result.figure, tie.figure, worst.figure]).toEqual([
      `±0.00${nb}dB`,
      `r${nb}=${nb}0.00`,
      `±0.00${nb}dB`,
    ]);
  });

  it('speak in words without signs', () => {
    expect(summarise(prepared)).toBe(
      'The result is known to plus or minus 0.98 decibels. Correlation coefficient 0.80. Worst case plus or minus 1.2 decibels.',
    );
  });
});

describe('the readings of GUM H.2 as states of the figure', () => {
  const published = (id: string, what: string): number => {
    const figure = checksOf(chapters())
      .find((check) => check.id === id)
      ?.figures.find((one) => one.what === what);
    if (figure === undefined) throw new Error(`wish a published ${what} in ${id}`);
    return Number(figure.printed);
  };
  const opened = (address: string) => decode(sharedSpec, address).state;

  it.each([
    ['of=r&v=1', 'R', 'gum-h2-r'],
    ['of=z&v=1', 'Z', 'gum-h2-z'],
    ['of=r&co=0&v=1', 'R', 'gum-h2-uncorrelated'],
    ['of=x&co=0&v=1', 'X', 'gum-h2-uncorrelated'],
    ['of=z&co=0&v=1', 'Z', 'gum-h2-uncorrelated'],
  ])('?%s says the printed u(%s) of %s', (address, output, id) => {
    const u = published(id, `u(${output})`).toFixed(3);
    expect(answersOf(opened(address))[0].figure).toContain(`u${nb}=${nb}${u}${nb}Ω`);
    const value = published(`gum-h2-${output.toLowerCase()}`, output).toFixed(3);
    expect(answersOf(opened(address))[0].figure).toContain(`${output}${nb}=${nb}${value}${nb}Ω`);
  });

  it('?of=x&v=1 says 0.296 where the Guide prints 0.295 from its second approach, as the check explains', () => {
    expect(published('gum-h2-x', 'u(X)')).toBe(0.295);
    expect(answersOf(opened('of=x&v=1'))[0].figure).toBe(
      `X${nb}=${nb}219.847${nb}Ω, u${nb}=${nb}0.296${nb}Ω`,
    );
    expect(widthOf(subjectOf(opened('of=x&v=1')))).toBeCloseTo(0.29558, 5);
  });

  it('say the printed coefficients', () => {
    const { figure, words } = answersOf(opened('of=r&v=1'))[1];
    expect(figure).toBe(`V and φ: r${nb}=${nb}${published('gum-h2-inputs', 'r(V, φ)').toFixed(2)}`);
    expect(words).toContain(`V and I: r${nb}=${nb}\u22120.36`);
    expect(words).toContain(`I and φ: r${nb}=${nb}\u22120.65`);
  });

  it('say how much leaving them out changes: printed 0.195 over 0.071', () => {
    const [, , left] = answersOf(opened('of=r&v=1'));
    expect(left.figure).toBe(`u${nb}=${nb}0.195${nb}Ω without them`);
    expect(Number.parseFloat(left.words)).toBeCloseTo(0.195 / 0.071, 1);
    expect(independentWidthOf(subjectOf(opened('of=r&v=1')))).toBeCloseTo(0.195, 3);
  });
});
