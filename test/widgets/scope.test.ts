import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { OutOfRange } from '#compute';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { clubScope, ENDS, GAIN_OF, rollOffDb, SCOPE_PARTS, scopeFound } from '../../src/sheet/scope.ts';
import { outOfRangeText } from '../../src/text/out-of-range-text.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { type FieldsAction, fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { figureOf } from '../../src/widgets/scope/figure.ts';
import { type ScopeFields, type ScopeState, scopeSpec, useOf } from '../../src/widgets/scope/spec.ts';
import { strings } from '../../src/widgets/scope/strings.ts';
import { answersOf, cautionText, partsOf, summarise } from '../../src/widgets/scope/words.ts';
import { anyState } from '../address/any-state.ts';

const { fields } = scopeSpec;
const prepared: ScopeState = defaultState(fields);
const nb = '\u00a0';
const start = fieldsState<ScopeFields>(prepared);
const reduce = reduceFields<ScopeFields>(fields);
const at = (now: Partial<ScopeState>): ScopeState => ({ ...prepared, ...now });
const drawn = (now: Partial<ScopeState> = {}) => figureOf(fieldsState<ScopeFields>(at(now)));
const action: fc.Arbitrary<FieldsAction<ScopeFields>> = fc.oneof(
  fc.record({
    type: fc.constant('set' as const),
    name: fc.constantFrom(...Object.keys(fields), 'nobody'),
    value: fc.oneof(
      fc.double(),
      fc.integer({ min: -5, max: 200 }),
      fc.constantFrom(...ENDS, ...GAIN_OF, 'zz'),
    ),
  }),
  fc.constantFrom({ type: 'grasp' } as const, { type: 'release' } as const, { type: 'cancel' } as const),
  fc.constant({ type: 'reset', values: prepared } as const),
);
const all = (state: ScopeState): string =>
  [
    summarise(state),
    cautionText(state),
    ...answersOf(state).flatMap(Object.values),
    ...partsOf(state).flatMap(Object.values),
  ].join(' ');

describe('the oscilloscope under any sequence of actions', () => {
  it('can always be drawn and said, with finite numbers within its axes', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 20 }), (actions) => {
        const state = actions.reduce(reduce, start);
        const { span, domain, band, ghost, line, at: here } = figureOf(state);
        for (const { x } of [...line, here]) {
          expect(x).toBeGreaterThanOrEqual(domain.lower);
          if (!state.held) expect(x).toBeLessThanOrEqual(domain.upper);
        }
        const ends = [...band, ...(ghost ?? [])].flatMap(({ lower, upper }) => [lower, upper]);
        if (!state.held) for (const y of ends) expect(Math.abs(y)).toBeLessThanOrEqual(span);
        expect(all(state.values)).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 40 },
    );
  });

  it('keeps its axes while the knob is held', () => {
    const held = reduce(start, { type: 'grasp' });
    const pulled = reduce(held, { type: 'set', name: 'frequency', value: 39 });
    expect(figureOf(pulled).domain).toEqual(figureOf(held).domain);
    expect(figureOf(pulled).span).toBe(figureOf(held).span);
  });
});

describe('the address of the oscilloscope', () => {
  it('has a specification free of faults, a unit for every number and words for every code', () => {
    expect(specFaults(scopeSpec)).toEqual([]);
    for (const name of ['load', 'frequency', 'scope', 'probe', 'gain', 'screen'] as const)
      expect(kindOf(fields[name].kind).base).toBe(strings.settings.units[name]);
    expect(Object.keys(strings.settings.choices.end)).toEqual([...ENDS]);
    expect(Object.keys(strings.settings.choices.gainOf)).toEqual([...GAIN_OF]);
    expect(Object.keys(strings.parts)).toEqual([...SCOPE_PARTS]);
  });

  it('gives back every state that it was made from', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(scopeSpec, encode(scopeSpec, state))).toMatchObject({ state, problems: [] });
      }),
    );
  });

  it('begins with the club’s oscilloscope', () => expect(useOf(prepared)).toEqual(clubScope()));
});

describe('the figure', () => {
  it('has a line of what one pole takes, and a band that ends where the method ends', () => {
    const { line, band, edge, at: here } = drawn();
    for (const { x, y } of line)
      expect(y).toBeCloseTo(-rollOffDb({ ...clubScope(), frequencyHz: x * 1e6 }), 12);
    expect(line.at(-1)?.x).toBeCloseTo(edge ?? 0, 9);
    expect(band.at(-1)?.x).toBeCloseTo(edge ?? 0, 9);
    expect(here.y).toBeLessThan(0);
  });

  it('has a worst case around the band, and both sink towards the edge', () => {
    const { band, ghost = [] } = drawn();
    band.forEach(({ lower, upper }, index) => {
      expect(ghost[index]?.lower).toBeLessThan(lower);
      expect(ghost[index]?.upper).toBeGreaterThan(upper);
    });
    const middle = (of: (typeof band)[number] | undefined): number =>
      ((of?.lower ?? 0) + (of?.upper ?? 0)) / 2;
    expect(middle(band.at(-1))).toBeLessThan(middle(band[0]));
  });

  it('says nothing of what is looked at where the method gives no number', () => {
    expect(drawn({ frequency: 145 }).at).toEqual({ x: 145, y: undefined });
    expect(drawn({ end: 'open' }).band).toEqual([]);
  });
});

