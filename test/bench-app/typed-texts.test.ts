import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ohms, powerW, voltsPeak } from '#compute';
import { setupEntries } from '../../src/bench/entries/setup-entries.ts';
import { statedEntries } from '../../src/bench/entries/statement-entries.ts';
import { tidy, typed } from '../../src/bench/entries/typed.ts';
import { collector } from '../../src/bench/read/collector.ts';
import { linkReader } from '../../src/bench/read/link-reader.ts';
import { FORM_KEYS, hasUnit, LINK_SPECS } from '../../src/bench/read/link-spec.ts';
import { readSetup } from '../../src/bench/read/read-setup.ts';
import { readStated } from '../../src/bench/read/read-statement.ts';
import { SETUP_FIELDS, SETUP_SPECS } from '../../src/bench/read/setup-spec.ts';
import { statedText } from '../../src/bench/words/stated-link-text.ts';
import { blankSheet } from '../../src/sheet/blank-sheet.ts';
import { blankLink, ENTRY_FORMS } from '../../src/sheet/entries.ts';
import type { Stated } from '../../src/sheet/measurement.ts';
import { METHODS, type MethodSetup } from '../../src/sheet/method.ts';
import { readField } from '../../src/text/read/field.ts';
import { anyComputed } from './any-measurement.ts';
import { firstNumber } from './typed-sheet.ts';

describe('a number as somebody would type it', () => {
  it('is read back as the same, with no zero behind it that says nothing', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), fc.integer({ min: 0, max: 9 }), (digits, decimals) => {
        const value = Number((digits / 10 ** decimals).toFixed(decimals));
        expect(Number(typed(value))).toBe(value);
        expect(typed(value)).not.toMatch(/\.\d*0$|\.$/);
      }),
    );
  });

  it('has lost the noise of the last bit: 0.1 + 0.2 is 0.3', () => {
    expect(typed(tidy(0.1 + 0.2))).toBe('0.3');
    expect(typed(tidy(27 - 1.3))).toBe('25.7');
    expect(typed(1 / 3)).toBe('0.3333333333');
  });
});

/** What is read where a method is set up by these entries. */
const readBack = (setup: MethodSetup): MethodSetup => {
  const collect = collector();
  const read = readSetup(
    {
      ...blankSheet(setup.method),
      delivery: setup.method === 'inLine' ? 'net' : 'intoIdeal',
      ...setupEntries(setup),
    },
    collect,
  );
  expect(collect.problems).toEqual([]);
  return read;
};

describe('what is set up once', () => {
  it('comes back as it was, typed out and read again', () => {
    fc.assert(
      fc.property(anyComputed, ({ measurement: { setup } }) => {
        expect(readBack(setup)).toEqual(setup);
      }),
    );
  });

  it('keeps what is stated of an input’s limits, and leaves empty what is not', () => {
    const scope: MethodSetup = {
      method: 'oscilloscope',
      resistance: ohms(49.8),
      bandwidthsHz: [100e6],
      terminated: false,
      largestPeak: voltsPeak(300),
    };
    expect(setupEntries(scope)).toMatchObject({
      load: '49.8 ohm',
      scopeBandwidth: '100 MHz',
      probeBandwidth: '',
      terminated: 'no',
      largestPeak: '300 V',
    });
    const { largestPeak: _, ...open } = scope;
    expect(setupEntries(open).largestPeak).toBe('');
  });

  it('is typed in watts and percent where a meter in line has two ranges', () => {
    const range = { fullScale: powerW(0.2), percentOfFullScale: 7.5 };
    expect(
      setupEntries({ method: 'inLine', shows: 'peakEnvelope', forward: range, reflected: range }),
    ).toMatchObject({ shows: 'peakEnvelope', forwardScale: '0.2 W', reflectedPercent: '7.5' });
  });

  it('is asked for by every method but one in numbers that can be empty or not, each with limits in order', () => {
    const asked: readonly string[] = METHODS.flatMap((method) => SETUP_FIELDS[method].flat());
    expect(Object.keys(SETUP_SPECS).filter((key) => !asked.includes(key))).toEqual([]);
    for (const { min, max } of Object.values(SETUP_SPECS)) expect(min).toBeLessThan(max);
  });
});

