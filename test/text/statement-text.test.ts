import { describe, expect, test } from 'vitest';
import type { Statement } from '#compute';
import { axisPowerText } from '../../src/text/axis-text.ts';
import {
  amountText,
  distributionText,
  statedDecimals,
  statementText,
} from '../../src/text/statement-text.ts';

const limits = (shape: 'rectangular' | 'triangular' | 'arcsine'): Statement => ({
  form: 'limits',
  shape,
  halfWidth: 0.25,
});
/** Every form of statement: what it says in ASCII, and the shape that it stands for. */
const CASES: readonly (readonly [Statement, string, string])[] = [
  [limits('rectangular'), '+/-0.25 dB, limits', 'rectangular'],
  [limits('triangular'), '+/-0.25 dB, limits, middle likelier', 'triangular'],
  [limits('arcsine'), '+/-0.25 dB, U-shaped', 'arcsine (U-shaped)'],
  [{ form: 'trapezoid', halfWidth: 0.5, topRatio: 0.5 }, '+/-0.5 dB, trapezoid', 'trapezoidal'],
  [
    { form: 'uncertainLimits', halfWidth: 0.5, limitHalfWidth: 0.1 },
    '+/-0.5 dB, limits known to +/-0.1 dB',
    'curvilinear trapezoid',
  ],
  [{ form: 'asymmetric', lower: -0.1, upper: 0.4 }, '-0.1 to 0.4 dB, limits', 'rectangular'],
  [{ form: 'expanded', expanded: 0.06, coverageFactor: 2 }, 'U 0.06 dB, k = 2', 'normal'],
  [
    { form: 'expanded', expanded: 0.06, coverageFactor: 2.13, degreesOfFreedom: 15 },
    'U 0.06 dB, k = 2.13',
    'Student t',
  ],
  [{ form: 'coverage', expanded: 0.06, probability: 0.95 }, 'U 0.06 dB, 95 %', 'normal'],
  [{ form: 'standard', standardUncertainty: 0.125 }, 'u 0.125 dB', 'normal'],
  [{ form: 'readings', standardDeviation: 0.1, count: 5 }, 's 0.1 dB, 5 readings', 'Student t'],
  [{ form: 'displayStep', step: 0.01 }, 'display step 0.01 dB', 'rectangular'],
  [{ form: 'halfWithin', halfWidth: 0.2 }, 'half within +/-0.2 dB', 'normal'],
];

describe('what a document states', () => {
  test.each(CASES)('%o reads %s', (statement, words, shape) => {
    expect(statementText('ascii', { statement, unit: 'dB' })).toBe(words);
    expect(distributionText(statement)).toBe(shape);
  });

  test('in percent says of what', () => {
    const statement = limits('rectangular');
    expect(statementText('ascii', { statement, unit: 'percentOfVolts' })).toBe('+/-0.25 % of volts, limits');
    expect(statementText('spoken', { statement, unit: 'percentOfPower' })).toBe(
      'plus or minus 0.25 percent of power, limits',
    );
  });

  test('keeps the decimals it was stated with, one at least, and more than four only for what is very small', () => {
    expect([2, 0.5, 0.25, 0.125, 0.0125, 0.00125].map(statedDecimals)).toEqual([1, 1, 2, 3, 4, 4]);
    expect([0, 0.00002, 0.000023, 0.0000333333, 2.00001].map(statedDecimals)).toEqual([1, 5, 6, 6, 4]);
    expect([amountText(2), amountText(0.125)]).toEqual(['2.0', '0.125']);
  });
});

describe('ticks of an axis of powers', () => {
  test('share one unit and have no more decimals than they need', () => {
    expect(axisPowerText([0.4, 0.45, 0.5])).toEqual({ texts: ['400', '450', '500'], unit: 'mW' });
    expect(axisPowerText([0.5, 1, 1.5])).toEqual({ texts: ['0.5', '1', '1.5'], unit: 'W' });
    expect(axisPowerText([0, 0.5, 1])).toEqual({ texts: ['0', '500', '1000'], unit: 'mW' });
    expect(axisPowerText([9e-6, 9.5e-6])).toEqual({ texts: ['9', '9.5'], unit: '\u00b5W' });
    expect(axisPowerText([1e-15])).toEqual({ texts: ['0.001'], unit: 'pW' });
    expect(axisPowerText([])).toEqual({ texts: [], unit: 'W' });
  });
});
