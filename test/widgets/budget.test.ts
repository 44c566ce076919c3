import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { encode } from '../../src/address/encode.ts';
import { defaultState } from '../../src/address/field-spec.ts';
import { specFaults } from '../../src/address/spec-faults.ts';
import { clubUse, printedGauge } from '../../src/sheet/stated-budget.ts';
import { kindOf } from '../../src/text/read/kind.ts';
import { figureOf } from '../../src/widgets/budget/figure.ts';
import {
  type BudgetFields,
  type BudgetState,
  budgetSpec,
  shownFields,
  useOf,
} from '../../src/widgets/budget/spec.ts';
import { strings } from '../../src/widgets/budget/strings.ts';
import {
  answersOf,
  footOf,
  formsOf,
  freedomText,
  rowsOf,
  summarise,
} from '../../src/widgets/budget/words.ts';
import { type FieldsAction, fieldsState, reduceFields } from '../../src/widgets/parts/fields.ts';
import { anyState } from '../address/any-state.ts';

const { fields } = budgetSpec;
const prepared: BudgetState = defaultState(fields);
const nb = '\u00a0';
const opened = (address: string): BudgetState => {
  const { state, problems } = decode(budgetSpec, address);
  expect(problems).toEqual([]);
  return state;
};
const row = (state: BudgetState, id: string) => rowsOf(state).find((one) => one.id === id);

describe('the address of the budget', () => {
  it('has a specification free of faults, and words for every code and unit', () => {
    expect(specFaults(budgetSpec)).toEqual([]);
    const { choices, units } = strings.settings;
    for (const name of ['subject', 'coverage', 'digits', 'rounding'] as const)
      expect(Object.keys(choices[name])).toEqual(Object.keys(fields[name].choices));
    expect(kindOf(fields.count.kind).base).toBe(units.count);
    expect(kindOf(fields.scatter.kind).base).toBe(units.scatter);
  });

  it('gives back every state that it was made from', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(decode(budgetSpec, encode(budgetSpec, state))).toMatchObject({ state, problems: [] });
      }),
    );
  });

  it('begins with the club, and knows the printed gauge', () => {
    expect(useOf(prepared)).toEqual(clubUse());
    expect(useOf(opened('su=g&n=5&k=99&r=w&v=1'))).toEqual(printedGauge());
    expect(shownFields(prepared)).toContain('count');
    expect(shownFields(prepared)).toContain('scatter');
    expect(shownFields({ ...prepared, subject: 'gauge' })).not.toContain('scatter');
  });
});

describe('the budget in any state', () => {
  it('can be said and laid out, with a name and finite numbers in every row', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        const rows = rowsOf(state);
        expect(new Set(rows.map(({ label }) => label)).size).toBe(rows.length);
        expect(rows.filter(({ id, label }) => id === label)).toEqual([]);
        const said = [
          summarise(state),
          ...answersOf(state).flatMap(Object.values),
          ...formsOf(state),
          ...rows.flatMap(Object.values),
          ...Object.values(footOf(state)),
        ].join(' ');
        expect(said).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 60 },
    );
  });

  it('has forms that all differ', () => {
    fc.assert(
      fc.property(anyState(fields), (state) => {
        expect(new Set(formsOf(state)).size).toBe(formsOf(state).length);
      }),
      { numRuns: 60 },
    );
  });
});

describe('the figure', () => {
  const reduce = reduceFields<BudgetFields>(fields);
  const start = fieldsState<BudgetFields>(prepared);

  it('has its dot on the edge of a strip that narrows with every reading', () => {
    fc.assert(
      fc.property(anyState(fields), (values) => {
        const { band, at, span } = figureOf(fieldsState<BudgetFields>({ ...values, rounding: 'end' }));
        const here = band.find(({ x }) => x === values.count);
        expect(at).toEqual({ x: values.count, y: here?.upper });
        const widths = band.map(({ upper }) => upper);
        expect(widths).toEqual(widths.toSorted((a, b) => b - a));
        expect(Math.max(...widths)).toBeLessThanOrEqual(span);
      }),
      { numRuns: 30 },
    );
  });

  it('has k = 2 beside a factor from the degrees of freedom, and nothing beside itself', () => {
    expect(figureOf(start).ghost).toBeUndefined();
    const { ghost = [], band } = figureOf(fieldsState<BudgetFields>(opened('n=2&s=0.5&k=95&v=1')));
    expect(ghost[0]?.upper).toBeCloseTo(2 * 0.49376, 4);
    expect(band[0]?.upper).toBeGreaterThan(ghost[0]?.upper ?? Number.NaN);
    // From many readings the factor for 95 % is below 2.
    expect(band.at(-1)?.upper).toBeLessThan(ghost.at(-1)?.upper ?? Number.NaN);
  });

  it('keeps its axis while the knob is held', () => {
    const grasped = reduce(start, { type: 'grasp' });
    const actions: readonly FieldsAction<BudgetFields>[] = [
      { type: 'set', name: 'count', value: 20 },
      { type: 'set', name: 'scatter', value: 1 },
    ];
    expect(figureOf(actions.reduce(reduce, grasped)).span).toBe(figureOf(grasped).span);
  });
});

