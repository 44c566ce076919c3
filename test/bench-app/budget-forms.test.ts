import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BudgetLine, budgetLines, freedomText } from '../../src/bench/words/budget.ts';
import { robustnessWords } from '../../src/bench/words/robustness-words.ts';
import { statedForms } from '../../src/bench/words/stated-words.ts';
import type { LinkEntries } from '../../src/sheet/entries.ts';
import { anyComputed, numberedOf } from './any-measurement.ts';
import { firstNumber, type Typing } from './typed-sheet.ts';

const linesOf = (typing: Typing): readonly BudgetLine[] => budgetLines('ascii', firstNumber(typing).result);
const lineOf = (link: Partial<LinkEntries>, method: Typing['method'] = 'padsIntoMeter'): BudgetLine => {
  const readings = method === 'oscilloscope' ? '14.1' : '27 dBm';
  const lines = linesOf({
    method,
    links: [link],
    points: [{ readings, frequency: '3.58' }],
    ...scope(method),
  });
  const line = lines.find(({ id }) => id === 'link1');
  if (line === undefined) throw new Error('lineOf: wish a line of the link, got none');
  return line;
};
const scope = (method: Typing['method']) =>
  method === 'oscilloscope' ? { sheet: { scopeBandwidth: '100' } } : {};

