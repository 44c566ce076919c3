import { describe, expect, it } from 'vitest';
import { entriesOf } from '../../src/bench/entries/entries-of.ts';
import { readMeasurement } from '../../src/bench/read/read-measurement.ts';
import { clubMeasurement } from '../../src/sheet/club-measurement.ts';
import {
  blankLink,
  type LinkEntries,
  type PointEntries,
  type SheetEntries,
} from '../../src/sheet/entries.ts';
import type { MethodKind } from '../../src/sheet/method.ts';

const club = (method: MethodKind = 'padsIntoMeter') => entriesOf(clubMeasurement(method));
const read = (change: Partial<SheetEntries>, method?: MethodKind) =>
  readMeasurement({ ...club(method), ...change });
const withPoint = (change: Partial<PointEntries>, method?: MethodKind) =>
  read({ points: club(method).points.map((point) => ({ ...point, ...change })) }, method);
const withLink = (id: string, change: Partial<LinkEntries>, method?: MethodKind) =>
  read({ links: club(method).links.map((link) => (link.id === id ? { ...link, ...change } : link)) }, method);
const soleProblem = ({ problems }: ReturnType<typeof readMeasurement>) => {
  expect(problems).toHaveLength(1);
  return problems[0];
};
const readings = (text: string, method?: MethodKind) =>
  withPoint({ readings: text }, method).measurement?.points[0]?.columns.readings;

describe('numbers as people type them', () => {
  it.each([
    ['200 mW', 23.0103],
    ['0,2 W', 23.0103],
    ['23dBm', 23],
    ['−7,5', -7.5],
    ['1e-3 W', 0],
  ])('reads the reading %s', (text, dbm) => {
    expect(readings(text)?.[0]).toBeCloseTo(dbm, 4); // 10 lg(200 mW / 1 mW) = 23.0103 dBm
  });

  it('reads a pasted column, one reading a line', () => {
    expect(readings('7.0\n7,1 dBm\n6.9')).toEqual([7, 7.1, 6.9]);
  });

  it.each(['', '  ', 'abc', '-', 'NaN', 'Infinity', '1e999', '1,234', '5 dB', '999'])(
    'tells why the reading “%s” cannot be used, at its field',
    (text) => {
      expect(soleProblem(withPoint({ readings: text }))?.path).toBe('point1.readings');
    },
  );

  it('tells three faulty lines of a column and counts the rest', () => {
    const { problem } = soleProblem(withPoint({ readings: 'a1\nb2\nc3\nd4\ne5\n7' })) ?? {};
    // The first line may be a heading; four faulty lines stay.
    expect(problem).toMatch(/^Line 2.*Line 3.*Line 4.*And 1 more/s);
  });

  it('refuses readings that are not readings of one power, in dB of power whatever was read', () => {
    expect(soleProblem(withPoint({ readings: '7\n17.5' }))?.problem).toContain('10 dB apart');
    expect(withPoint({ readings: '7\n16.9' }).problems).toEqual([]);
    // 20 lg 3.1 = 9.83 dB, 20 lg 3.2 = 10.1 dB
    expect(withPoint({ readings: '3.1\n1' }, 'oscilloscope').problems).toEqual([]);
    expect(soleProblem(withPoint({ readings: '3.2\n1' }, 'oscilloscope'))?.problem).toContain('10 dB apart');
    // amperes go with the power once: a factor of ten is 10 dB
    expect(withPoint({ amperes: '0.1\n1' }, 'dcSubstitution').problems).toEqual([]);
    expect(soleProblem(withPoint({ amperes: '0.09\n1' }, 'dcSubstitution'))?.path).toBe('point1.amperes');
  });

  it('wants one unit in a column where some numbers have none', () => {
    expect(soleProblem(withPoint({ readings: '5 mW\n7' }))?.problem).toContain('some have none');
    expect(readings('7 dBm\n7\n7.1')).toEqual([7, 7, 7.1]);
    expect(readings('5 mW\n7 dBm')).toHaveLength(2);
    expect(readings('Level (mW)\n5\n5.1 mW')).toHaveLength(2);
  });

  it('reads ten thousand readings, and refuses more than belong here', () => {
    const column = (count: number) =>
      Array.from({ length: count }, (_, index) => `7.${index % 10}`).join('\n');
    expect(readings(column(10_000))).toHaveLength(10_000);
    expect(withPoint({ readings: column(20_000) }).problems).toEqual([]);
    expect(soleProblem(withPoint({ readings: column(20_001) }))?.problem).toContain('20000');
  });
});

