import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { clubJoining, joinedOf, METERS, mostFrequency } from '../../src/sheet/joined.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { figureOf } from '../../src/widgets/joined/figure.ts';
import {
  alongOf,
  type JoinedFields,
  type JoinedState,
  joinedSpec,
  joiningOf,
  shownFields,
} from '../../src/widgets/joined/spec.ts';
import { strings } from '../../src/widgets/joined/strings.ts';
import { answersOf, summarise } from '../../src/widgets/joined/words.ts';
import { type FieldsAction, fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { anyState } from '../address/any-state.ts';

const { fields } = joinedSpec;
const prepared: JoinedState = defaultState(fields);
const nb = '\u00a0';
const start = fieldsState<JoinedFields>(prepared);
const reduce = reduceFields<JoinedFields>(fields);
const opened = (address: string): JoinedState => {
  const { state, problems } = decode(joinedSpec, address);
  expect(problems).toEqual([]);
  return state;
};
const action: fc.Arbitrary<FieldsAction<JoinedFields>> = fc.oneof(
  fc.record({
    type: fc.constant('set' as const),
    name: fc.constantFrom(...Object.keys(fields), 'nobody'),
    value: fc.oneof(fc.double(), fc.integer({ min: -1, max: 1200 }), fc.constantFrom(...METERS, 'zz')),
  }),
  fc.constantFrom({ type: 'grasp' } as const, { type: 'release' } as const, { type: 'cancel' } as const),
  fc.constant({ type: 'reset', values: prepared } as const),
);

describe('a meter that joins, under any sequence of actions', () => {
  it('can always be drawn and said, with finite numbers', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 30 }), (actions) => {
        const state = actions.reduce(reduce, start);
        const { span, band, line, at, domain } = figureOf(state);
        expect(at.x).toBeGreaterThanOrEqual(domain.lower);
        expect(at.x).toBeLessThanOrEqual(domain.upper);
        expect(line).toHaveLength(band.length);
        if (!state.held)
          for (const { lower, upper } of band)
            expect(Math.max(Math.abs(lower), Math.abs(upper))).toBeLessThanOrEqual(span);
        const said = [summarise(state.values), ...answersOf(state.values).flatMap(Object.values)].join(' ');
        expect(said).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 60 },
    );
  });

  it('keeps its axis while the knob is held', () => {
    const held = reduce(start, { type: 'grasp' });
    const pulled = reduce(held, { type: 'set', name: 'source', value: 500 });
    expect(figureOf(pulled).span).toBe(figureOf(held).span);
  });
});

describe('the address of the meter', () => {
  it('has a specification free of faults, and words for every code and unit', () => {
    expect(specFaults(joinedSpec)).toEqual([]);
    const { choices, units } = strings.settings;
    expect(Object.keys(choices.meter)).toEqual([...METERS]);
    expect(Object.keys(choices.wave)).toEqual(Object.keys(fields.wave.choices));
    for (const name of ['source', 'kilohertz', 'megahertz', 'resistance'] as const)
      expect(kindOf(fields[name].kind).base).toBe(units[name]);
  });

  it('gives back every state that it was made from', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(joinedSpec, encode(joinedSpec, state))).toMatchObject({ state, problems: [] });
      }),
    );
  });

  it('begins with the needle on the club’s divider, and shows the fields that count', () => {
    expect(joiningOf(prepared)).toEqual(clubJoining());
    expect(shownFields(prepared)).toEqual(['meter', 'source']);
    expect(shownFields(opened('me=a&v=1'))).toEqual(['meter', 'wave', 'kilohertz']);
    expect(shownFields(opened('me=10&v=1'))).toEqual(['meter', 'megahertz', 'resistance']);
  });
});

describe('the figure', () => {
  it('has its dot on the line where the meter is in range, and on the axis alone where it is not', () => {
    fc.assert(
      fc.property(anyState(fields), (values) => {
        const { at, span } = figureOf(fieldsState<JoinedFields>(values));
        const found = joinedOf(joiningOf(values));
        expect(at.y).toBe(found.inRange ? found.error : -span);
      }),
    );
  });

  it('draws line and strip up to the frequency that can be stood behind, and no farther', () => {
    for (const meter of METERS) {
      const values = { ...prepared, meter };
      const { line } = figureOf(fieldsState<JoinedFields>(values));
      const { max } = fields[alongOf(meter)];
      expect(line.at(-1)?.x).toBe(Math.min(max, mostFrequency(meter)));
    }
  });
});

describe('the answers', () => {
  it('give what joining takes, as power too, and where the reading may lie', () => {
    const [error, power, range] = answersOf(prepared);
    expect(error.figure).toBe(`\u221220.0${nb}%`);
    expect(error.words).toContain(`200${nb}kΩ`);
    expect(answersOf({ ...prepared, meter: 'digital' })[0].words, 'as its choice says').toContain(
      `10${nb}MΩ`,
    );
    expect(power.figure).toBe(`\u2212${(-20 * Math.log10(0.8)).toFixed(2)}${nb}dB of power`);
    expect(power.words).toContain(`\u2212${(100 * (1 - 0.64)).toFixed(1)}${nb}%`);
    expect(range.figure).toBe(`\u221225.0${nb}% to \u221215.0${nb}%`);
  });

  it('give a square wave too much, a triangle too little', () => {
    expect(answersOf(opened('me=a&wa=q&v=1'))[0].figure).toBe(`+11.1${nb}%`);
    expect(answersOf(opened('me=a&wa=t&v=1'))[0].figure).toBe(`\u22123.8${nb}%`);
    expect(answersOf(opened('me=a&v=1'))[0].figure).toBe(`0.0${nb}%`);
  });

  it('say of a probe that the circuit is changed', () => {
    const [loss, power, range] = answersOf(opened('me=10&mh=20&r=1000&v=1'));
    const x = 2 * Math.PI * 20e6 * 12e-12 * 500;
    expect(loss.figure).toBe(`\u2212${(10 * Math.log10(1 + x * x)).toFixed(2)}${nb}dB`);
    expect(loss.words).toContain(`12${nb}pF`);
    expect(power.words).toContain('the circuit is changed');
    expect(range.words).toBe(strings.rolledOff);
  });

  it('give no number out of range, and say up to where there would be one', () => {
    for (const address of ['me=a&kh=1.05&v=1', 'me=1&v=1', 'me=10&mh=27&v=1']) {
      const answers = answersOf(opened(address));
      expect(answers[0].figure).toBe('Out of range: no number');
      expect(answers.map(({ figure }) => figure).join(' ')).not.toMatch(/\d/);
      expect(answers[0].words).toMatch(/up to [\d.]+\u00a0[kM]Hz only/);
    }
    expect(answersOf(opened('me=a&kh=1.05&v=1'))[0].words).toContain(`up to 1${nb}kHz only`);
  });

  it('give a number at the very frequency that they say is the highest', () => {
    for (const meter of ['1', '10']) {
      const { words } = answersOf(opened(`me=${meter}&mh=40&v=1`))[0];
      const most = /up to ([\d.]+)\u00a0MHz only/.exec(words)?.[1];
      expect(answersOf(opened(`me=${meter}&mh=${most}&v=1`))[0].figure).toMatch(/dB$/);
    }
  });

  it('speak in words without signs', () => {
    expect(summarise(prepared)).toBe(
      'What is shown is off by minus 20.0 percent. That is minus 1.94 decibels of power. With what else may be wrong, from minus 25.0 percent to minus 15.0 percent.',
    );
  });
});
