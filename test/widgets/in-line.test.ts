import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { clubInLine } from '../../src/sheet/in-line-meter.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { figureOf } from '../../src/widgets/in-line/figure.ts';
import { type InLineFields, type InLineState, inLineOf, inLineSpec } from '../../src/widgets/in-line/spec.ts';
import { strings } from '../../src/widgets/in-line/strings.ts';
import { answersOf, summarise } from '../../src/widgets/in-line/words.ts';
import { type FieldsAction, fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { anyState } from '../address/any-state.ts';

const { fields } = inLineSpec;
const prepared: InLineState = defaultState(fields);
const low: InLineState = { ...prepared, forward: 3, reflected: 0, scale: 20, wanted: 'incident' };
const whip: InLineState = { ...prepared, forward: 5, reflected: 0.2, scale: 20, percent: 0 };
const nb = '\u00a0';
const start = fieldsState<InLineFields>(prepared);
const reduce = reduceFields<InLineFields>(fields);
const action: fc.Arbitrary<FieldsAction<InLineFields>> = fc.oneof(
  fc.record({
    type: fc.constant('set' as const),
    name: fc.constantFrom(...Object.keys(fields), 'nobody'),
    value: fc.oneof(fc.double(), fc.integer({ min: -5, max: 120 }), fc.constantFrom('net', 'incident', 'zz')),
  }),
  fc.constantFrom({ type: 'grasp' } as const, { type: 'release' } as const, { type: 'cancel' } as const),
  fc.constant({ type: 'reset', values: prepared } as const),
);
const figure = (state: InLineState) => figureOf(fieldsState<InLineFields>(state));

describe('the meter in the line under any sequence of actions', () => {
  it('can always be drawn and said, with finite numbers', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 30 }), (actions) => {
        const state = actions.reduce(reduce, start);
        const { span, band, domain, at } = figureOf(state);
        for (const { x, lower, upper } of band) {
          expect(x).toBeLessThanOrEqual(domain.upper + 1e-9);
          if (!state.held) expect(Math.max(-lower, upper)).toBeLessThanOrEqual(span);
        }
        expect(at.x).toBeLessThanOrEqual(domain.upper);
        const said = [summarise(state.values), ...answersOf(state.values).flatMap(Object.values)].join(' ');
        expect(said).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 60 },
    );
  });

  it('keeps its axis while the knob is held', () => {
    const held = reduce(start, { type: 'grasp' });
    const pulled = reduce(held, { type: 'set', name: 'forward', value: 0.9 });
    expect(figureOf(pulled).span).toBe(figureOf(held).span);
    expect(reduce(pulled, { type: 'cancel' }).values).toEqual(prepared);
  });
});

describe('the figure', () => {
  it('has a strip from three times the limits to the end of the scale, and none below', () => {
    const { band } = figure(prepared);
    expect(band[0]?.x).toBeCloseTo(0.15, 9);
    expect(band.at(-1)?.x).toBeCloseTo(1, 9);
    expect(band[0]?.upper).toBeCloseTo(10 * Math.log10(4 / 3), 9);
    expect(band[0]?.lower).toBeCloseTo(10 * Math.log10(2 / 3), 6);
  });

  it('has limits that shrink up the scale and meet the misreading at its end', () => {
    const { band, ghost } = figure(prepared);
    const widths = band.map(({ lower, upper }) => upper - lower);
    expect(widths).toEqual(widths.toSorted((a, b) => b - a));
    expect(band.at(-1)?.upper).toBeCloseTo(ghost?.[0]?.upper ?? 0, 9);
  });

  it('keeps the knob on the scale where the needle is beyond it', () => {
    expect(figure({ ...prepared, forward: 7 }).at.x).toBe(1);
  });
});

describe('the address of the meter in the line', () => {
  it('has a specification free of faults, units as its kinds say, and words for every code', () => {
    expect(specFaults(inLineSpec)).toEqual([]);
    for (const [name, unit] of Object.entries(strings.settings.units)) {
      const field = fields[name as keyof InLineFields];
      expect(field.type === 'number' && kindOf(field.kind).base).toBe(unit);
    }
    expect(Object.keys(strings.settings.choices.wanted)).toEqual(Object.keys(fields.wanted.choices));
  });

  it('gives back every state that it was made from', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(inLineSpec, encode(inLineSpec, state))).toMatchObject({ state, problems: [] });
        expect(summarise(state)).not.toMatch(/NaN|Infinity|undefined/);
        expect(figure(state).span).toBeGreaterThan(0);
      }),
    );
  });

  it('begins with the club’s meter', () => expect(inLineOf(prepared)).toEqual(clubInLine()));
});

describe('the answers', () => {
  it('give the power, what the scale allows, and no SWR where the reflected needle says nothing', () => {
    const [power, scale, swr] = answersOf(prepared);
    expect(power.figure).toBe(`26.97${nb}dBm ±0.77${nb}dB`);
    expect(power.words).toContain(`498${nb}mW, 417 to 595`);
    expect(scale.figure).toBe(`460 to 560${nb}mW`);
    expect(swr.figure).toBe('No SWR');
    expect(swr.words).toContain(`50${nb}mW, is more than a third of the reading, 10${nb}mW`);
  });

  it('give three watts on a scale of twenty from two to four, and nothing of forward less reflected', () => {
    expect(answersOf(low)[1].figure).toBe(`2.0 to 4.0${nb}W`);
    expect(answersOf(low)[0].figure).toContain('dBm');
    const net = answersOf({ ...low, wanted: 'net' })[0];
    expect(net.figure).toBe('No power');
    expect(net.words).toContain(`2.0${nb}W, is more than a third of the reading, 3.0${nb}W`);
  });

  it('give no reading low on the scale, beyond it, or where more comes back than goes out', () => {
    const figures = (state: InLineState) => answersOf(state).map((answer) => answer.figure);
    const none = ['No power', 'No reading', 'No SWR'];
    expect(figures({ ...prepared, scale: 20 })).toEqual(none);
    expect(figures({ ...prepared, forward: 2 })).toEqual(none);
    expect(figures({ ...prepared, reflected: 0.6 })).toEqual(none);
    expect(answersOf({ ...prepared, forward: 2 })[0].words).toBe(strings.offScale);
    expect(answersOf({ ...prepared, reflected: 0.6 })[2].words).toBe(strings.turnedRound);
    expect(answersOf({ ...prepared, scale: 20 })[1].words).toContain('more than a third of');
  });

  it('give the range of an SWR by the directivity, and what reflection takes', () => {
    const [, scale, swr] = answersOf(whip);
    expect(scale.figure).toBe(`5.000${nb}W`);
    expect(swr.figure).toBe('SWR 1.50');
    expect(swr.words).toContain('1.34 to 1.69');
    expect(swr.words).toContain(`0.18${nb}dB`);
    expect(answersOf({ ...whip, directivity: 35 })[2].words).toContain('1.45 to 1.56');
  });

  it('give an open upper end where all of the wave may come back', () => {
    const state = { ...prepared, forward: 0.9, reflected: 0.7, directivity: 10 };
    expect(answersOf(state)[2].words).toMatch(/true SWR \d+\.\d\d or more/);
  });

  it('speak in words without signs', () => {
    expect(summarise(prepared)).toBe(
      '26.97 decibel-milliwatts plus or minus 0.77 decibels. By the scale alone, forward is 460 to 560 milliwatts. No SWR.',
    );
    const coarse = { ...prepared, scale: 20 };
    expect(summarise(coarse)).toMatch(
      /^No power\. Out of range: .*510 milliwatts\. By the scale alone there is/,
    );
  });
});