/** One statement of each form, as data sheets and certificates have them. Invented numbers. */
const STATEMENTS: readonly Stated[] = [
  { form: 'limits', shape: 'rectangular', halfWidth: 0.5 },
  { form: 'limits', shape: 'triangular', halfWidth: 0.25 },
  { form: 'limits', shape: 'arcsine', halfWidth: 0.16 },
  { form: 'trapezoid', halfWidth: 0.5, topRatio: 0.4 },
  { form: 'uncertainLimits', halfWidth: 0.5, limitHalfWidth: 0.1 },
  { form: 'asymmetric', lower: -0.1, upper: 0.35 },
  { form: 'expanded', expanded: 0.06, coverageFactor: 2 },
  { form: 'expanded', expanded: 0.06, coverageFactor: 2.52, degreesOfFreedom: 6 },
  { form: 'coverage', expanded: 0.1, probability: 0.9545 },
  {
    form: 'corrections',
    by: 'frequency',
    points: [
      { at: 3.5e6, correction: -0.12, expanded: 0.1 },
      { at: 145e6, correction: 0.3, expanded: 0.15 },
    ],
    coverageFactor: 2,
  },
  {
    form: 'corrections',
    by: 'level',
    points: [
      { at: -20, correction: 0.36, expanded: 0.1 },
      { at: 10, correction: -0.1, expanded: 0.08 },
    ],
    coverageFactor: 2.2,
    degreesOfFreedom: 12,
  },
  { form: 'standard', standardUncertainty: 0.03, degreesOfFreedom: 9 },
  { form: 'readings', standardDeviation: 0.05, count: 8 },
  { form: 'displayStep', step: 0.01 },
  { form: 'halfWithin', halfWidth: 0.2 },
  { form: 'swr', sourceSwr: 1.5, loadSwr: 1.2 },
  {
    form: 'terms',
    terms: [
      { of: 'reading', percent: 0.5 },
      { of: 'fullScale', percent: 0.2, fullScale: 10 },
      { of: 'digits', count: 2, step: 0.01 },
      { of: 'floor', amount: 0.001 },
      {
        of: 'kelvin',
        terms: [{ of: 'reading', percent: 0.05 }],
        temperature: 31,
        range: { lower: 18, upper: 28 },
      },
      { of: 'year', terms: [{ of: 'reading', percent: 0.1 }], years: 1.5 },
    ],
  },
];

const ofForm = (form: Stated['form']): Stated => {
  const found = STATEMENTS.find((stated) => stated.form === form);
  if (found === undefined) throw new Error(`ofForm: wish a statement, got none of ${form}`);
  return found;
};

describe('what a link states', () => {
  it.each(STATEMENTS)('comes back as it was, typed out and read again: $form', (stated) => {
    const collect = collector();
    const entries = { ...blankLink('a'), ...statedEntries(stated) };
    expect(readStated(linkReader({ entries, method: 'oscilloscope', position: 0, collect }))).toEqual(stated);
    expect(collect.problems).toEqual([]);
  });

  it('is typed into the fields of its form, and no form is left out', () => {
    const forms = STATEMENTS.map((stated) => {
      const { form, ...texts } = statedEntries(stated);
      const keys: readonly string[] = FORM_KEYS[form];
      for (const key of Object.keys(texts)) if (key !== 'by') expect(keys).toContain(key);
      return form;
    });
    expect(new Set(forms)).toEqual(new Set(ENTRY_FORMS));
  });

  it('has a unit of its own but for a sum of terms and two standing-wave ratios', () => {
    expect(ENTRY_FORMS.filter((form) => !hasUnit(form))).toEqual(['terms', 'swr']);
  });

  it('has a reliability of 70 % at most, which leaves one degree of freedom (GUM G.4.2)', () => {
    const { max } = LINK_SPECS.reliability;
    expect(Math.floor(0.5 / (max / 100) ** 2)).toBe(1);
    expect(readField('71', LINK_SPECS.reliability)).toHaveProperty('problem');
  });
});

describe('a statement before any reading', () => {
  it('is told term by term as a data sheet has it, joined by plus', () => {
    expect(statedText('ascii', { stated: ofForm('terms'), unit: 'volts' }).split(' + ')).toEqual([
      '0.5 % of reading',
      '0.2 % of 10 full scale',
      '2 steps of 0.01',
      '0.001',
      '(0.05 % of reading) per kelvin outside 18 to 28 deg C, at 31 deg C',
      '(0.1 % of reading) per year, 1.5 years on',
    ]);
  });

  it('has one step and one year where there is one', () => {
    const year = { of: 'year', terms: [{ of: 'reading', percent: 0.1 }], years: 1 } as const;
    const stated: Stated = { form: 'terms', terms: [{ of: 'digits', count: 1, step: 0.01 }, year] };
    expect(statedText('ascii', { stated, unit: 'volts' })).toBe(
      '1 step of 0.01 + (0.1 % of reading) per year, 1 year on',
    );
  });

  it('names both standing-wave ratios and what is not known of them', () => {
    expect(statedText('ascii', { stated: ofForm('swr'), unit: 'dB' })).toBe('SWR 1.5 on 1.2, phase unknown');
  });

  it('says what a percentage is of', () => {
    const stated = ofForm('limits');
    expect(statedText('ascii', { stated, unit: 'percentOfResistance' })).toBe(
      '+/-0.5 % of resistance, limits',
    );
    expect(statedText('ascii', { stated, unit: 'kelvinRf' })).toBe('+/-0.5 K with RF, limits');
  });

  it('of two ratios widens the band as the U-shaped product of their reflections does', () => {
    // |Γ| of SWR 1.5 is 0.2, of 1.2 is 0.0909: (20/ln 10) x 0.01818 = 0.1579 dB, over sqrt 2 = 0.1117 dB (RMS of a sine).
    const { result } = firstNumber({
      links: [{ kind: 'mismatch', form: 'swr', sourceSwr: '1.5', loadSwr: '1.2' }],
    });
    expect(result.chain.result.propagation.standardUncertainty).toBeCloseTo(0.1117, 3);
  });
});