describe('the answers', () => {
  it('give the power with its band, the worst case, and the part that decides', () => {
    const [level, worst, largest] = answersOf(prepared);
    expect(level.figure).toBe(`27.07${nb}dBm ±0.37${nb}dB`);
    expect(level.words).toBe(`509${nb}mW, 468 to 555; U with k = 2`);
    expect(worst.figure).toBe(`+0.64/−0.65${nb}dB at worst`);
    expect(largest.figure).toBe(`Gain of the oscilloscope: 66${nb}%`);
    expect(largest.words).toContain(`±0.22${nb}dB`);
  });

  it.each([
    [{ frequency: 145 }, /frequency is 1\.74 of the bandwidth/, /at least 484\u00a0MHz/],
    [{ end: 'open' as const }, /not terminated/, /before the key goes down/],
    [{ end: 'twoLoads' as const }, /24\.9\u00a0Ω/, /high resistance/],
    [{ peakToPeak: 20 }, /higher than the screen, which is 16\.0\u00a0V/, /coarser/],
    [{ peakToPeak: 0.5 }, /40\u00a0% of the trace/, /finer/],
  ])('give no number for %o, but why and what helps', (now, why, help) => {
    const [level, worst, helps] = answersOf(at(now));
    expect([level.figure, worst.figure, helps.figure]).toEqual(['No number', 'No worst case', 'What helps']);
    expect(level.words).toMatch(why);
    expect(helps.words).toMatch(help);
    expect(summarise(at(now))).toMatch(/^No number\. /);
    expect(
      partsOf(at(now)).every(({ u, share, largest }) => u === 'none' && share === 'none' && !largest),
    ).toBe(true);
    expect(all(at(now))).not.toMatch(/dBm ±/);
  });

  it('ask for a bandwidth that does help, and tell a frequency just above the edge from it', () => {
    const now = { frequency: 15.01, scope: 50, probe: 500 };
    const [level, , helps] = answersOf(at(now));
    expect(level.words).toContain('0.302 of the bandwidth, and above 0.300');
    const needed = Number(/at least ([\d.]+)\u00a0MHz/.exec(helps.words)?.[1]);
    expect(0.3 * needed).toBeGreaterThanOrEqual(now.frequency);
  });

  it('say of the method’s own limits what the bench says', () => {
    for (const now of [{ frequency: 145 }, { frequency: 24.97 }, { end: 'open' as const }]) {
      const found = scopeFound(useOf(at(now)));
      if (found.inRange) throw new Error('wish no number');
      expect(answersOf(at(now))[0].words).toBe(outOfRangeText('shown', found.reason as OutOfRange));
    }
  });

  it('speak in words without signs', () => {
    expect(summarise(prepared)).toBe(
      '27.07 decibel-milliwatts plus or minus 0.37 decibels. Plus 0.64, minus 0.65 decibels at worst. Gain of the oscilloscope: 66 percent of the variance.',
    );
  });
});

describe('the table of parts', () => {
  it('states each in its own unit, and its shares come to the whole', () => {
    const rows = partsOf(prepared);
    expect(rows.map(({ stated }) => stated)).toEqual([
      `±3.0${nb}% of volts`,
      `±0.10${nb}dB`,
      `±0.20${nb}Vpp`,
      `±0.09${nb}dB`,
      `±1.0${nb}% of R`,
      `0 to 0.05${nb}dB`,
      `0 to 0.01${nb}dB`,
    ]);
    const sum = rows.reduce((total, { share }) => total + Number.parseFloat(share), 0);
    expect(Math.abs(sum - 100)).toBeLessThanOrEqual(SCOPE_PARTS.length / 2);
    expect(rows.filter(({ largest }) => largest).map(({ id }) => id)).toEqual(['gain']);
  });

  it('states no roll-off where the method does not hold', () => {
    expect(partsOf(at({ frequency: 145 })).at(-1)?.stated).toBe('not known');
    expect(partsOf(at({ frequency: 145 })).map(({ stated }) => stated)[0]).toContain('of volts');
  });
});

describe('the caution', () => {
  it('has heat and volts of the load at the specification’s upper limit', () => {
    const volts = Math.sqrt(10 ** ((28.5 - 30) / 10) * 49.8);
    expect(cautionText(prepared)).toContain(`708${nb}mW as heat and ${volts.toFixed(2)}${nb}V RMS`);
  });

  it('warns of a line without its load, and of power into the oscilloscope’s own input', () => {
    expect(cautionText(at({ end: 'open' }))).toMatch(/on paper.*do not key it so/);
    expect(cautionText(at({ end: 'twoLoads' }))).toContain('commonly stands 5 V RMS');
  });

  it('follows the power up where the trace says more than the specification allows', () => {
    const state = at({ peakToPeak: 40, screen: 40 });
    const found = scopeFound(useOf(state));
    if (!found.inRange) throw new Error('wish a number');
    expect(cautionText(state)).toContain(`at ${found.result.propagation.interval.upper.toFixed(1)}${nb}dBm`);
  });
});
