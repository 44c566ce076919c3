import { describe, expect, it } from 'vitest';
import { entriesOf } from '../../src/bench/entries-of.ts';
import { readEntries } from '../../src/bench/read-entries.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import { blankLink, type LinkEntries, type SheetEntries } from '../../src/sheet/entries.ts';

const club = entriesOf(clubSheet());
const withClub = (change: Partial<SheetEntries>) => readEntries({ ...club, ...change });
const withPad = (change: Partial<LinkEntries>) =>
  withClub({ links: club.links.map((link) => (link.id === 'pad' ? { ...link, ...change } : link)) });
const soleProblem = ({ problems }: ReturnType<typeof readEntries>) => {
  expect(problems).toHaveLength(1);
  return problems[0];
};

describe('numbers as people type them', () => {
  it.each([
    ['200 mW', 23.0103],
    ['0,2 W', 23.0103],
    ['23dBm', 23],
    ['−7,5', -7.5],
    ['1e-3 W', 0],
  ])('reads the reading %s', (readings, dbm) => {
    expect(withClub({ readings }).sheet?.readings[0]).toBeCloseTo(dbm, 4); // 10 lg(200 mW / 1 mW) = 23.0103 dBm
  });

  it('reads a pasted column, one reading a line', () => {
    expect(withClub({ readings: '7.0\n7,1 dBm\n6.9' }).sheet?.readings).toEqual([7, 7.1, 6.9]);
  });

  it.each(['', '  ', 'abc', '-', 'NaN', 'Infinity', '1e999', '1,234', '5 dB', '999'])(
    'tells why the reading “%s” cannot be used, at its field',
    (readings) => {
      expect(soleProblem(withClub({ readings }))?.path).toBe('readings');
    },
  );

  it('tells three faulty lines of a column and counts the rest', () => {
    const { problem } = soleProblem(withClub({ readings: 'a1\nb2\nc3\nd4\ne5\n7' })) ?? {};
    // The first line may be a heading; four faulty lines stay.
    expect(problem).toMatch(/^Line 2.*Line 3.*Line 4.*And 1 more/s);
  });

  it('refuses readings that are not readings of one power', () => {
    expect(soleProblem(withClub({ readings: '7\n17.5' }))?.problem).toContain('10 dB apart');
    expect(withClub({ readings: '7\n16.9' }).problems).toEqual([]);
  });

  it('refuses more readings than belong here', () => {
    const column = (count: number) => Array.from({ length: count }, () => '7').join('\n');
    expect(withClub({ readings: column(1000) }).problems).toEqual([]);
    expect(soleProblem(withClub({ readings: column(1001) }))?.problem).toContain('1000');
  });
});

describe('the specification', () => {
  it('is nominal plus and minus decibels, in watts if one likes', () => {
    const { sheet } = withClub({ nominal: '500 mW', tolerance: '±1,5 dB' });
    expect(sheet?.specification.lower).toBeCloseTo(25.4897, 4); // 10 lg 500 = 26.9897
    expect(sheet?.specification.upper).toBeCloseTo(28.4897, 4);
  });

  it('may have one limit only', () => {
    expect(withClub({ specification: 'atMost', highest: '1 W' }).sheet?.specification).toEqual({ upper: 30 });
    expect(withClub({ specification: 'atLeast', lowest: '10' }).sheet?.specification).toEqual({ lower: 10 });
  });

  it('wants the upper limit above the lower one', () => {
    const swapped = withClub({ specification: 'between', lowest: '28', highest: '27' });
    expect(soleProblem(swapped)).toMatchObject({
      path: 'highest',
      problem: 'The upper limit must lie above the lower one.',
    });
    const equal = withClub({ specification: 'between', lowest: '27', highest: '27' });
    expect(soleProblem(equal)?.path).toBe('highest');
    expect(withClub({ specification: 'between', lowest: '27', highest: '27.01' }).problems).toEqual([]);
  });

  it('does not mind what stands in a field that its form does not use', () => {
    expect(
      withClub({ specification: 'atMost', highest: '28', nominal: 'nonsense', lowest: '' }).problems,
    ).toEqual([]);
  });
});

describe('the rule', () => {
  it('takes the multiplier of the guard band, or the required probability', () => {
    expect(withClub({ rule: 'guardBand', multiplier: '0,5' }).sheet?.rule).toEqual({
      kind: 'guardBand',
      multiplier: 0.5,
    });
    expect(withClub({ rule: 'probability', required: '95 %' }).sheet?.rule).toEqual({
      kind: 'probability',
      required: 0.95,
    });
    expect(withClub({ rule: 'simple', multiplier: 'x', required: 'x' }).sheet?.rule).toEqual({
      kind: 'simple',
    });
  });

  it.each(['0', '-1', '6', ''])('refuses the multiplier “%s”', (multiplier) => {
    expect(soleProblem(withClub({ rule: 'guardBand', multiplier }))?.path).toBe('multiplier');
  });
});