describe('the budget', () => {
  it('has a contribution of sensitivity times uncertainty on every line, and they add up as squares (GUM 5.1.2)', () => {
    fc.assert(
      fc.property(anyComputed, (computed) => {
        for (const { result } of numberedOf(computed)) {
          const db = (text: string): number => Number(text.replace(' dB', ''));
          for (const line of budgetLines('ascii', result)) {
            expect(db(line.contribution)).toBeCloseTo(db(line.uncertainty), 3);
            expect(line.share).toBe(`${(100 * line.shareOf).toFixed(1)} %`);
            expect(['1', '-1']).toContain(line.sensitivity);
          }
        }
      }),
      { numRuns: 50 },
    );
  });

  // GUM 4.3.7 (a/sqrt 3), 4.3.9 (a/sqrt 6 and the trapezoid), F.1.3.5 (a/sqrt 2), F.2.2.1 (step/sqrt 12), 4.3.3 (U/k), 4.2.3 (s/sqrt n)
  it.each<[string, Partial<LinkEntries>, string, number]>([
    ['rectangular limits', {}, '√3', 0.5 / Math.sqrt(3)],
    ['limits whose middle is likelier', { form: 'triangular' }, '√6', 0.5 / Math.sqrt(6)],
    ['U-shaped limits', { form: 'arcsine' }, '√2', 0.5 / Math.SQRT2],
    ['lopsided limits', { form: 'asymmetric', lower: '-0.2', upper: '0.4' }, '√3', 0.3 / Math.sqrt(3)],
    ['a display step', { form: 'displayStep', amount: '0.1' }, '√12', 0.1 / Math.sqrt(12)],
    ['a standard uncertainty', { form: 'standard' }, '1', 0.5],
    ['readings', { form: 'readings', count: '16' }, '√16', 0.5 / 4],
    ['U with k = 2', { form: 'expanded' }, '2', 0.25],
    ['U with another k', { form: 'expanded', factor: '2.52' }, '2.52', 0.5 / 2.52],
    // 1.96 is what 95 % of a bell take
    ['U with its probability', { form: 'coverage', probability: '95' }, '1.96', 0.5 / 1.959964],
    // a sqrt((1 + 0.5^2)/6)
    ['a trapezoid', { form: 'trapezoid', top: '0.5' }, '2.19', 0.5 * Math.sqrt(1.25 / 6)],
    // half of a bell lies within 0.6745 of its standard deviations (GUM 4.3.5, which takes 1.48)
    ['half within', { form: 'halfWithin' }, '0.67', 0.5 / 0.67449],
  ])('divides %s by what its shape asks for', (_what, link, divisor, uncertainty) => {
    const line = lineOf(link);
    expect(line.divisor).toBe(divisor);
    expect(Number(line.uncertainty.replace(' dB', ''))).toBeCloseTo(uncertainty, 3);
  });

  it('gives no divisor of a percentage that is taken for decibels, but for a plain shape', () => {
    const inVolts: Partial<LinkEntries> = { unit: 'percentOfVolts', amount: '3', loss: '0' };
    expect(lineOf(inVolts, 'oscilloscope').divisor).toBe('√3');
    expect(lineOf({ ...inVolts, form: 'halfWithin' }, 'oscilloscope').divisor).toBe('');
  });

  it('says of two standing-wave ratios that the phase is what is not known', () => {
    const line = lineOf({ kind: 'mismatch', form: 'swr', sourceSwr: '1.5', loadSwr: '1.2' });
    expect(line.distribution).toBe('mismatch, phase unknown');
    // nearly sqrt 2: the two limits, 0.1565 and 0.1594 dB, differ a little
    expect(Number(line.divisor)).toBeCloseTo(Math.SQRT2, 1);
  });

  it('tells what is added back, and says nothing of nothing', () => {
    expect(lineOf({ loss: '20' }).loss).toBe('20.00 dB');
    expect(lineOf({ loss: '-3.5' }).loss).toBe('-3.50 dB');
    expect(lineOf({ loss: '0' }).loss).toBe('');
  });

  it('tells how many degrees of freedom stand behind a part', () => {
    expect(lineOf({}).freedom).toBe('∞');
    expect(lineOf({ form: 'readings', count: '10' }).freedom).toBe('9');
    expect(lineOf({ form: 'expanded', freedom: '6' }).freedom).toBe('6');
    // known to 25 %: (1/2) 0.25^-2 = 8 (GUM G.4.2, example)
    expect(lineOf({ reliability: '25' }).freedom).toBe('8');
    // ties go to the even digit (ISO 80000-1, annex B)
    expect(freedomText('ascii', 8.25)).toBe('8.2');
    expect(freedomText('ascii', 1e6)).toBe('∞');
  });

  it('counts a part against its cause with a minus, while what it contributes has no sign (GUM 5.1.3)', () => {
    const [meter, pad] = linesOf({
      links: [
        { cause: 'one meter', amount: '0.5' },
        { cause: 'one meter', direction: 'against', amount: '0.2' },
      ],
    });
    expect(meter?.sensitivity).toBe('1');
    expect(pad?.sensitivity).toBe('-1');
    expect(pad?.contribution).toBe('0.1155 dB');
  });

  it('says what the ranges of a meter in line bring, the reflected one only where it is taken off', () => {
    const scale = (delivery: 'net' | 'incident') =>
      linesOf({
        method: 'inLine',
        sheet: {
          delivery,
          forwardScale: '1 W',
          forwardPercent: '5',
          reflectedScale: '200 mW',
          reflectedPercent: '4',
        },
        points: [{ readings: '0.5', reflected: '0.01' }],
      })[0];
    expect(scale('net')).toMatchObject({
      source: 'the method',
      stated: '+/-5 % of 1.00 W full scale; +/-4 % of 200 mW full scale',
      distribution: 'two rectangles together',
    });
    expect(scale('incident')).toMatchObject({
      stated: '+/-5 % of 1.00 W full scale',
      distribution: 'rectangular',
    });
  });
});

