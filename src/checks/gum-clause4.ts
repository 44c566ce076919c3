import { degreesFromReliability, type Statement } from '#compute';
import type { Check } from './check.ts';
import { readingsAndCauses } from './gum-readings.ts';
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

/** The limits and the scatter of the mean, in microvolts. */
const voltmeterU = (): number =>
  sumOf([
    stated('meter', voltmeterLimit()),
    stated('readings', { form: 'standard', standardUncertainty: 12 }),
  ]).standardUncertainty;

const voltmeter = (): Check => ({
  id: 'gum-4.3.7-voltmeter',
  clause: '4.3.7, example 2; 5.1.5',
  title: 'a voltmeter’s limits and the scatter of its readings combine to 15 µV',
  status: 'published',
  given: '0.928 571 V; 14 × 10⁻⁶ of the reading + 2 × 10⁻⁶ of 1 V; scatter of the mean 12 µV',
  figures: [
    { what: 'u of the limits', printed: '8.7', unit: 'µV', compute: () => uncertaintyOf(voltmeterLimit()) },
    { what: 'combined u', printed: '15', unit: 'µV', compute: voltmeterU },
    { what: 'combined u over V', printed: '16', unit: '10⁻⁶', compute: () => voltmeterU() / 0.928571 },
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

/** GUM clause 4: what a statement becomes. */
export const clause4 = (): Check[] => [
  ...certificates(),
  ...limits(),
  voltmeter(),
  judged(),
  ...readingsAndCauses(),
];