describe('a link', () => {
  it.each([
    [
      { form: 'rectangular', amount: '±0,3' },
      { form: 'limits', shape: 'rectangular', halfWidth: 0.3 },
    ],
    [
      { form: 'arcsine', amount: '0.3 dB' },
      { form: 'limits', shape: 'arcsine', halfWidth: 0.3 },
    ],
    [
      { form: 'asymmetric', lower: '-0.5', upper: '0.2' },
      { form: 'asymmetric', lower: -0.5, upper: 0.2 },
    ],
    [
      { form: 'expanded', amount: '0.1', factor: '2,2' },
      { form: 'expanded', expanded: 0.1, coverageFactor: 2.2 },
    ],
    [
      { form: 'expanded', amount: '0.1', factor: '2', freedom: '9' },
      { form: 'expanded', expanded: 0.1, coverageFactor: 2, degreesOfFreedom: 9 },
    ],
    [
      { form: 'coverage', amount: '0.1', probability: '99' },
      { form: 'coverage', expanded: 0.1, probability: 0.99 },
    ],
    [
      { form: 'standard', amount: '0.1' },
      { form: 'standard', standardUncertainty: 0.1 },
    ],
    [
      { form: 'readings', amount: '0.1', count: '5' },
      { form: 'readings', standardDeviation: 0.1, count: 5 },
    ],
    [
      { form: 'displayStep', amount: '0.1' },
      { form: 'displayStep', step: 0.1 },
    ],
    [
      { form: 'halfWithin', amount: '0.1' },
      { form: 'halfWithin', halfWidth: 0.1 },
    ],
    [
      { form: 'trapezoid', amount: '0.4', top: '0.5' },
      { form: 'trapezoid', halfWidth: 0.4, topRatio: 0.5 },
    ],
    [
      { form: 'uncertainLimits', amount: '0.4', doubt: '0.1' },
      { form: 'uncertainLimits', halfWidth: 0.4, limitHalfWidth: 0.1 },
    ],
  ] as const)('states %j', (change, statement) => {
    const { sheet, problems } = withPad(change);
    expect(problems).toEqual([]);
    expect(sheet?.links.find(({ id }) => id === 'pad')?.statement).toEqual(statement);
  });

  it.each([
    [{ amount: '' }, 'pad.amount'],
    [{ amount: '-0.5' }, 'pad.amount'],
    [{ amount: '400' }, 'pad.amount'],
    [{ amount: '3 %' }, 'pad.amount'],
    [{ loss: 'twenty' }, 'pad.loss'],
    [{ loss: '20 dBm' }, 'pad.loss'],
    [{ rated: '-1 W' }, 'pad.rated'],
    [{ form: 'expanded', amount: '0.1', factor: '0' }, 'pad.factor'],
    [{ form: 'readings', amount: '0.1', count: '1' }, 'pad.count'],
    [{ form: 'readings', amount: '0.1', count: '2.5' }, 'pad.count'],
    [{ form: 'asymmetric', lower: '0.5', upper: '0.2' }, 'pad.upper'],
    [{ form: 'uncertainLimits', amount: '0.1', doubt: '0.2' }, 'pad.doubt'],
    [{ unit: 'percentOfPower', amount: '95' }, 'pad.amount'],
    [{ unit: 'percentOfVolts', form: 'standard', amount: '60' }, 'pad.amount'],
  ] as const)('tells what is wrong with %j at its field', (change, path) => {
    expect(soleProblem(withPad(change))?.path).toBe(path);
  });

  it('names the link and the field in the list of problems, and a link without a name by its place', () => {
    expect(soleProblem(withPad({ amount: 'x' }))?.label).toBe('20 dB pad: Amount');
    expect(soleProblem(withPad({ amount: 'x', label: ' ' }))?.label).toBe('Link 5: Amount');
  });

  it('takes its rated power in watts or milliwatts, and a cause it shares', () => {
    const { sheet } = withPad({ rated: '500 mW', cause: ' multimeter ' });
    expect(sheet?.links.find(({ id }) => id === 'pad')).toMatchObject({
      ratedPowerW: 0.5,
      cause: 'multimeter',
    });
  });
});

describe('a chain that nobody measured', () => {
  const link = (change: Partial<LinkEntries>, index: number): LinkEntries => ({
    ...blankLink(`l${index}`),
    label: 'x',
    amount: '0',
    ...change,
  });
  const chain = (count: number, change: Partial<LinkEntries>) =>
    withClub({ links: Array.from({ length: count }, (_, index) => link(change, index)) });

  it('is refused where its losses add up to more than any transmitter has', () => {
    expect(chain(10, { loss: '11.3' }).problems).toEqual([]);
    expect(soleProblem(chain(10, { loss: '11.4' }))?.problem).toContain('120 dBm');
  });

  it('is refused where its limits add up to nothing that can be said', () => {
    expect(chain(6, { amount: '20' }).problems).toEqual([]);
    expect(soleProblem(chain(7, { amount: '20' }))?.problem).toContain('120 dB');
  });

  it('may have a hundred links', () => {
    expect(chain(100, { amount: '0.3' }).sheet?.links).toHaveLength(100);
  });
});

it('keeps every text, and only calls a sheet without a title so', () => {
  expect(withClub({ title: '  ' }).sheet?.title).toBe('A measurement without a title');
  expect(withClub({ plane: ' at the socket ' }).sheet?.measurand.plane).toBe('at the socket');
});

it('takes the scatter of one reading from earlier ones, n - 1 degrees of freedom', () => {
  expect(withClub({ scatter: '0.05', repeats: '10' }).sheet?.repeatability).toEqual({
    standardDeviationDb: 0.05,
    degreesOfFreedom: 9,
  });
  expect(soleProblem(withClub({ scatter: '0.05', repeats: '' }))?.path).toBe('repeats');
  expect(withClub({ scatter: '', repeats: 'ten' }).problems).toEqual([]);
});