describe('the stated result', () => {
  const textOf = (typing: Typing, key: string): string => {
    const text = statedForms('ascii', firstNumber(typing).result).find((form) => form.key === key)?.text;
    if (text === undefined) throw new Error(`textOf: wish a form, got none of ${key}`);
    return text;
  };

  it('has every form once, for any measurement with any uncertainty', () => {
    fc.assert(
      fc.property(anyComputed, (computed) => {
        for (const { result } of numberedOf(computed)) {
          const forms = statedForms('ascii', result);
          const keys = forms.map(({ key }) => key);
          expect(new Set(keys).size).toBe(keys.length);
          expect(keys).toContain('expanded');
          for (const { text, name } of forms) {
            expect(text).not.toMatch(/NaN|undefined|Infinity/);
            expect(name.length).toBeGreaterThan(0);
          }
        }
      }),
      { numRuns: 50 },
    );
  });

  it('holds in its bracket the units of the last digit, and the value itself in the third form', () => {
    const links = [{ form: 'standard', amount: '0.025' }] as const;
    expect(textOf({ links }, 'digits')).toMatch(/^27\.000\(25\) dBm/);
    expect(textOf({ links }, 'brackets')).toMatch(/^27\.000\(0\.025\) dBm/);
    // without a decimal the two are the same
    const wide = [{ form: 'standard', amount: '12' }] as const;
    expect(textOf({ links: wide }, 'digits')).toMatch(/^27\(12\) dBm/);
  });

  it('is wider in watts to the upper side: 27 +-1 dBm is 501 mW, +130/-103 mW', () => {
    // 10^2.7 = 501.19 mW; 10^2.8 = 630.96, 10^2.6 = 398.11
    const watts = textOf({ links: [{ form: 'expanded', amount: '1' }] }, 'watts');
    expect(watts).toMatch(/^501? mW|^0\.50 W|^500 mW/);
    const [, up = '', down = ''] = /\+(\d+)\/-(\d+) mW/.exec(watts) ?? [];
    expect(Number(up)).toBeGreaterThan(Number(down));
    expect(Math.abs(Number(up) - 129.8)).toBeLessThanOrEqual(5);
    expect(Math.abs(Number(down) - 103.1)).toBeLessThanOrEqual(5);
  });

  it('tells of Student’s t only as long as its degrees of freedom tell something', () => {
    const withFreedom = (freedom: string) => textOf({ links: [{ form: 'standard', freedom }] }, 'expanded');
    expect(withFreedom('9')).toContain('Student’s t with 9 effective degrees of freedom');
    expect(withFreedom('1000')).not.toContain('Student');
    expect(withFreedom('')).not.toContain('Student');
  });
});

describe('the verdict under other choices', () => {
  it('is steady exactly where every line has the same, the first being what was stated', () => {
    fc.assert(
      fc.property(anyComputed, (computed) => {
        for (const { result } of numberedOf(computed)) {
          const { lines, steady } = robustnessWords('ascii', result);
          expect(lines[0]?.taken).toBe('as stated');
          expect(steady).toBe(new Set(lines.map(({ verdict }) => verdict)).size === 1);
        }
      }),
      { numRuns: 30 },
    );
  });

  it('is wider with U shapes than with rectangles, and narrower with triangles', () => {
    const { lines } = robustnessWords('ascii', firstNumber({ links: [{ amount: '0.5' }, {}, {}] }).result);
    const widths = lines.map(({ interval }) => {
      const [lower = 0, upper = 0] = (interval.match(/\d+\.\d+/g) ?? []).map(Number);
      return upper - lower;
    });
    const [, rectangles = 0, triangles = 0, arcs = 0, twice = 0, thrice = 0] = widths;
    expect(triangles).toBeLessThan(rectangles);
    expect(rectangles).toBeLessThan(arcs);
    expect(thrice).toBeGreaterThan(twice);
  });

  it('leaves shapes alone that come from physics or from data', () => {
    const { lines } = robustnessWords(
      'ascii',
      firstNumber({ links: [{ form: 'arcsine' }, { form: 'expanded' }] }).result,
    );
    const shapes = lines.filter(({ taken }) => /plain limits|stated/.test(taken));
    expect(shapes).toHaveLength(4);
    expect(new Set(shapes.map(({ interval }) => interval)).size).toBe(1);
  });
});
