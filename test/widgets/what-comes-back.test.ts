import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { clubLine, MATCHES, returnLossHere, returnLossThere } from '../../src/sheet/what-comes-back.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { type FieldsAction, fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { figureOf, shareRows } from '../../src/widgets/what-comes-back/figure.ts';
import { type BackFields, type BackState, backSpec, lineOf } from '../../src/widgets/what-comes-back/spec.ts';
import { strings } from '../../src/widgets/what-comes-back/strings.ts';
import { answersOf, cautionText, powerRows, summarise } from '../../src/widgets/what-comes-back/words.ts';
import { anyState } from '../address/any-state.ts';

const { fields } = backSpec;
const prepared: BackState = defaultState(fields);
const nb = '\u00a0';
const start = fieldsState<BackFields>(prepared);
const reduce = reduceFields<BackFields>(fields);
const at = (now: Partial<BackState>): BackState => ({ ...prepared, ...now });
const drawn = (now: Partial<BackState> = {}) => figureOf(fieldsState<BackFields>(at(now)));
const action: fc.Arbitrary<FieldsAction<BackFields>> = fc.oneof(
  fc.record({
    type: fc.constant('set' as const),
    name: fc.constantFrom(...Object.keys(fields), 'nobody'),
    value: fc.oneof(fc.double(), fc.integer({ min: -5, max: 60 }), fc.constantFrom(...MATCHES, 'zz')),
  }),
  fc.constantFrom({ type: 'grasp' } as const, { type: 'release' } as const, { type: 'cancel' } as const),
  fc.constant({ type: 'reset', values: prepared } as const),
);
const all = (state: BackState): string =>
  [
    summarise(state),
    cautionText(state),
    ...answersOf(state).flatMap(Object.values),
    ...powerRows(state).flatMap(Object.values),
  ].join(' ');

describe('the line under any sequence of actions', () => {
  it('can always be drawn and said, with finite numbers within its axes', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 20 }), (actions) => {
        const state = actions.reduce(reduce, start);
        const { span, domain, band, line, at: here } = figureOf(state);
        for (const { x, y = 0 } of [...line, here]) {
          expect(x).toBeLessThanOrEqual(domain.upper);
          expect(y).toBeGreaterThanOrEqual(0);
          expect(y).toBeLessThanOrEqual(span);
        }
        for (const { lower, upper } of band) {
          expect(lower).toBeGreaterThanOrEqual(0);
          expect(upper).toBeGreaterThanOrEqual(lower);
          expect(upper).toBeLessThanOrEqual(span);
        }
        expect(all(state.values)).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 60 },
    );
  });

  it('keeps its axis while the knob is held', () => {
    const held = reduce(start, { type: 'grasp' });
    const pulled = reduce(held, { type: 'set', name: 'loss', value: 7 });
    expect(figureOf(pulled).span).toBe(figureOf(held).span);
  });
});

describe('the address of the line', () => {
  it('has a specification free of faults, a unit for every number and words for every code', () => {
    expect(specFaults(backSpec)).toEqual([]);
    for (const name of ['level', 'swr', 'loss', 'directivity'] as const)
      expect(kindOf(fields[name].kind).base).toBe(strings.settings.units[name]);
    expect(Object.keys(strings.settings.choices.match)).toEqual([...MATCHES]);
  });

  it('gives back every state that it was made from', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(backSpec, encode(backSpec, state))).toMatchObject({ state, problems: [] });
      }),
    );
  });

  it('begins with the club’s line', () => expect(lineOf(prepared)).toEqual(clubLine()));
});

