import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { TRACE_SLIPS } from '../../src/sheet/trace-slips.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { type FieldsAction, fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { figureOf } from '../../src/widgets/trace/figure.ts';
import { type TraceFields, type TraceState, traceOf, traceSpec } from '../../src/widgets/trace/spec.ts';
import { strings } from '../../src/widgets/trace/strings.ts';
import { answersOf, slipTable, summarise, traceLabels } from '../../src/widgets/trace/words.ts';
import { anyState } from '../address/any-state.ts';

const { fields } = traceSpec;
const prepared: TraceState = defaultState(fields);
const nb = '\u00a0';
const action: fc.Arbitrary<FieldsAction<TraceFields>> = fc.oneof(
  fc.record({
    type: fc.constant('set' as const),
    name: fc.constantFrom(...Object.keys(fields), 'nobody'),
    value: fc.oneof(fc.double(), fc.constantFrom('square', 'triangle', 'probe', 'zz')),
  }),
  fc.constantFrom({ type: 'grasp' } as const, { type: 'release' } as const, { type: 'cancel' } as const),
  fc.constant({ type: 'reset', values: prepared } as const),
);

describe('the trace under any sequence of actions', () => {
  it('can always be drawn and said, with finite numbers', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 30 }), (actions) => {
        const state = actions.reduce(reduceFields<TraceFields>(fields), fieldsState<TraceFields>(prepared));
        const drawn = figureOf(state);
        expect(drawn.spanV).toBeGreaterThan(0);
        expect(drawn.spanW).toBeGreaterThan(0);
        const said = [summarise(state.values), ...answersOf(state.values).flatMap(Object.values)].join(' ');
        expect(said).not.toMatch(/NaN|Infinity|undefined/);
      }),
    );
  });

  it('keeps its axes still while the crest is held', () => {
    const reduce = reduceFields<TraceFields>(fields);
    const held = reduce(fieldsState<TraceFields>(prepared), { type: 'grasp' });
    const pulled = reduce(held, { type: 'set', name: 'peakToPeak', value: 3 });
    expect(figureOf(pulled).spanV).toBe(figureOf(held).spanV);
    expect(figureOf(pulled).spanW).toBe(figureOf(held).spanW);
  });
});

describe('the address of the trace', () => {
  it('has a specification free of faults, units as its kinds say, and words for every code', () => {
    expect(specFaults(traceSpec)).toEqual([]);
    expect(kindOf(fields.load.kind).base).toBe(strings.settings.units.load);
    expect(Object.keys(strings.settings.choices.wave)).toEqual(Object.keys(fields.wave.choices));
    expect(Object.keys(strings.slips)).toEqual(['none', ...TRACE_SLIPS]);
    expect(Object.keys(fields.slip.choices)).toEqual(['none', ...TRACE_SLIPS]);
  });

  it('gives back every state that it was made from', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(traceSpec, encode(traceSpec, state))).toMatchObject({ state, problems: [] });
      }),
    );
  });
});

describe('what stands under the trace', () => {
  it('are the measures, the power and an invitation to a slip', () => {
    // 14.1/2 = 7.05; over the root of 2: 4.985; times 2/pi: 4.488; 4.985²/50 = 0.497
    expect(answersOf(prepared)).toEqual([
      {
        figure: `14.1${nb}Vpp`,
        words: `7.05${nb}V peak, 4.99${nb}V RMS, rectified average 4.49${nb}V`,
      },
      { figure: `497${nb}mW, 26.96${nb}dBm`, words: `mean power: RMS squared over the load of 50.0${nb}Ω` },
      { figure: 'No slip chosen', words: 'Choose one below, and see what it makes of this trace.' },
    ]);
  });

  it('is the slip that is looked at, with its factor and its error', () => {
    expect(answersOf({ ...prepared, slip: 'wholeAsPeak' })[2]).toEqual({
      figure: `1.99${nb}W by the slip`,
      words: `Trough to crest taken for the peak: 4.0${nb}times the power, +6.02${nb}dB`,
    });
    expect(answersOf({ ...prepared, slip: 'averageMeter' })[2]?.words).toMatch(/happens to change nothing/);
  });

  it('is spoken in words without signs', () => {
    expect(summarise({ ...prepared, wave: 'square', slip: 'sineForAll' })).toBe(
      'Square, 14.1 volts peak to peak: 7.05 volts peak, 7.05 volts RMS, rectified average 7.05 volts. 994 milliwatts, 29.97 decibel-milliwatts. The sine’s formula for any shape: 497 milliwatts, minus 3.01 decibels.',
    );
  });

  it('is a table of all slips, the harmless ones marked as such', () => {
    const rows = slipTable(traceOf(prepared));
    expect(rows.map(({ slip }) => slip)).toEqual(TRACE_SLIPS);
    expect(rows.filter(({ harmless }) => harmless).map(({ slip }) => slip)).toEqual([
      'sineForAll',
      'averageMeter',
      'assumedLoad',
    ]);
    expect(rows[1]).toMatchObject({ says: `3.98${nb}W`, factor: `8.0${nb}times`, error: `+9.03${nb}dB` });
  });
});

describe('words beside the marks', () => {
  it('name each measure with its unit, and the slip only where there is one', () => {
    expect(traceLabels(prepared)).toMatchObject({
      rms: [`RMS 4.99${nb}V`],
      mean: [`mean 497${nb}mW`],
      slipped: [],
    });
    expect(traceLabels({ ...prepared, slip: 'peakAsRms' }).slipped).toEqual([`slip 994${nb}mW`]);
  });
});
