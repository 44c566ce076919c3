import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { MethodUnit, OutOfRange, Statement } from '#compute';
import { levelDbm, powerW } from '#compute';
import { METHODS, UNITS_OF } from '../../src/sheet/method.ts';
import { intervalText } from '../../src/text/interval-text.ts';
import { outOfRangeText } from '../../src/text/out-of-range-text.ts';
import { statementText } from '../../src/text/statement-text.ts';
import type { Style } from '../../src/text/style.ts';

const STYLES: readonly Style[] = ['shown', 'spoken', 'ascii', 'unicode'];
const within = (halfWidth: number): Statement => ({ form: 'limits', shape: 'rectangular', halfWidth });
const inFour = (statement: Statement, unit: MethodUnit): readonly string[] =>
  STYLES.map((style) => statementText(style, { statement, unit }));

/** A half-width of 0.25 in every unit: what it says shown, spoken, in ASCII and copied elsewhere. */
const IN_FOUR: Readonly<Record<MethodUnit, readonly [string, string, string, string]>> = {
  dB: ['±0.25\u00a0dB', 'plus or minus 0.25 decibels', '+/-0.25 dB', '±0.25 dB'],
  percentOfPower: [
    '±0.25\u00a0% of power',
    'plus or minus 0.25 percent of power',
    '+/-0.25 % of power',
    '±0.25 % of power',
  ],
  percentOfVolts: [
    '±0.25\u00a0% of volts',
    'plus or minus 0.25 percent of volts',
    '+/-0.25 % of volts',
    '±0.25 % of volts',
  ],
  percentOfResistance: [
    '±0.25\u00a0% of resistance',
    'plus or minus 0.25 percent of resistance',
    '+/-0.25 % of resistance',
    '±0.25 % of resistance',
  ],
  percentOfDcVolts: [
    '±0.25\u00a0% of DC volts',
    'plus or minus 0.25 percent of DC volts',
    '+/-0.25 % of DC volts',
    '±0.25 % of DC volts',
  ],
  percentOfDcAmperes: [
    '±0.25\u00a0% of current',
    'plus or minus 0.25 percent of current',
    '+/-0.25 % of current',
    '±0.25 % of current',
  ],
  voltsPeakToPeak: ['±0.25\u00a0Vpp', 'plus or minus 0.25 volts peak to peak', '+/-0.25 Vpp', '±0.25 Vpp'],
  volts: ['±0.25\u00a0V', 'plus or minus 0.25 volts', '+/-0.25 V', '±0.25 V'],
  dcVolts: ['±0.25\u00a0V DC', 'plus or minus 0.25 volts DC', '+/-0.25 V DC', '±0.25 V DC'],
  dcAmperes: ['±0.25\u00a0A', 'plus or minus 0.25 amperes', '+/-0.25 A', '±0.25 A'],
  kelvinRf: [
    '±0.25\u00a0K with RF',
    'plus or minus 0.25 kelvins with RF',
    '+/-0.25 K with RF',
    '±0.25 K with RF',
  ],
  kelvinDc: [
    '±0.25\u00a0K with DC',
    'plus or minus 0.25 kelvins with DC',
    '+/-0.25 K with DC',
    '±0.25 K with DC',
  ],
};
const UNITS = Object.keys(IN_FOUR) as MethodUnit[];

