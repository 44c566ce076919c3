import { componentOf, evaluate, type Input, padByDc, type Result, type SumModel } from '#compute';
import { COVERAGE_PROBABILITY } from '../sheet/coverage.ts';
import { type PadsInARow, rootOfStated, rowResult, sumOfStated } from '../sheet/pads-in-a-row.ts';
import { numberText } from '../text/quantity-text.ts';
import type { Outcome, Step, SumExample } from './example.ts';
import { expandedBy, formula, given, half, num, within } from './said.ts';

const IN_V = 3;
const OUT_V = 0.948;
const LOAD_OHM = 50;
const METER_PERCENT = 0.5;
const NOMINAL_DB = 10;
const SHEET_DB = 0.5;

/** What was read, and what is stated of it, as somebody types it: in volts and percent. */
export const padReadings = () =>
  ({
    voltsIn: numberText('ascii', { value: IN_V, decimals: 3 }),
    voltsOut: numberText('ascii', { value: OUT_V, decimals: 3 }),
    load: String(LOAD_OHM),
    percent: String(METER_PERCENT),
  }) as const;

const reading = (id: string, cause?: string): Input =>
  componentOf({
    id,
    statement: { form: 'limits', shape: 'rectangular', halfWidth: METER_PERCENT },
    unit: 'percentOfVolts',
    cause,
  });

/** The pad by its two voltages; `cause` where one meter on one range read both. */
const model = (cause?: string): SumModel =>
  padByDc({
    voltsIn: IN_V,
    voltsOut: OUT_V,
    loadOhms: LOAD_OHM,
    atInput: [reading('in', cause)],
    atLoad: [reading('out', cause)],
  });

const result = (): Result => evaluate({ model: model(), coverageProbability: COVERAGE_PROBABILITY });
const oneRange = (): Result =>
  evaluate({ model: model('gain of the meter'), coverageProbability: COVERAGE_PROBABILITY });

/** What a percent of the load does: the same sum with a load that is off by so much. */
const perPercentDb = (): number =>
  Math.abs(
    padByDc({ voltsIn: IN_V, voltsOut: OUT_V, loadOhms: LOAD_OHM * 1.01 }).constant - model().constant,
  );

/** Three such pads by their data sheet alone. */
export const threePads = (): PadsInARow => ({
  count: 3,
  padDb: SHEET_DB,
  between: 'rectangular',
  meterDb: 0,
  meterSays: 'limits',
});

const steps = (): readonly Step[] => [
  {
    id: 'ratio',
    title: 'From two voltages',
    formula: formula(
      (style) =>
        `A = 20 lg(V1 / V2) = 20 lg(${num(style, IN_V, 3, 'V')} / ${num(style, OUT_V, 3, 'V')}) = ${num(style, result().estimate, 3, 'dB')}`,
    ),
    words: 'Both across 50 Ω, so the ratio of volts is all there is to it.',
  },
  {
    id: 'two-readings',
    title: 'Two readings that have nothing to do with each other',
    formula: formula((style) => {
      const { standardUncertainty, expanded, coverageFactor, budget } = result().propagation;
      const squares = budget.map((row) => `${num(style, row.contribution, 4, 'none')}²`).join(' + ');
      return `u = √(${squares}) dB = ${num(style, standardUncertainty, 4, 'dB')}; U = ${num(style, coverageFactor, 2, 'none')} × u = ${num(style, expanded, 3, 'dB')}`;
    }),
    words: `Each of the two is ${num('shown', METER_PERCENT, 1, 'percent')} of the volts.`,
  },
  {
    id: 'one-range',
    title: 'The same meter on the same range',
    formula: formula((style) => {
      const [first] = result().propagation.budget;
      const one = num(style, first?.contribution ?? 0, 4, 'none');
      return `u = ${one} − ${one} = ${num(style, oneRange().propagation.standardUncertainty, 0, 'dB')}`;
    }),
    words:
      'What its gain is off by is off in both readings, and a ratio does not see it. What is left is the last digit, the meter’s straightness and the load, which belong to a sum of their own.',
  },
  {
    id: 'load',
    title: 'What the load’s resistance does',
    formula: formula(
      (style) => `${num(style, 1, 0, 'percent')} of R: ${num(style, perPercentDb(), 3, 'dB')}`,
    ),
  },
  {
    id: 'three-pads',
    title: 'Three pads by their data sheet instead',
    formula: formula((style) => {
      const row = threePads();
      const { expanded } = rowResult(row).propagation;
      return `worst case ${half(style, sumOfStated(row), 1, 'dB')}; root of the sum of the limits’ squares ${half(style, rootOfStated(row), 2, 'dB')}; U ${half(style, expanded, 1, 'dB')}`;
    }),
    words: 'The root of the squares of limits is neither a guarantee nor a U with k = 2, which is wider.',
  },
];