describe('columns pasted at once', () => {
  const dc = { riseDc: '', volts: '', amperes: '' };

  it.each([
    ['tabs', '9.5\t9.4\t5.00\t0.100\n9.6\t9.3\t5.01\t0.101'],
    ['semicolons and decimal commas', '9,5;9,4;5,00;0,100\n9,6;9,3;5,01;0,101'],
    ['headings', 'RF (K)\tDC (K)\tU (V)\tI (mA)\n9.5\t9.4\t5.00\t100\n9.6\t9.3\t5.01\t101'],
    ['line numbers', '1\t9.5\t9.4\t5.00\t0.100\n2\t9.6\t9.3\t5.01\t0.101'],
    ['one line', '9.5\t9.4\t5.00\t0.100'],
  ])('are told apart with %s between or beside them', (_what, text) => {
    const { measurement, problems } = withPoint({ ...dc, readings: text }, 'dcSubstitution');
    expect(problems).toEqual([]);
    const columns = measurement?.points[0]?.columns;
    expect(columns?.readings[0]).toBe(9.5);
    expect(columns?.riseDc[0]).toBe(9.4);
    expect(columns?.volts[0]).toBe(5);
    expect(columns?.amperes[0]).toBeCloseTo(0.1, 12);
  });

  it('are told of where they do not fit, and never taken for readings of one thing', () => {
    expect(soleProblem(withPoint({ readings: '7.0\t27.1\n7.1\t27.2' }))?.problem).toContain('2 columns');
    const full = withPoint({ readings: '0.5\t0.01\n0.5\t0.01', reflected: '0.01' }, 'inLine');
    expect(soleProblem(full)?.problem).toContain('2 columns');
    expect(withPoint({ readings: '0.5\t0.01\n0.5\t0.02', reflected: '' }, 'inLine').problems).toEqual([]);
  });

  it('may be a row of readings where there is but one line, or line numbers', () => {
    expect(readings('7.0\t7.1\t7.2')).toEqual([7, 7.1, 7.2]);
    expect(readings('1\t7.0\n2\t7.1')).toEqual([7, 7.1]);
  });
});

describe('the specification', () => {
  const limits = (change: Partial<PointEntries>) => withPoint(change).measurement?.points[0]?.specification;

  it('is nominal plus and minus decibels, in watts if one likes', () => {
    const specification = limits({ nominal: '500 mW', tolerance: '±1,5 dB' });
    expect(specification?.lower).toBeCloseTo(25.4897, 4); // 10 lg 500 = 26.9897
    expect(specification?.upper).toBeCloseTo(28.4897, 4);
  });

  it('may lie unevenly about the nominal level, with or without a minus below', () => {
    const uneven = { specification: 'uneven', nominal: '27', above: '+1' } as const;
    expect(limits({ ...uneven, below: '2' })).toEqual({ lower: 25, upper: 28 });
    expect(limits({ ...uneven, below: '−2 dB' })).toEqual({ lower: 25, upper: 28 });
    expect(limits({ ...uneven, above: '0', below: '2' })).toEqual({ lower: 25, upper: 27 });
    expect(soleProblem(withPoint({ ...uneven, above: '-1', below: '2' }))?.path).toBe('point1.above');
    expect(soleProblem(withPoint({ ...uneven, above: '0', below: '0' }))?.path).toBe('point1.above');
  });

  it('may have one limit only, that of a licence by that name', () => {
    expect(limits({ specification: 'atMost', highest: '1 W' })).toEqual({ upper: 30 });
    expect(limits({ specification: 'atLeast', lowest: '10' })).toEqual({ lower: 10 });
    const licence = withPoint({ specification: 'licence', highest: '1 W' }).measurement?.points[0];
    expect(licence).toMatchObject({ specification: { upper: 30 }, licence: true });
  });

  it('wants the upper limit above the lower one', () => {
    const between = { specification: 'between', nominal: '' } as const;
    expect(soleProblem(withPoint({ ...between, lowest: '28', highest: '27' }))).toMatchObject({
      path: 'point1.highest',
      problem: 'The upper limit must lie above the lower one.',
    });
    expect(soleProblem(withPoint({ ...between, lowest: '27', highest: '27' }))?.path).toBe('point1.highest');
    expect(withPoint({ ...between, lowest: '27', highest: '27.01' }).problems).toEqual([]);
  });

  it('tells a limit that contradicts the nominal level, at the limit', () => {
    const between = { specification: 'between', lowest: '25', highest: '28' } as const;
    expect(soleProblem(withPoint({ ...between, nominal: '29' }))).toMatchObject({
      path: 'point1.highest',
      problem: expect.stringMatching(/29\sdBm, lies above/),
    });
    expect(soleProblem(withPoint({ ...between, nominal: '200 mW' }))).toMatchObject({
      path: 'point1.lowest',
      problem: expect.stringMatching(/23\.01\sdBm, lies below/),
    });
    expect(withPoint({ ...between, nominal: '28' }).problems).toEqual([]);
  });

  it('does not mind what stands in a field that its form does not use', () => {
    const odd = {
      specification: 'atMost',
      highest: '28',
      nominal: 'nonsense',
      lowest: '',
      above: 'x',
    } as const;
    expect(withPoint(odd).problems).toEqual([]);
  });
});

