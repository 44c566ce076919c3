import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { clubHeat } from '../../src/sheet/dc-heat.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { figureOf } from '../../src/widgets/dc-heat/figure.ts';
import { type HeatFields, type HeatState, heatOf, heatSpec } from '../../src/widgets/dc-heat/spec.ts';
import { strings } from '../../src/widgets/dc-heat/strings.ts';
import { answersOf, summarise } from '../../src/widgets/dc-heat/words.ts';
import { type FieldsAction, fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { anyState } from '../address/any-state.ts';

const { fields } = heatSpec;
const prepared: HeatState = defaultState(fields);
const nb = '\u00a0';
const start = fieldsState<HeatFields>(prepared);
const reduce = reduceFields<HeatFields>(fields);
const action: fc.Arbitrary<FieldsAction<HeatFields>> = fc.oneof(
  fc.record({
    type: fc.constant('set' as const),
    name: fc.constantFrom(...Object.keys(fields), 'nobody'),
    value: fc.oneof(fc.double(), fc.integer({ min: -5, max: 70 }), fc.constantFrom('zz')),
  }),
  fc.constantFrom({ type: 'grasp' } as const, { type: 'release' } as const, { type: 'cancel' } as const),
  fc.constant({ type: 'reset', values: prepared } as const),
);
const figure = (state: HeatState) => figureOf(fieldsState<HeatFields>(state));

describe('the load under any sequence of actions', () => {
  it('can always be drawn and said, with finite numbers', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 30 }), (actions) => {
        const state = actions.reduce(reduce, start);
        const { span, band, line, at } = figureOf(state);
        const ends = band.flatMap(({ lower, upper }) => [lower, upper]);
        const places = [...line, at].map((point) => point.y ?? Number.NaN);
        for (const y of [...ends, ...places]) expect(Math.abs(y)).toBeLessThanOrEqual(span);
        const said = [summarise(state.values), ...answersOf(state.values).flatMap(Object.values)].join(' ');
        expect(said).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 60 },
    );
  });

  it('keeps its axis while the knob is held', () => {
    const held = reduce(start, { type: 'grasp' });
    const pulled = reduce(held, { type: 'set', name: 'waitedRf', value: 5 });
    expect(figureOf(pulled).span).toBe(figureOf(held).span);
    expect(reduce(pulled, { type: 'cancel' }).values).toEqual(prepared);
  });
});

describe('the figure', () => {
  it('has a line that rises toward nothing as the minutes go by', () => {
    const ys = figure(prepared).line.map(({ y }) => y);
    expect(ys).toEqual(ys.toSorted((a, b) => a - b));
    expect(Math.abs(ys.at(-1) ?? 1)).toBeLessThan(0.02);
  });

  it('begins its line where the axis can hold it, and keeps the place that is looked at on the axis', () => {
    const { line, span, at } = figure({ ...prepared, waitedRf: 1 });
    expect(line[0]?.x).toBeGreaterThan(1);
    expect(at).toEqual({ x: 1, y: -span });
  });

  it('crosses nothing where both runs were waited for alike', () => {
    const { line } = figure({ ...prepared, waitedDc: 20 });
    expect(line.find(({ x }) => x === 20)?.y).toBeCloseTo(0, 12);
  });
});

describe('the address of the load', () => {
  it('has a specification free of faults, and units as its kinds say', () => {
    expect(specFaults(heatSpec)).toEqual([]);
    expect(Object.keys(strings.settings.units).toSorted()).toEqual(Object.keys(fields).toSorted());
    for (const [name, unit] of Object.entries(strings.settings.units))
      expect(kindOf(fields[name as keyof HeatFields].kind).base).toBe(unit);
  });

  it('gives back every state that it was made from, and can say it', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(heatSpec, encode(heatSpec, state))).toMatchObject({ state, problems: [] });
        expect(summarise(state)).not.toMatch(/NaN|Infinity|undefined/);
        expect(figure(state).span).toBeGreaterThan(0);
      }),
    );
  });

  it('begins with the club’s load', () => expect(heatOf(prepared)).toEqual(clubHeat()));
});

describe('the answers', () => {
  it('give the result with its largest part, what waiting leaves, and the direct current', () => {
    const [result, wait, dc] = answersOf(prepared);
    expect(result.figure).toBe(`27.04${nb}dBm ±0.11${nb}dB`);
    expect(result.words).toContain(`505${nb}mW, 493 to 518. Largest part: the rise with DC`);
    expect(wait.figure).toBe(`0.00${nb}dB by waiting and room`);
    expect(wait.words).toContain(`99.6${nb}% of its rise reached with RF`);
    expect(dc.figure).toBe(`500${nb}mW of DC`);
    expect(dc.words).toContain(`the load is then 50.0${nb}\u03a9`);
  });

  it('give no result while the rise still moves, and say by how much', () => {
    const [result, wait] = answersOf({ ...prepared, waitedRf: 10 });
    expect(result.figure).toBe('No result yet');
    expect(result.words).toContain(`3.77${nb}K of the rise with RF, more than the ±0.10${nb}K`);
    expect(wait.figure).toBe(`\u22121.45${nb}dB by waiting and room`);
  });

  it('give a result after a short wait in both runs, and none in a room that changed', () => {
    expect(answersOf({ ...prepared, waitedRf: 10, waitedDc: 10 })[0].figure).toContain('dBm');
    const [result, wait] = answersOf({ ...prepared, room: 0.5 });
    expect(result.figure).toBe('No result yet');
    expect(wait.figure).toContain(`\u22120.24${nb}dB`);
    expect(answersOf({ ...prepared, room: 0.1 })[0].figure).toContain('No result');
    expect(answersOf({ ...prepared, room: 0.1, within: 0.2 })[0].figure).toContain('dBm');
  });

  it('give a larger transmitter on the same box a narrower band', () => {
    const state = { ...prepared, riseRf: 14.2, riseDc: 14, volts: 10, amperes: 0.1995 };
    expect(answersOf(state)[0].figure).toBe(`33.061${nb}dBm ±0.090${nb}dB`);
    expect(answersOf(state)[0].words).toContain(
      `Largest parts: the ammeter and unequal loss of heat, 30.7${nb}% of the variance each`,
    );
  });

  it('speak in words without signs', () => {
    expect(summarise(prepared)).toBe(
      '27.04 decibel-milliwatts plus or minus 0.11 decibels. Error 0.00 decibels by waiting and room. Replaced by 500 milliwatts of DC.',
    );
    expect(summarise({ ...prepared, room: 0.2 })).toMatch(
      /^No result yet\. It still moves: .* kelvins that a rise/,
    );
  });
});