describe('the figure', () => {
  it('climbs two decibels of return loss for each of the line, from the antenna’s own', () => {
    const { line, ghost = [], at: here } = drawn({ loss: 3 });
    expect(line[0]?.y).toBeCloseTo(returnLossThere(clubLine()), 12);
    expect(ghost.map(({ lower }) => lower)).toEqual([line[0]?.y, line[0]?.y]);
    expect((line.at(-1)?.y ?? 0) - (line[0]?.y ?? 0)).toBeCloseTo(20, 9);
    expect(here.y).toBeCloseTo(returnLossHere({ ...clubLine(), lossDb: 3 }), 12);
  });

  it('has a strip of what the meter may show around the line, wider with a poorer coupler', () => {
    const width = ({ lower, upper }: { lower: number; upper: number }): number => upper - lower;
    const [good, poor] = [drawn({ directivity: 35 }), drawn({ directivity: 20 })];
    good.band.forEach((of, index) => {
      expect(of.lower).toBeLessThanOrEqual(good.line[index]?.y ?? 0);
      expect(of.upper).toBeGreaterThanOrEqual(good.line[index]?.y ?? 99);
      const other = poor.band[index];
      if (other && other.upper < poor.span) expect(width(other)).toBeGreaterThan(width(of));
    });
  });

  it('divides the wave at the transmitter, and what goes into the line', () => {
    const [start_, line] = shareRows(lineOf(at({ loss: 3 })));
    expect(start_?.label).toBe(`Forward at the transmitter: 501${nb}mW`);
    expect((line?.first.powerW ?? 0) + (line?.second.powerW ?? 0)).toBeCloseTo(start_?.first.powerW ?? 0, 12);
    expect(line?.second.label).toBe(`heat: 281${nb}mW`);
  });
});

describe('the answers', () => {
  it('give the standing wave, what the antenna takes, and what comes back', () => {
    const [swr, taken, back] = answersOf(prepared);
    expect(swr.figure).toBe('SWR 2.91 at the transmitter');
    expect(swr.words).toContain('3.00 at the antenna');
    expect(taken.figure).toBe(`367${nb}mW in the antenna`);
    expect(taken.words).toContain(`\u22121.35${nb}dB of the 501${nb}mW`);
    expect(back.figure).toBe(`120${nb}mW comes back`);
    expect(back.words).toContain('nobody knows');
  });

  it('say of a tuner that it sends out again what came back', () => {
    const [, taken, back] = answersOf(at({ match: 'tuner' }));
    expect(taken.words).toContain(`\u22120.16${nb}dB`);
    expect(back.words).toContain('sends it out again');
  });

  it('give no number of a standing wave where the coupler leaks at least as much as comes back', () => {
    expect(answersOf(at({ swr: 1.1 }))[0].words).toMatch(/gives no number but “at most”/);
    expect(answersOf(at({ swr: 20, loss: 0, directivity: 10 }))[0].words).toContain('and anything above');
    expect(answersOf(prepared)[0].words).toMatch(/may show 2\.\d\d to 3\.\d\d$/);
  });

  it('speak in words without signs', () => {
    expect(summarise(prepared)).toBe(
      'SWR 2.91 at the transmitter. 367 milliwatts in the antenna. 120 milliwatts comes back.',
    );
  });
});

describe('the table and the caution', () => {
  it('have every power, as a share of what the transmitter gives', () => {
    const rows = powerRows(at({ match: 'tuner' }));
    expect(rows.map(({ id }) => id)).toEqual([
      'forward',
      'back',
      'into',
      'heat',
      'arriving',
      'turned',
      'taken',
    ]);
    expect(rows.find(({ id }) => id === 'into')?.share).toBe(`100.0${nb}%`);
    expect(Number.parseFloat(rows[0]?.share ?? '')).toBeGreaterThan(100);
  });

  it('have volts of both waves in step, and heat of the line, at the specification’s upper limit', () => {
    const matched = Math.sqrt(10 ** ((28.5 - 30) / 10) * 50);
    const rho = 0.5 * 10 ** -0.01;
    expect(cautionText(prepared)).toContain(`${(matched * (1 + rho)).toFixed(2)}${nb}V RMS`);
    expect(cautionText(prepared)).toContain(
      `${matched.toFixed(2)}${nb}V RMS, and the line takes up to 20.1${nb}mW`,
    );
    expect(cautionText(at({ level: 40 }))).toContain(`at 40.0${nb}dBm`);
  });
});