describe('the rule', () => {
  it('takes the multiplier of the guard band, or the required probability', () => {
    expect(read({ rule: 'guardBand', multiplier: '0,5' }).measurement?.rule).toEqual({
      kind: 'guardBand',
      multiplier: 0.5,
    });
    expect(read({ rule: 'probability', required: '95 %' }).measurement?.rule).toEqual({
      kind: 'probability',
      required: 0.95,
    });
    expect(read({ rule: 'simple', multiplier: 'x', required: 'x' }).measurement?.rule).toEqual({
      kind: 'simple',
    });
  });

  it.each(['0', '-1', '6', ''])('refuses the multiplier “%s”', (multiplier) => {
    expect(soleProblem(read({ rule: 'guardBand', multiplier }))?.path).toBe('multiplier');
  });
});

describe('the points', () => {
  const [first] = club().points;
  const two = (change: Partial<PointEntries>) =>
    read({ points: first ? [first, { ...first, id: 'point2', ...change }] : [] });

  it('are each read for themselves, and named in the list of problems', () => {
    const { measurement } = two({ label: 'Low power', frequency: '3.6 MHz', readings: '4' });
    expect(measurement?.points.map(({ label, frequencyHz }) => [label, frequencyHz])).toEqual([
      [expect.stringMatching(/^3\.58\sMHz$/), 3.58e6],
      ['Low power', 3.6e6],
    ]);
    expect(soleProblem(two({ nominal: 'x', label: 'Low power' }))?.label).toBe('Low power: Nominal level');
    expect(soleProblem(two({ nominal: 'x' }))?.label).toBe('Point 2: Nominal level');
    const beyond = { label: '', frequency: '', readings: '119 dBm', nominal: '119' };
    expect(soleProblem(two(beyond))?.label).toBe('Point 2: The whole chain');
  });

  it('wait for their first reading without holding the others up', () => {
    expect(two({ readings: ' ' }).measurement?.points.map(({ id }) => id)).toEqual(['point1']);
    expect(soleProblem(two({ readings: '', nominal: 'x' }))?.path).toBe('point2.nominal');
    expect(soleProblem(withPoint({ readings: '' }))?.path).toBe('point1.readings');
  });
});

