import { ohms, powerOfPeakToPeak, powerOfVolts, powerToLevel, voltsPeakToPeak, voltsRms } from '#compute';
import { withLinkAmount } from '../sheet/amount.ts';
import { limits, linkOf } from '../sheet/link.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { chainSteps } from './chain-steps.ts';
import type { ChainExample, Step } from './example.ts';
import { formula, given, level, num, watts, within } from './said.ts';
import { benchOf, sheetOf, stated } from './sheet-of.ts';

const PEAK_TO_PEAK_V = 20.4;
const READ_TO_V = 0.2;
const LOAD_OHM = 49.6;
const LOAD_PERCENT = 1;
const GAIN_PERCENT = 3;
const BANDWIDTH_HZ = 100e6;
const FREQUENCY_HZ = 7.03e6;

const into = (resistance: number) =>
  powerOfPeakToPeak({ peakToPeak: voltsPeakToPeak(PEAK_TO_PEAK_V), resistance: ohms(resistance) });
const power = () => into(LOAD_OHM);

const sheet = (): Sheet =>
  sheetOf({
    title: 'A kit transmitter on the oscilloscope',
    conditions: '7.03 MHz, key down, 13.8 V supply',
    reading: powerToLevel(power()),
    specification: { lower: 29, upper: 31 },
    links: [
      linkOf({
        id: 'gain',
        label: 'Gain of the oscilloscope',
        kind: 'meter',
        unit: 'percentOfVolts',
        statement: limits(GAIN_PERCENT),
        source: 'specification',
      }),
      linkOf({
        id: 'trace',
        label: 'Reading the trace',
        kind: 'meter',
        unit: 'percentOfVolts',
        statement: limits(stated((100 * READ_TO_V) / PEAK_TO_PEAK_V, 2)),
        source: 'judged',
      }),
      linkOf({
        id: 'load',
        label: 'Load resistance',
        kind: 'other',
        unit: 'percentOfPower',
        statement: limits(LOAD_PERCENT),
        source: 'measured',
      }),
    ],
  });

const steps = (): readonly Step[] => [
  {
    id: 'power',
    title: 'From volts to watts',
    formula: formula(
      (style) =>
        `P = Vpp² / (8 R) = (${num(style, PEAK_TO_PEAK_V, 1, 'V')})² / (8 × ${num(style, LOAD_OHM, 1, 'ohm')}) = ${watts(style, power(), 4)}`,
    ),
    words: 'Half of it is the peak; over √2 that is the RMS value, whose square over R is the power.',
  },
  {
    id: 'level',
    title: 'As a level',
    formula: formula(
      (style) => `10 lg(${watts(style, power(), 4)} / 1 mW) = ${level(style, powerToLevel(power()))}`,
    ),
  },
  ...chainSteps(sheet()),
];

/** Scenario: an oscilloscope across a load at 7 MHz. Invented data. */
export const oscilloscopeOnALoad: ChainExample = {
  kind: 'chain',
  slug: 'oscilloscope-on-a-load',
  title: 'Oscilloscope across a load',
  summary: 'A trace of 20.4\u00a0V from trough to crest across 49.6\u00a0Ω: how many watts, and how sure?',
  question:
    'I finished a kit transmitter for 7\u00a0MHz. Into my dummy load the oscilloscope shows 20.4\u00a0V peak to peak. The kit promises 1\u00a0W, give or take a decibel. Do I have it, and how far can I trust a 3\u00a0% oscilloscope?',
  wanted: 'the carrier power into the load at the transmitter’s socket, key down, at 7.03\u00a0MHz',
  method:
    'Voltage across a known resistance. A percentage of volts counts twice in watts, and the resistance once: all of it becomes decibels, where it adds.',
  space: 'decibels',
  known: () => [
    {
      what: 'Trace, trough to crest',
      value: within(PEAK_TO_PEAK_V, 1, 'Vpp', { half: READ_TO_V, decimals: 1, unit: 'V' }),
    },
    {
      what: 'Load, measured with DC',
      value: within(LOAD_OHM, 1, 'ohm', { half: LOAD_PERCENT, decimals: 0, unit: 'percent' }),
    },
    {
      what: 'Gain of the oscilloscope, data sheet',
      value: (style) => `${num(style, GAIN_PERCENT, 0, 'percent')} of the volts, either way`,
    },
    { what: 'Bandwidth', value: given(BANDWIDTH_HZ / 1e6, 0, 'MHz') },
    { what: 'Promised', value: () => '1 W within 1 dB' },
  ],
  sheet,
  steps,
  better: {
    sheet: () => withLinkAmount(sheet(), 'gain', 1),
    words:
      'The oscilloscope was compared with a multimeter at a low frequency, so that its gain at this setting is known to 1\u00a0%; how flat it is up to 7\u00a0MHz stays an assumption.',
  },
  mistake: () => {
    const asPeak = powerOfVolts({ volts: voltsRms(PEAK_TO_PEAK_V / Math.SQRT2), resistance: ohms(LOAD_OHM) });
    return `Taking the ${num('shown', PEAK_TO_PEAK_V, 1, 'V')} for the peak gives ${watts('shown', asPeak, 3)}: four times too much. And with 50\u00a0Ω assumed where ${num('shown', LOAD_OHM, 1, 'ohm')} were measured it would have been ${watts('shown', into(50), 4)}: nearly a percent lost for nothing.`;
  },
  assumptions: [
    'A clean sine: a harmonic 40 dB down moves the peaks by less than a tenth of a decibel.',
    'The front end is left uncorrected: at 7 % of the bandwidth one of a single pole shows half a percent of the power too little.',
    'The load keeps its resistance while it is warm.',
    'No two parts share a cause.',
  ],
  cautions: [
    'Into a dummy load that stands the power continuously, not on the air.',
    'The oscilloscope stands across the load on its high-resistance input with a probe; many inputs of 50 Ω bear 5 V RMS at most.',
    'The ground clip is mains earth: clip it to the load’s outer conductor and nowhere else.',
  ],
  lesson: 'measuring/oscilloscope-across-a-load',
  bench: () =>
    benchOf(sheet(), {
      setup: {
        method: 'oscilloscope',
        resistance: ohms(LOAD_OHM),
        bandwidthsHz: [BANDWIDTH_HZ],
        terminated: true,
      },
      frequencyHz: FREQUENCY_HZ,
      columns: { readings: [PEAK_TO_PEAK_V] },
      instead: {
        trace: {
          stated: { form: 'limits', shape: 'rectangular', halfWidth: READ_TO_V },
          unit: 'voltsPeakToPeak',
        },
        load: {
          stated: { form: 'limits', shape: 'rectangular', halfWidth: LOAD_PERCENT },
          unit: 'percentOfResistance',
        },
      },
    }),
};