const outcomes = (): readonly Outcome[] => [
  {
    name: 'Attenuation at DC, two independent readings',
    value: (style) => {
      const { estimate, propagation } = result();
      return `${num(style, estimate, 3, 'dB')} ${expandedBy(style, propagation, 3)}`;
    },
    stated: {
      result: result(),
      unit: 'dB',
      labels: { in: 'Voltage at the input', out: 'Voltage at the load' },
    },
  },
  {
    name: 'Against the data sheet',
    value: (style) =>
      `${half(style, result().propagation.expanded, 2, 'dB')} instead of limits of ${half(style, SHEET_DB, 1, 'dB')}`,
  },
];

/** Scenario: a pad measured with a multimeter. Invented data. */
export const padMeasuredAtDc: SumExample = {
  kind: 'sum',
  slug: 'pad-measured-at-dc',
  title: 'A pad and a multimeter',
  summary: 'Three volts in, 0.948\u00a0V out, into 50\u00a0Ω: how well does a multimeter know a 10 dB pad?',
  question:
    'My 10\u00a0dB pads are good to half a decibel by their data sheet. With a multimeter and two resistors I get 3.000\u00a0V in and 0.948\u00a0V out. Do I know the pad better now?',
  wanted: 'the attenuation of the pad between 50\u00a0Ω and 50\u00a0Ω, at DC',
  method:
    'A ratio of two voltages across one resistance, in decibels. It ties the pad to the direct-current volt; that it is the same at radio frequency is an assumption, good at HF.',
  space: 'decibels',
  known: () => [
    {
      what: 'Voltage at the input',
      value: within(IN_V, 3, 'V', { half: METER_PERCENT, decimals: 1, unit: 'percent' }),
    },
    {
      what: 'Voltage at the load',
      value: within(OUT_V, 3, 'V', { half: METER_PERCENT, decimals: 1, unit: 'percent' }),
    },
    { what: 'Load', value: given(LOAD_OHM, 1, 'ohm') },
    { what: 'Data sheet', value: within(NOMINAL_DB, 0, 'dB', { half: SHEET_DB, decimals: 1, unit: 'dB' }) },
  ],
  outcomes,
  steps,
  dominates: () => 'Both voltages weigh the same: half of the variance each.',
  help: () =>
    `Read both on one range of one meter: then its gain cancels. After that the load counts: ${num('shown', perPercentDb(), 2, 'dB')} for a percent of its resistance, so measure it too.`,
  mistake: () => {
    const root = rootOfStated(threePads());
    const { expanded } = rowResult(threePads()).propagation;
    return `Calling the root of the squares of three limits, ${num('shown', root, 2, 'dB')}, an expanded uncertainty: with k = 2 that is ${num('shown', expanded, 1, 'dB')}, ${num('shown', 100 * (expanded / root - 1), 0, 'percent')} more.`;
  },
  assumptions: [
    'The pad is made of resistors and does the same at the working frequency: fair at HF, an assumption at VHF.',
    'The load is exactly 50 Ω; what it may be off by is told apart.',
    'The meter’s high resistance takes next to nothing of the voltages.',
  ],
  cautions: [
    'Small resistors stand little: 3.5 V into 50 Ω are already a quarter of a watt.',
    'Take the pad out of the transmitter’s line before you put direct current on it.',
  ],
  lesson: 'stacking/worst-case',
  benchSays:
    'A pad by itself is no power, so it opens on the page of borrowed calibrations, beside the bench: there a part is measured by two direct voltages, with the same sum. What the load may be off by and the last digit are asked for too.',
};