describe('the club’s budget', () => {
  it('has u of each part as its statement gives it', () => {
    expect(row(prepared, 'pad')).toMatchObject({
      label: '20 dB pad',
      u: `0.289${nb}dB`,
      sensitivity: '1',
      contribution: `0.289${nb}dB`,
      freedom: '∞',
    });
    expect(row(prepared, 'readings')).toMatchObject({ u: `0.115${nb}dB`, freedom: '2' });
    expect(footOf(prepared)).toEqual({ u: `0.364${nb}dB`, freedom: '196.4' });
  });

  it('is stated with U and k, with u, and with how well u is known', () => {
    const [result, u, freedom] = answersOf(prepared);
    expect(result.figure).toBe(`27.10${nb}dBm ±0.73${nb}dB`);
    expect(result.words).toContain(`k${nb}=${nb}2: about 95${nb}%`);
    expect(result.words).toMatch(/if the sum is a bell$/);
    expect(u.figure).toBe(`u${nb}=${nb}0.36${nb}dB`);
    expect(u.words).toContain(`20 dB pad, 63${nb}%`);
    expect(freedom.figure).toBe(`ν${nb}=${nb}196.4`);
  });

  it('says what k = 2 covers of few readings, and what it takes', () => {
    const few = opened('n=2&s=0.5&v=1');
    expect(answersOf(few)[0].words).toContain(`88${nb}%`);
    expect(answersOf(few)[2].words).toContain(`k${nb}=${nb}2.83 for 95${nb}%`);
    expect(answersOf({ ...few, coverage: 'p95' })[0].figure).toBe(`27.1${nb}dBm ±1.4${nb}dB`);
    expect(answersOf({ ...few, coverage: 'p95', digits: 'one' })[0].figure).toBe(`27${nb}dBm ±1${nb}dB`);
  });

  it('has its forms: u, brackets, and watts from unrounded ends', () => {
    const watts = (dbm: number): string => (10 ** (dbm / 10)).toFixed(0);
    const U = 2 * 0.36350149;
    expect(formsOf(prepared)).toEqual([
      `27.10${nb}dBm, u${nb}=${nb}0.36${nb}dB`,
      `27.10(36)${nb}dBm: ${strings.form.bracket}`,
      `513${nb}mW, ${watts(27.1 - U)} to ${watts(27.1 + U)}${nb}mW: ${strings.form.watts}`,
    ]);
    const one = formsOf({ ...prepared, digits: 'one' });
    expect(one[2]).toBe(formsOf(prepared)[2]);
  });

  it('speaks in words without signs', () => {
    expect(summarise(prepared)).toBe(
      `27.10 decibel-milliwatts plus or minus 0.73 decibels. Standard uncertainty${nb}0.36 decibels. Degrees of freedom${nb}196.4.`,
    );
  });
});

describe('the end gauge of GUM H.1 as a state', () => {
  const printed = opened('su=g&n=5&k=99&r=w&v=1');

  it('is stated as printed in H.1.6: (50.000 838 ± 0.000 093) mm, k = 2.92, 16 degrees of freedom', () => {
    const [result, u, freedom] = answersOf(printed);
    expect(result.figure).toBe(`50.000838${nb}mm ±93${nb}nm`);
    expect(result.words).toContain(`k${nb}=${nb}2.92: about 99`);
    expect(u.figure).toBe(`u${nb}=${nb}32${nb}nm`);
    expect(freedom.figure).toBe(`ν${nb}=${nb}16`);
    expect(formsOf(printed)[2]).toContain('(50.000838 ± 0.000093) mm');
    expect(formsOf(printed)[1]).toContain(`50.000838(32)${nb}mm`);
  });

  it('says beside it what comes of rounding once', () => {
    expect(formsOf(printed).at(-1)).toBe(strings.form.exact(`50.000838${nb}mm ±92${nb}nm`));
    expect(answersOf(opened('su=g&n=5&k=99&v=1'))[0].figure).toBe(`50.000838${nb}mm ±92${nb}nm`);
    expect(formsOf(opened('su=g&n=5&k=99&v=1'))).toHaveLength(3);
  });

  it('has the printed rows of table H.1', () => {
    const contributions = rowsOf(printed).map(({ contribution, freedom }) => [contribution, freedom]);
    const nm = (text: string) => `${text}${nb}nm`;
    expect(contributions).toEqual([
      [nm('25.0'), '18'],
      [nm('5.8'), '24'],
      [nm('3.9'), '5'],
      [nm('6.7'), '8'],
      [nm('2.9'), '50'],
      [nm('16.6'), '2'],
      [nm('0.0'), '∞'],
      [nm('0.0'), '∞'],
      [nm('0.0'), '∞'],
    ]);
  });

  it('gives inputs in their own units: kelvin, and parts per million per kelvin', () => {
    expect(row(printed, 'temperature difference')).toMatchObject({
      u: `0.029${nb}K`,
      sensitivity: '\u2212575',
    });
    expect(row(printed, 'expansion difference')).toMatchObject({ u: `0.58${nb}ppm/K`, sensitivity: '5.0' });
  });
});

describe('degrees of freedom as text', () => {
  it('have a tenth where they are no whole number, and a sign where they have no end', () => {
    expect(freedomText('shown', 16.74)).toBe('16.7');
    expect(freedomText('shown', 49.99999999999999)).toBe('50');
    expect(freedomText('shown', Number.POSITIVE_INFINITY)).toBe('∞');
  });
});
