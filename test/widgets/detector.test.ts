import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import {
  clubDetector,
  DETECTOR_PARTS,
  DROPS,
  detectorFound,
  forgottenDb,
  leastVolts,
} from '../../src/sheet/detector.ts';
import { outOfRangeText } from '../../src/text/out-of-range-text.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { figureOf } from '../../src/widgets/detector/figure.ts';
import {
  type DetectorFields,
  type DetectorState,
  detectorSpec,
  useOf,
} from '../../src/widgets/detector/spec.ts';
import { strings } from '../../src/widgets/detector/strings.ts';
import { answersOf, cautionText, partsOf, summarise } from '../../src/widgets/detector/words.ts';
import { type FieldsAction, fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { anyState } from '../address/any-state.ts';

const { fields } = detectorSpec;
const prepared: DetectorState = defaultState(fields);
const nb = '\u00a0';
const start = fieldsState<DetectorFields>(prepared);
const reduce = reduceFields<DetectorFields>(fields);
const at = (now: Partial<DetectorState>): DetectorState => ({ ...prepared, ...now });
const drawn = (now: Partial<DetectorState> = {}) => figureOf(fieldsState<DetectorFields>(at(now)));
const action: fc.Arbitrary<FieldsAction<DetectorFields>> = fc.oneof(
  fc.record({
    type: fc.constant('set' as const),
    name: fc.constantFrom(...Object.keys(fields), 'nobody'),
    value: fc.oneof(fc.double(), fc.integer({ min: -60, max: 200 }), fc.constantFrom(...DROPS, 'zz')),
  }),
  fc.constantFrom({ type: 'grasp' } as const, { type: 'release' } as const, { type: 'cancel' } as const),
  fc.constant({ type: 'reset', values: prepared } as const),
);
const all = (state: DetectorState): string =>
  [
    summarise(state),
    cautionText(state),
    ...answersOf(state).flatMap(Object.values),
    ...partsOf(state).flatMap(Object.values),
  ].join(' ');

describe('the detector under any sequence of actions', () => {
  it('can always be drawn and said, with finite numbers within its axes', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 20 }), (actions) => {
        const state = actions.reduce(reduce, start);
        const { span, domain, band, ghost, line, at: here } = figureOf(state);
        for (const { x } of [...line, here]) {
          expect(x).toBeGreaterThanOrEqual(domain.lower);
          expect(x).toBeLessThanOrEqual(domain.upper + 1e-9);
        }
        const ends = [...band, ...(ghost ?? [])].flatMap(({ lower, upper }) => [lower, upper]);
        if (!state.held)
          for (const y of [...ends, ...line.map((of) => of.y)]) expect(Math.abs(y)).toBeLessThanOrEqual(span);
        expect(all(state.values)).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 40 },
    );
  });

  it('keeps its axis while the knob is held', () => {
    const held = reduce(start, { type: 'grasp' });
    const pulled = reduce(held, { type: 'set', name: 'detected', value: 1 });
    expect(figureOf(pulled).span).toBe(figureOf(held).span);
  });
});

describe('the address of the detector', () => {
  it('has a specification free of faults, a unit for every number and words for every code', () => {
    expect(specFaults(detectorSpec)).toEqual([]);
    for (const name of ['detected', 'drop', 'known', 'load', 'harmonics'] as const)
      expect(kindOf(fields[name].kind).base).toBe(strings.settings.units[name]);
    expect(Object.keys(strings.settings.choices.from)).toEqual([...DROPS]);
    expect(Object.keys(strings.parts)).toEqual([...DETECTOR_PARTS]);
  });

  it('gives back every state that it was made from', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(detectorSpec, encode(detectorSpec, state))).toMatchObject({ state, problems: [] });
      }),
    );
  });

  it('begins with the club’s detector', () => expect(useOf(prepared)).toEqual(clubDetector()));
});