describe('a statement in the units of every method', () => {
  test.each(UNITS)('says of what it is, in each style: %s', (unit) => {
    expect(inFour(within(0.25), unit)).toEqual(IN_FOUR[unit].map((text) => `${text}, limits`));
  });

  test('has words of its own for every unit that one method tells from another', () => {
    for (const method of METHODS)
      for (const style of STYLES) {
        const texts = UNITS_OF[method].map((unit) => statementText(style, { statement: within(0.25), unit }));
        expect(new Set(texts).size).toBe(texts.length);
      }
  });

  test('says what the percentage is of once, at its end, in lopsided limits too', () => {
    const lopsided: Statement = { form: 'asymmetric', lower: -0.5, upper: 0.25 };
    expect(inFour(lopsided, 'percentOfDcVolts')).toEqual([
      '\u22120.5 to 0.25\u00a0% of DC volts, limits',
      'minus 0.5 to 0.25 percent of DC volts, limits',
      '-0.5 to 0.25 % of DC volts, limits',
      '\u22120.5 to 0.25 % of DC volts, limits',
    ]);
    expect(inFour({ form: 'asymmetric', lower: -0.5, upper: -0.25 }, 'kelvinDc')[2]).toBe(
      '-0.5 to -0.25 K with DC, limits',
    );
  });

  test('of every form names its number and its unit', () => {
    const forms: readonly (readonly [Statement, string])[] = [
      [{ form: 'expanded', expanded: 0.02, coverageFactor: 2 }, 'U 0.02 A, k = 2'],
      [{ form: 'coverage', expanded: 0.02, probability: 0.9545 }, 'U 0.02 A, 95.45 %'],
      [{ form: 'standard', standardUncertainty: 0.0125 }, 'u 0.0125 A'],
      [{ form: 'readings', standardDeviation: 0.001, count: 12 }, 's 0.001 A, 12 readings'],
      [{ form: 'displayStep', step: 0.001 }, 'display step 0.001 A'],
      [{ form: 'halfWithin', halfWidth: 0.5 }, 'half within +/-0.5 A'],
      [
        { form: 'uncertainLimits', halfWidth: 0.5, limitHalfWidth: 0.1 },
        '+/-0.5 A, limits known to +/-0.1 A',
      ],
    ];
    for (const [statement, words] of forms)
      expect(statementText('ascii', { statement, unit: 'dcAmperes' })).toBe(words);
  });

  test('in ASCII is ASCII, and shown never parts a number from its unit', () => {
    const half = fc.integer({ min: 0, max: 99999 }).map((digits) => digits / 1e4);
    fc.assert(
      fc.property(half, fc.constantFrom(...UNITS), (halfWidth, unit) => {
        const texts = inFour(within(halfWidth), unit);
        expect(texts[2]).toMatch(/^[ -~]+$/);
        expect(texts[0]).not.toMatch(/\d (dB|%|V|A|K)/);
        for (const text of texts) expect(Number(/\d+\.\d+/.exec(text)?.[0])).toBeCloseTo(halfWidth, 9);
      }),
    );
  });
});

describe('why a method gives no number', () => {
  const reasons: readonly OutOfRange[] = [
    { code: 'noTermination' },
    { code: 'aboveBandwidth', ratio: 1.74, largest: 0.3 },
    { code: 'belowDetector', power: powerW(0.01), least: powerW(0.05) },
    { code: 'fullScaleError', error: powerW(0.05), reading: powerW(0.1) },
    { code: 'belowFloor', reading: levelDbm(-70), limit: levelDbm(-60) },
    { code: 'aboveLargest', reading: levelDbm(30), limit: levelDbm(20) },
  ];

  test.each(reasons)('is one sentence that begins alike in every style: $code', (reason) => {
    for (const style of STYLES) expect(outOfRangeText(style, reason)).toMatch(/^Out of range: [^.].*\.$/);
    expect(outOfRangeText('ascii', reason)).toMatch(/^[ -~]+$/);
    expect(new Set(reasons.map((one) => outOfRangeText('ascii', one))).size).toBe(reasons.length);
  });

  test('has its levels and powers in words when spoken, with true signs when shown', () => {
    const [floor, detector] = [reasons[4], reasons[2]];
    if (floor === undefined || detector === undefined) throw new Error('wish six reasons');
    expect(outOfRangeText('spoken', floor)).toContain('minus 70.0 decibel-milliwatts is below');
    expect(outOfRangeText('shown', floor)).toContain('\u221270.0\u00a0dBm is below');
    expect(outOfRangeText('spoken', detector)).toContain('10 milliwatts is below 50 milliwatts');
  });
});

describe('an interval', () => {
  test('has both signs as its style writes them, and the unit at its end alone', () => {
    const interval = { lower: -1.5, upper: -0.25, decimals: 2, unit: 'dBm' } as const;
    expect(STYLES.map((style) => intervalText(style, interval))).toEqual([
      '\u22121.50 to \u22120.25\u00a0dBm',
      'minus 1.50 to minus 0.25 decibel-milliwatts',
      '-1.50 to -0.25 dBm',
      '\u22121.50 to \u22120.25 dBm',
    ]);
  });

  test('of no width is still an interval, and one that rounds to nothing has no sign', () => {
    expect(intervalText('ascii', { lower: 3, upper: 3, decimals: 1, unit: 'mm' })).toBe('3.0 to 3.0 mm');
    expect(intervalText('ascii', { lower: -0.001, upper: 0.001, decimals: 1, unit: 'dB' })).toBe(
      '0.0 to 0.0 dB',
    );
    expect(() => intervalText('ascii', { lower: Number.NaN, upper: 1, decimals: 0, unit: 'W' })).toThrow(
      RangeError,
    );
  });
});
