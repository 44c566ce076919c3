import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { clubPadsLine, EXTRA_DB } from '../../src/sheet/pads-line.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { figureOf } from '../../src/widgets/pads-line/figure.ts';
import { type PadsFields, type PadsState, padsLineOf, padsSpec } from '../../src/widgets/pads-line/spec.ts';
import { strings } from '../../src/widgets/pads-line/strings.ts';
import { answersOf, summarise } from '../../src/widgets/pads-line/words.ts';
import { type FieldsAction, fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { anyState } from '../address/any-state.ts';

const { fields } = padsSpec;
const prepared: PadsState = defaultState(fields);
/** The transmitter and meter of the lesson's guess. */
const unmatched: PadsState = { ...prepared, source: 2, meter: 1.25, pad: 6, reading: 10 };
const nb = '\u00a0';
const start = fieldsState<PadsFields>(prepared);
const reduce = reduceFields<PadsFields>(fields);
const action: fc.Arbitrary<FieldsAction<PadsFields>> = fc.oneof(
  fc.record({
    type: fc.constant('set' as const),
    name: fc.constantFrom(...Object.keys(fields), 'nobody'),
    value: fc.oneof(fc.double(), fc.integer({ min: -60, max: 60 }), fc.constantFrom('zz')),
  }),
  fc.constantFrom({ type: 'grasp' } as const, { type: 'release' } as const, { type: 'cancel' } as const),
  fc.constant({ type: 'reset', values: prepared } as const),
);
const mostOf = (state: PadsState): number =>
  Math.max(
    ...figureOf(fieldsState<PadsFields>(state)).band.map(({ lower, upper }) => Math.max(-lower, upper)),
  );

describe('the line through a pad under any sequence of actions', () => {
  it('can always be drawn and said, with finite numbers', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 20 }), (actions) => {
        const state = actions.reduce(reduce, start);
        const { span, band, ghost = [], line, at } = figureOf(state);
        const ends = [...band, ...ghost].flatMap(({ lower, upper }) => [lower, upper]);
        for (const y of [...ends, ...[...line, at].map((point) => point.y)]) {
          expect(Number.isFinite(y)).toBe(true);
          if (!state.held) expect(Math.abs(y ?? Number.NaN)).toBeLessThanOrEqual(span);
        }
        const said = [summarise(state.values), ...answersOf(state.values).flatMap(Object.values)].join(' ');
        expect(said).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 40 },
    );
  });

  it('keeps its axis while the knob is held', () => {
    const held = reduce(start, { type: 'grasp' });
    const pulled = reduce(held, { type: 'set', name: 'source', value: 5 });
    expect(figureOf(pulled).span).toBe(figureOf(held).span);
    expect(reduce(pulled, { type: 'cancel' }).values).toEqual(prepared);
  });
});

describe('the figure', () => {
  it('has a strip that falls onto the outline where the pad is perfect, and begins with no pad at all', () => {
    const { band, ghost } = figureOf(fieldsState<PadsFields>({ ...unmatched, padSwr: 1 }));
    expect(band).toEqual(ghost);
    const real = figureOf(fieldsState<PadsFields>(unmatched));
    expect(real.band[0]).toEqual(real.ghost?.[0]);
    expect(real.band).not.toEqual(real.ghost);
  });

  it('has a line of standard uncertainties inside the strip', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        const { band, line } = figureOf(fieldsState<PadsFields>(state));
        for (const { x, y } of line) {
          const limits = band.find((point) => point.x === x);
          expect(y).toBeLessThanOrEqual(Math.max(-(limits?.lower ?? 0), limits?.upper ?? 0) + 1e-9);
        }
      }),
      { numRuns: 30 },
    );
  });

  it('reaches farther for a worse transmitter', () => {
    expect(mostOf({ ...prepared, source: 3 })).toBeGreaterThan(mostOf(prepared));
  });
});

describe('the address of the line', () => {
  it('has a specification free of faults, units as its kinds say, and the pad of the check in its label', () => {
    expect(specFaults(padsSpec)).toEqual([]);
    for (const [name, unit] of Object.entries(strings.settings.units))
      expect(kindOf(fields[name as keyof PadsFields].kind).base).toBe(unit);
    expect(fields.moved.label).toContain(`${EXTRA_DB} decibel pad`);
  });

  it('gives back every state that it was made from', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(padsSpec, encode(padsSpec, state))).toMatchObject({ state, problems: [] });
      }),
    );
  });

  it('begins with the club’s line', () => expect(padsLineOf(prepared)).toEqual(clubPadsLine()));
});

describe('the answers', () => {
  it('give the result in dBm and in watts with its largest part, the check, and the match', () => {
    const [result, step, match] = answersOf(prepared);
    expect(result.figure).toBe(`27.10${nb}dBm ±0.68${nb}dB`);
    expect(result.words).toContain(`513${nb}mW, 439 to 600. Largest part: the pad, 72${nb}%`);
    expect(step.figure).toBe(`10.0${nb}dB taken off: no overload seen`);
    expect(match.figure).toBe(`±0.18${nb}dB, u = 0.09${nb}dB`);
    expect(match.words).toContain(`without any pad ±0.16${nb}dB, u = 0.11${nb}dB`);
  });

  it('give the limits of the guess with a real pad, a perfect one, and none', () => {
    const match = (state: PadsState) => answersOf(state)[2];
    expect(match(unmatched).figure).toBe(`+0.34/\u22120.36${nb}dB, u = 0.16${nb}dB`);
    expect(match({ ...unmatched, padSwr: 1 }).figure).toContain(`±0.08${nb}dB`);
    expect(match({ ...unmatched, pad: 0 }).figure).toBe(`+0.32/\u22120.33${nb}dB, u = 0.23${nb}dB`);
    expect(match({ ...unmatched, pad: 0 }).words).toBe(strings.noPadWords);
  });

  it('give no result where the further pad moves the reading by too little or too much, and say which', () => {
    for (const [moved, said] of [
      [9.1, 'overload'],
      [11, 'a bad connection'],
    ] as const) {
      const [result, step] = answersOf({ ...prepared, moved });
      expect(result).toEqual({ figure: 'No result', words: strings.noneWords });
      expect(step.words).toContain(said);
    }
    expect(answersOf({ ...prepared, moved: 9.6 })[0].figure).toContain('dBm');
  });

  it('give no result above the largest level of the meter or below its floor, and say so', () => {
    const high = answersOf({ ...prepared, reading: 20.9, pad: 6 })[0];
    expect(high.figure).toBe('No result');
    expect(high.words).toContain(`20.9${nb}dBm is above the meter's largest level, 20.0${nb}dBm`);
    expect(answersOf({ ...prepared, reading: -35 })[0].words).toContain('below the meter');
    expect(answersOf({ ...prepared, reading: 20 })[0].figure).toContain('dBm');
  });

  it('name another part as the largest once the pad is measured', () => {
    expect(answersOf({ ...prepared, within: 0.1 })[0].words).toContain('Largest part: the meter');
  });

  it('speak in words without signs', () => {
    expect(summarise(prepared)).toBe(
      '27.10 decibel-milliwatts plus or minus 0.68 decibels. 10.0 decibels taken off: no overload seen. Mismatch plus or minus 0.18 decibels, standard uncertainty 0.09 decibels.',
    );
  });
});