describe('the figure', () => {
  it('has a line of what is forgotten, from where the method begins', () => {
    const { line, edge, at: here } = drawn();
    expect(edge).toBeCloseTo(leastVolts(clubDetector()), 12);
    expect(line[0]?.x).toBeCloseTo(edge ?? 0, 9);
    for (const { x, y } of line) expect(y).toBeCloseTo(forgottenDb({ ...clubDetector(), detectedV: x }), 12);
    expect(here.y).toBeCloseTo(forgottenDb(clubDetector()), 12);
  });

  it('has a strip that is wider at low volts, within the worst case', () => {
    const { band, ghost = [] } = drawn();
    expect(band[0]?.upper).toBeGreaterThan(band.at(-1)?.upper ?? 0);
    for (const [index, { upper }] of band.entries()) expect(ghost[index]?.upper).toBeGreaterThan(upper);
  });

  it('has no edge with a curve, and reaches down to what was read', () => {
    const low = drawn({ detected: 0.6, drop: 0.4, known: 0.03, from: 'curve' });
    expect(low.edge).toBeUndefined();
    expect(low.line[0]?.x).toBeCloseTo(0.6, 12);
    expect(low.at.y).toBeLessThan(-4);
    expect(drawn({ from: 'curve' }).line[0]?.x).toBeCloseTo(leastVolts(clubDetector()), 9);
  });

  it('says nothing of what is looked at where there is no number', () => {
    expect(drawn({ detected: 0.6 }).at).toEqual({ x: 0.6, y: undefined });
  });
});

describe('the answers', () => {
  it('give power, worst case, largest part, and what forgetting the drop would do', () => {
    const figures = answersOf(prepared).map(({ figure }) => figure);
    expect(figures).toEqual([
      `27.02${nb}dBm ±0.36${nb}dB`,
      `±0.51${nb}dB at worst`,
      `Harmonics: 79${nb}%`,
      `\u22120.70${nb}dB without the drop`,
    ]);
    expect(answersOf(prepared)[3]?.words).toContain(`26.32${nb}dBm`);
  });

  it('name another largest part at a low level', () => {
    expect(answersOf(at({ detected: 1.85 }))[2]?.figure).toContain('Drop of the diode');
    expect(partsOf(at({ detected: 1.85 })).find(({ largest }) => largest)?.id).toBe('drop');
  });

  it.each([
    [{ detected: 0.6 }, /13\u00a0mW is below 50\u00a0mW/, /a curve of this very detector/],
    [
      { detected: 0.2, drop: 0.1, known: 0.2, from: 'curve' as const },
      /67\u00a0% of the peak/,
      /better known/,
    ],
  ])('give no number for %o, but why and what helps', (now, why, help) => {
    const [none, worst, helps] = answersOf(at(now));
    expect([none?.figure, worst?.figure, helps?.figure]).toEqual([
      'No number',
      'No worst case',
      'What helps',
    ]);
    expect(none?.words).toMatch(why);
    expect(helps?.words).toMatch(help);
    expect(summarise(at(now))).toMatch(/^No number\. /);
    expect(partsOf(at(now)).every(({ u, share }) => u === 'none' && share === 'none')).toBe(true);
    expect(all(at(now))).not.toMatch(/dBm ±|without the drop/);
  });

  it('say of the method’s own limit what the bench says', () => {
    const found = detectorFound(useOf(at({ detected: 0.6 })));
    if (found.inRange || found.reason.code !== 'belowDetector') throw new Error('wish too little power');
    expect(answersOf(at({ detected: 0.6 }))[0]?.words).toBe(outOfRangeText('shown', found.reason));
  });

  it('speak in words without signs', () => {
    expect(summarise(prepared)).toContain('Minus 0.70 decibels without the drop');
    expect(summarise(prepared)).not.toMatch(/[±\u2212]/);
  });
});

describe('the table and the caution', () => {
  it('state each part in its own unit', () => {
    expect(partsOf(prepared).map(({ stated }) => stated)).toEqual([
      `±0.05${nb}V`,
      `±0.10${nb}V`,
      `±0.28${nb}dB`,
      `±1.0${nb}% of R`,
    ]);
  });

  it('have heat, volts and twice the peak at the specification’s upper limit', () => {
    const volts = Math.sqrt(10 ** ((28.5 - 30) / 10) * 49.8);
    expect(cautionText(prepared)).toContain(`708${nb}mW as heat and ${volts.toFixed(2)}${nb}V RMS`);
    expect(cautionText(prepared)).toContain(`${(2 * Math.SQRT2 * volts).toFixed(1)}${nb}V in reverse`);
  });
});
