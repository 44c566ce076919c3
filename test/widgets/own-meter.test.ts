import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { certificate, clubMeter, TREATMENTS } from '../../src/sheet/own-meter.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { figureOf } from '../../src/widgets/own-meter/figure.ts';
import { type MeterFields, type MeterState, meterSpec, useOf } from '../../src/widgets/own-meter/spec.ts';
import { strings } from '../../src/widgets/own-meter/strings.ts';
import { answersOf, summarise } from '../../src/widgets/own-meter/words.ts';
import { type FieldsAction, fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { anyState } from '../address/any-state.ts';

const { fields } = meterSpec;
const prepared: MeterState = defaultState(fields);
const nb = '\u00a0';
const start = fieldsState<MeterFields>(prepared);
const reduce = reduceFields<MeterFields>(fields);
const action: fc.Arbitrary<FieldsAction<MeterFields>> = fc.oneof(
  fc.record({
    type: fc.constant('set' as const),
    name: fc.constantFrom(...Object.keys(fields), 'nobody'),
    value: fc.oneof(fc.double(), fc.integer({ min: -30, max: 60 }), fc.constantFrom(...TREATMENTS, 'zz')),
  }),
  fc.constantFrom({ type: 'grasp' } as const, { type: 'release' } as const, { type: 'cancel' } as const),
  fc.constant({ type: 'reset', values: prepared } as const),
);

describe('the meter under any sequence of actions', () => {
  it('can always be drawn and said, with finite numbers, and never reads beyond its table', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 30 }), (actions) => {
        const state = actions.reduce(reduce, start);
        const { span, band, line, at } = figureOf(state);
        const ends = state.held ? [] : band.flatMap(({ lower, upper }) => [lower, upper]);
        for (const y of [...ends, ...(state.held ? [] : [...line, at].map((point) => point.y))])
          expect(Math.abs(y ?? Number.NaN)).toBeLessThanOrEqual(span);
        const said = [summarise(state.values), ...answersOf(state.values).flatMap(Object.values)].join(' ');
        expect(said).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 60 },
    );
  });

  it('keeps its axis while the knob is held', () => {
    const held = reduce(start, { type: 'grasp' });
    const pulled = reduce(held, { type: 'set', name: 'reading', value: -20 });
    expect(figureOf(pulled).span).toBe(figureOf(held).span);
  });
});

describe('the address of the meter', () => {
  it('has a specification free of faults, readings within the table, and words for every code', () => {
    expect(specFaults(meterSpec)).toEqual([]);
    const places = certificate().map(({ at }) => at);
    expect([fields.reading.min, fields.reading.max]).toEqual([Math.min(...places), Math.max(...places)]);
    for (const name of ['reading', 'months', 'permissible'] as const)
      expect(kindOf(fields[name].kind).base).toBe(strings.settings.units[name]);
    expect(Object.keys(strings.settings.choices.treatment)).toEqual([...TREATMENTS]);
  });

  it('gives back every state that it was made from', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(meterSpec, encode(meterSpec, state))).toMatchObject({ state, problems: [] });
      }),
    );
  });

  it('begins with the club’s meter', () => expect(useOf(prepared)).toEqual(clubMeter()));
});

describe('the answers', () => {
  it('give what is written down, the correction, and the verdict', () => {
    const [result, correction, verdict] = answersOf(prepared);
    expect(result.figure).toBe(`\u221213.0${nb}dBm`);
    expect(result.words).toContain(`\u22120.25${nb}dB off`);
    expect(correction.figure).toBe(`Correction +0.25${nb}dB`);
    expect(verdict.figure).toBe(`±0.40${nb}dB: meets it`);
  });

  it('add the correction where the table is used, with a band that knows the months', () => {
    const at = (months: number) => answersOf({ ...prepared, treatment: 'corrected', months })[0];
    expect(at(6).figure).toBe(`\u221212.75${nb}dBm ±0.13${nb}dB`);
    expect(at(0).words).toContain('no month of drift');
    expect(at(1).words).toContain('a month of drift');
    expect(at(36).figure).toBe(`\u221212.75${nb}dBm ±0.37${nb}dB`);
  });

  it('give no band and no verdict after the screw was turned', () => {
    const [result, correction, verdict] = answersOf({ ...prepared, treatment: 'adjusted' });
    expect(result.figure).toBe(`\u221213.0${nb}dBm`);
    expect(result.words).toContain('the table is void');
    expect(correction.words).toBe(strings.correctionVoid);
    expect(verdict.figure).toBe('Not verified');
  });

  it('tell three verdicts apart', () => {
    const at = (permissible: number, reading = -13) =>
      answersOf({ ...prepared, permissible, reading })[2].figure;
    expect(at(0.4)).toContain('meets it');
    expect(at(0.3)).toContain('can’t tell');
    expect(at(0.1)).toContain('fails it');
  });

  it('speak in words without signs', () => {
    expect(summarise(prepared)).toBe(
      'Written down: minus 13.0 decibel-milliwatts. Correction plus 0.25 decibels. Maximum permissible error plus or minus 0.40 decibels: meets it.',
    );
  });
});
