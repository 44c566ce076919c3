import { degreesFromReliability, roundToPlace, type Statement, summariseReadings } from '#compute';
import type { Check } from './check.ts';
import { stated, sumOf, uncertaintyOf } from './worked.ts';

/** One statement, and the standard uncertainty that print makes of it. */
function example(check: {
  id: string;
  clause: string;
  title: string;
  given: string;
  statement: Statement;
  printed: string;
  unit: string;
  note?: string;
}): Check {
  const { statement, printed, unit, ...more } = check;
  return {
    ...more,
    status: 'published',
    figures: [{ what: 'u', printed, unit, compute: () => uncertaintyOf(statement) }],
  };
}

const certificates = (): Check[] => [
  example({
    id: 'gum-4.3.3',
    clause: '4.3.3',
    title: 'a certificate stating 240 µg at three standard deviations means 80 µg',
    given: 'mass standard, k = 3',
    statement: { form: 'expanded', expanded: 240, coverageFactor: 3 },
    printed: '80',
    unit: 'µg',
  }),
  example({
    id: 'gum-4.3.4',
    clause: '4.3.4',
    title: 'a certificate stating ±129 µΩ at 99 % means 50 µΩ',
    given: 'resistance standard, normal',
    statement: { form: 'coverage', expanded: 129, probability: 0.99 },
    printed: '50',
    unit: 'µΩ',
  }),
  example({
    id: 'gum-4.3.5',
    clause: '4.3.5',
    title: 'even odds that a length lies within ±0.04 mm mean 0.06 mm',
    given: 'half of the values within the limits',
    statement: { form: 'halfWithin', halfWidth: 0.04 },
    printed: '0.06',
    unit: 'mm',
  }),
];

const limits = (): Check[] => [
  example({
    id: 'gum-4.3.7-copper',
    clause: '4.3.7, example 1',
    title: 'a handbook’s limits of ±0.40 for the expansion of copper mean 0.23',
    given: 'coefficient 16.52 ± 0.40, rectangular',
    statement: { form: 'limits', shape: 'rectangular', halfWidth: 0.4 },
    printed: '0.23',
    unit: '10⁻⁶/°C',
  }),
  example({
    id: 'gum-4.3.8',
    clause: '4.3.8',
    title: 'lopsided limits count by their whole width',
    given: 'from −0.12 to +0.40',
    statement: { form: 'asymmetric', lower: -0.12, upper: 0.4 },
    printed: '0.15',
    unit: '10⁻⁶/°C',
  }),
  example({
    id: 'gum-4.4.5',
    clause: '4.4.5',
    title: 'anywhere from 96 to 104 °C means 2.3 °C',
    given: 'rectangular, a = 4 °C',
    statement: { form: 'limits', shape: 'rectangular', halfWidth: 4 },
    printed: '2.3',
    unit: '°C',
  }),
  example({
    id: 'gum-4.4.6',
    clause: '4.4.6',
    title: 'the same limits with values near the middle likelier mean 1.6 °C',
    given: 'triangular, a = 4 °C',
    statement: { form: 'limits', shape: 'triangular', halfWidth: 4 },
    printed: '1.6',
    unit: '°C',
  }),
];

/** Voltmeter of 4.3.7, example 2: 14 ppm of the reading and 2 ppm of the range of 1 V, in microvolts. */
const voltmeterLimit = (): Statement => ({
  form: 'limits',
  shape: 'rectangular',
  halfWidth: 14 * 0.928571 + 2 * 1,
});

const voltmeter = (): Check => ({
  id: 'gum-4.3.7-voltmeter',
  clause: '4.3.7, example 2; 5.1.5',
  title: 'a voltmeter’s limits and the scatter of its readings combine to 15 µV',
  status: 'published',
  given: '0.928 571 V; 14 × 10⁻⁶ of the reading + 2 × 10⁻⁶ of 1 V; scatter of the mean 12 µV',
  figures: [
    { what: 'u of the limits', printed: '8.7', unit: 'µV', compute: () => uncertaintyOf(voltmeterLimit()) },
    {
      what: 'combined u',
      printed: '15',
      unit: 'µV',
      compute: () =>
        sumOf([
          stated('meter', voltmeterLimit()),
          stated('readings', { form: 'standard', standardUncertainty: 12 }),
        ]).standardUncertainty,
    },
  ],
});

const judged = (): Check => ({
  id: 'gum-g4.2',
  clause: 'G.4.2',
  title: 'how far a judged uncertainty is trusted becomes degrees of freedom',
  status: 'published',
  given: 'ν = ½ (Δu/u)⁻²',
  figures: (
    [
      ['known to 25 %', '8', 0.25],
      ['known to 50 %', '2', 0.5],
      ['known to 10 %', '50', 0.1],
    ] as const
  ).map(([what, printed, reliability]) => ({
    what,
    printed,
    unit: '',
    compute: () => degreesFromReliability(reliability),
  })),
});

const TEMPERATURES = `
96.90 98.18 98.25 98.61 99.03 99.49 99.56 99.74 99.89 100.07
100.33 100.42 100.68 100.95 101.11 101.20 101.57 101.84 102.36 102.72`;

const thermometer = () => summariseReadings(TEMPERATURES.trim().split(/\s+/).map(Number));

const readings = (): Check => ({
  id: 'gum-4.4.3',
  clause: '4.4.3',
  title: 'twenty temperatures have the printed mean, scatter and standard uncertainty',
  status: 'published',
  figures: [
    { what: 'mean', printed: '100.145', unit: '°C', compute: () => thermometer().mean },
    {
      what: 'mean, rounded',
      printed: '100.14',
      unit: '°C',
      compute: () => roundToPlace({ value: thermometer().mean, place: -2 }),
      tolerance: { within: 1e-9, because: 'the rounded value itself is compared' },
    },
    { what: 's', printed: '1.489', unit: '°C', compute: () => thermometer().standardDeviation ?? Number.NaN },
    {
      what: 'u of the mean',
      printed: '0.333',
      unit: '°C',
      compute: () => thermometer().standardDeviationOfMean ?? Number.NaN,
    },
  ],
  note: '100.145 is a tie; the Guide prints 100.14, a tie to the even digit. Rounding half up would give 100.15.',
});

/** Ten resistors of 1 kΩ in series, each known to 100 mΩ, the deviations under a cause or not. */
const resistors = (cause?: string) =>
  sumOf(
    Array.from({ length: 10 }, (_, i) => ({
      ...stated(`resistor ${i + 1}`, { form: 'standard', standardUncertainty: 0.1 }),
      ...(cause === undefined ? {} : { cause }),
    })),
  );

const commonStandard = (): Check => ({
  id: 'gum-5.2.2',
  clause: '5.2.2, example',
  title: 'ten resistors compared with one standard are uncertain by the sum and not by its root',
  status: 'published',
  given: 'ten of 1 kΩ in series, each u = 100 mΩ, all from one standard',
  figures: [
    {
      what: 'u, one shared cause',
      printed: '1',
      unit: 'Ω',
      compute: () => resistors('standard').standardUncertainty,
    },
    {
      what: 'u, if they were independent',
      printed: '0.32',
      unit: 'Ω',
      compute: () => resistors().standardUncertainty,
    },
  ],
});

/** GUM clause 4: what a statement becomes. */
export const clause4 = (): Check[] => [
  ...certificates(),
  ...limits(),
  voltmeter(),
  judged(),
  readings(),
  commonStandard(),
];