describe('what a method asks for once', () => {
  it('is read for the chosen method alone', () => {
    expect(read({ scopeBandwidth: 'x', drop: '', forwardScale: 'much' }).problems).toEqual([]);
    expect(read({ floor: '-30 dBm', largest: '0,1 W' }).measurement?.setup).toEqual({
      method: 'padsIntoMeter',
      shows: 'mean',
      floor: -30,
      largest: 20,
    });
  });

  it.each([
    ['padsIntoMeter', { floor: '10', largest: '10' }, 'largest'],
    ['oscilloscope', { scopeBandwidth: '' }, 'scopeBandwidth'],
    ['oscilloscope', { load: '0' }, 'load'],
    ['oscilloscope', { largestPeak: 'many' }, 'largestPeak'],
    ['peakDetector', { drop: '-0.5' }, 'drop'],
    ['inLine', { forwardPercent: '60' }, 'forwardPercent'],
    ['inLine', { reflectedScale: '' }, 'reflectedScale'],
    ['dcSubstitution', { load: 'fifty' }, 'load'],
  ] as const)('by %s tells what is wrong with %j at its field', (method, change, path) => {
    expect(soleProblem(read(change, method))?.path).toBe(path);
  });

  it('takes bandwidths in any unit of frequency, and may do without a probe', () => {
    const scope = read({ scopeBandwidth: '0,1 GHz', probeBandwidth: '' }, 'oscilloscope').measurement?.setup;
    expect(scope).toMatchObject({ bandwidthsHz: [1e8] });
  });

  it('needs the frequency where an oscilloscope’s roll-off hangs on it', () => {
    expect(soleProblem(withPoint({ frequency: '' }, 'oscilloscope'))?.path).toBe('point1.frequency');
    expect(withPoint({ frequency: '' }, 'peakDetector').problems).toEqual([]);
  });

  it('asks an in-line meter for no reflected power where the wave towards the load is meant', () => {
    const nothing = { delivery: 'incident', reflectedScale: '', reflectedPercent: '' } as const;
    const points = club('inLine').points.map((point) => ({ ...point, reflected: '' }));
    const { measurement, problems } = read({ ...nothing, points }, 'inLine');
    expect(problems).toEqual([]);
    expect(measurement?.points[0]?.columns.reflected).toEqual([0]);
    expect(soleProblem(read({ points }, 'inLine'))?.path).toBe('point1.reflected');
  });

  it('refuses more coming back than goes out, unless that is no matter of the power that is meant', () => {
    const points = club('inLine').points.map((point) => ({ ...point, reflected: '0.51' }));
    expect(soleProblem(read({ points }, 'inLine'))?.path).toBe('point1.reflected');
    expect(read({ points, delivery: 'incident' }, 'inLine').problems).toEqual([]);
  });

  it('refuses the carrier power of a keyed transmitter, which no meter shows', () => {
    expect(soleProblem(read({ power: 'carrier', keying: 'parisWord' }))?.path).toBe('keying');
    expect(read({ power: 'mean', keying: 'parisWord' }).problems).toEqual([]);
  });

  it('lets a method out of range stand: what was typed is not wrong', () => {
    expect(withPoint({ frequency: '145 MHz' }, 'oscilloscope').problems).toEqual([]);
    expect(withPoint({ readings: '0.5' }, 'peakDetector').problems).toEqual([]);
    expect(read({ floor: '10 dBm' }).problems).toEqual([]);
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
      { form: 'expanded', amount: '0.1', factor: '2,2', freedom: '9' },
      { form: 'expanded', expanded: 0.1, coverageFactor: 2.2, degreesOfFreedom: 9 },
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
    [
      { form: 'swr', sourceSwr: '1,5', loadSwr: '1.2' },
      { form: 'swr', sourceSwr: 1.5, loadSwr: 1.2 },
    ],
    [
      {
        form: 'terms',
        ofReading: '3 %',
        ofScale: '1',
        fullScale: '10 mW',
        digits: '2',
        step: '0,01 mW',
        floor: '1 uW',
      },
      {
        form: 'terms',
        terms: [
          { of: 'reading', percent: 3 },
          { of: 'fullScale', percent: 1, fullScale: 0.01 },
          { of: 'digits', count: 2, step: 1e-5 },
          { of: 'floor', amount: 1e-6 },
        ],
      },
    ],
    [
      { form: 'terms', perKelvin: '0.1', temperature: '8', perYear: '0.5', years: '2' },
      {
        form: 'terms',
        terms: [
          {
            of: 'kelvin',
            terms: [{ of: 'reading', percent: 0.1 }],
            temperature: 8,
            range: { lower: 18, upper: 28 },
          },
          { of: 'year', terms: [{ of: 'reading', percent: 0.5 }], years: 2 },
        ],
      },
    ],
  ] as const)('states %j', (change, stated) => {
    const { measurement, problems } = withLink('pad', change);
    expect(problems).toEqual([]);
    const found = measurement?.links.find(({ id }) => id === 'pad')?.stated;
    expect(JSON.parse(JSON.stringify(found))).toEqual(stated);
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
    [{ unit: 'voltsPeakToPeak', amount: '0.2' }, 'pad.unit'],
    [{ unit: 'kelvinRf', amount: '0.1' }, 'pad.unit'],
    [{ form: 'terms' }, 'pad.ofReading'],
    [{ form: 'terms', ofScale: '1' }, 'pad.fullScale'],
    [{ form: 'terms', digits: '2' }, 'pad.step'],
    [{ form: 'terms', perYear: '1' }, 'pad.years'],
    [{ form: 'terms', perKelvin: '1', temperature: '20', coldest: '30' }, 'pad.warmest'],
    [{ form: 'terms', perKelvin: '1', temperature: '' }, 'pad.temperature'],
    [{ form: 'terms', floor: '1 W' }, 'pad.ofReading'], // far above the reading of 5 mW: down to nothing
    [{ form: 'swr', sourceSwr: '0.9', loadSwr: '1.2' }, 'pad.sourceSwr'],
    [{ form: 'swr', sourceSwr: '1.5', loadSwr: '' }, 'pad.loadSwr'],
    [{ reliability: '0' }, 'pad.reliability'],
    [{ reliability: '71' }, 'pad.reliability'],
    [{ form: 'readings', amount: '0.1', count: '5', reliability: '25' }, 'pad.reliability'],
    [{ form: 'standard', amount: '0.1', freedom: '9', reliability: '25' }, 'pad.reliability'],
  ] as const)('tells what is wrong with %j at its field', (change, path) => {
    expect(soleProblem(withLink('pad', change))?.path).toBe(path);
  });

  it('names the link and the field in the list of problems, and a link without a name by its place', () => {
    expect(soleProblem(withLink('pad', { amount: 'x' }))?.label).toBe('20 dB pad: Amount');
    expect(soleProblem(withLink('pad', { amount: 'x', label: ' ' }))?.label).toBe('Link 5: Amount');
  });

  it('takes its rated power, a shared cause and its direction, and how well a judgement is known', () => {
    const change = {
      rated: '500 mW',
      cause: ' multimeter ',
      direction: 'against',
      reliability: '25 %',
    } as const;
    expect(withLink('pad', change).measurement?.links.find(({ id }) => id === 'pad')).toMatchObject({
      ratedPowerW: 0.5,
      cause: 'multimeter',
      sensitivity: -1,
      reliability: 0.25,
    });
    const alone = withLink('pad', { direction: 'against' }).measurement?.links.find(({ id }) => id === 'pad');
    expect(alone).not.toHaveProperty('sensitivity');
  });

  it('may be stated in the units that its method reads in, and takes terms in them', () => {
    const trace = withLink('trace', { amount: '±200 mV' }, 'oscilloscope').measurement?.links;
    expect(trace?.find(({ id }) => id === 'trace')).toMatchObject({
      unit: 'voltsPeakToPeak',
      stated: { halfWidth: 0.2 },
    });
    expect(soleProblem(withLink('trace', { unit: 'dcVolts' }, 'oscilloscope'))?.problem).toContain('V peak');
    const terms = withLink('voltmeter', { step: '10 mV' }, 'peakDetector').measurement?.links;
    expect(terms?.find(({ id }) => id === 'voltmeter')?.stated).toMatchObject({
      terms: [{ percent: 0.5 }, { count: 2, step: 0.01 }],
    });
  });

  it('that is switched off holds nothing up, and is left out where it cannot be used', () => {
    const { measurement, problems } = withLink('pad', { amount: 'x', off: true });
    expect(problems).toEqual([]);
    expect(measurement?.links.map(({ id }) => id)).not.toContain('pad');
    const off = withLink('pad', { off: true }).measurement?.links.find(({ id }) => id === 'pad');
    expect(off).toMatchObject({ off: true, lossDb: 20 });
  });

  it('that reaches down to nothing at one point only is told with the name of that point', () => {
    const [first] = club('oscilloscope').points;
    const points = first ? [first, { ...first, id: 'point2', label: 'Low', readings: '0.15' }] : [];
    const { problem, path } = soleProblem(read({ points }, 'oscilloscope')) ?? {};
    expect(path).toBe('trace.amount'); // 0.2 V of 0.15 V
    expect(problem).toContain('At Low');
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
    read({ links: Array.from({ length: count }, (_, index) => link(change, index)) });

  it('is refused where its losses add up to more than any transmitter has', () => {
    expect(chain(10, { loss: '11.3' }).problems).toEqual([]);
    expect(soleProblem(chain(10, { loss: '11.4' }))?.problem).toContain('120 dBm');
  });

  it('is refused where its limits add up to nothing that can be said', () => {
    expect(chain(6, { amount: '20' }).problems).toEqual([]);
    expect(soleProblem(chain(7, { amount: '20' }))?.problem).toContain('120 dB');
  });

  it('may have a hundred links', () => {
    expect(chain(100, { amount: '0.3' }).measurement?.links).toHaveLength(100);
  });
});

it('keeps every text, and only calls a sheet without a title so', () => {
  expect(read({ title: '  ' }).measurement?.title).toBe('A measurement without a title');
  const { measurement } = read({ plane: ' at the socket ', by: ' two of us ' });
  expect(measurement?.measurand.plane).toBe('at the socket');
  expect(measurement?.record.by).toBe('two of us');
});

it('takes the scatter of one reading from earlier ones, n - 1 degrees of freedom', () => {
  expect(read({ scatter: '0.05', repeats: '10' }).measurement?.repeatability).toEqual({
    standardDeviationDb: 0.05,
    degreesOfFreedom: 9,
  });
  expect(soleProblem(read({ scatter: '0.05', repeats: '' }))?.path).toBe('repeats');
  expect(read({ scatter: '', repeats: 'ten' }).problems).toEqual([]);
});
