import {
  dbToAmplitudeRatio,
  gainDb,
  harmonicsLimitsDb,
  ohms,
  powerOfPeak,
  powerToLevel,
  voltsPeak,
} from '#compute';
import { withLinkAmount } from '../sheet/amount.ts';
import { limits, linkOf, uShaped } from '../sheet/link.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { chainSteps } from './chain-steps.ts';
import type { ChainExample, Outcome, Step } from './example.ts';
import { formula, given, level, num, sides, watts, within } from './said.ts';
import { benchOf, sheetOf, stated } from './sheet-of.ts';

const DETECTED_V = 6.53;
const DROP_V = 0.55;
const DROP_KNOWN_V = 0.1;
const LOAD_OHM = 50;
const DIRTY_DBC = -20;
const CLEAN_DBC = -40;

const power = () => powerOfPeak({ peak: voltsPeak(DETECTED_V + DROP_V), resistance: ohms(LOAD_OHM) });
const onPeak = (dbc: number) => harmonicsLimitsDb({ harmonicsDbc: [dbc], responds: 'peak' });
/** The harmonic's volts beside the carrier's. */
const harmonicShare = (): number => dbToAmplitudeRatio(gainDb(DIRTY_DBC));
const inMean = (dbc: number): number => harmonicsLimitsDb({ harmonicsDbc: [dbc], responds: 'mean' }).upper;
/** The larger side, for either: a reading may be too high or too low. */
const halfWidth = (dbc: number): number => stated(-onPeak(dbc).lower, 2);

const sheet = (): Sheet =>
  sheetOf({
    title: 'A detector on a wave that is no sine',
    conditions: '3.58 MHz, key down, no filter',
    reading: powerToLevel(power()),
    specification: { lower: 25.5, upper: 28.5 },
    links: [
      linkOf({
        id: 'drop',
        label: 'Diode drop',
        kind: 'meter',
        unit: 'percentOfVolts',
        statement: limits(stated((100 * DROP_KNOWN_V) / (DETECTED_V + DROP_V), 2)),
        source: 'judged',
      }),
      linkOf({
        id: 'harmonics',
        label: 'Second harmonic',
        kind: 'other',
        statement: uShaped(halfWidth(DIRTY_DBC)),
        source: 'measured',
      }),
    ],
  });

const filtered = (): Sheet => withLinkAmount(sheet(), 'harmonics', halfWidth(CLEAN_DBC));

const steps = (): readonly Step[] => [
  {
    id: 'power',
    title: 'From the peak to watts',
    formula: formula(
      (style) =>
        `P = (Vdc + Vd)² / (2 R) = (${num(style, DETECTED_V, 2, 'V')} + ${num(style, DROP_V, 2, 'V')})² / (2 × ${num(style, LOAD_OHM, 0, 'ohm')}) = ${watts(style, power(), 3)} = ${level(style, powerToLevel(power()))}`,
    ),
  },
  {
    id: 'harmonic',
    title: 'What a harmonic 20 dB down does to one peak',
    formula: formula((style) => {
      const share = num(style, harmonicShare(), 1, 'none');
      return `20 lg(1 + ${share}) and 20 lg(1 − ${share}) dB: ${sides(style, onPeak(DIRTY_DBC))}`;
    }),
    words:
      'A tenth of the volts, in a phase that nobody knows: it may stand on the crest or pull it down. The power itself grows by a hundredth only.',
  },
  ...chainSteps(sheet()),
];

const also = (): readonly Outcome[] => [
  {
    name: 'What the harmonic does to the peak',
    value: (style) =>
      `${sides(style, onPeak(DIRTY_DBC))} at 20 dB down; ${sides(style, onPeak(CLEAN_DBC))} at 40`,
  },
  {
    name: 'What it does to the true mean power',
    value: (style) => `${num(style, inMean(DIRTY_DBC), 2, 'dB')} more`,
  },
];

/** Scenario: a peak detector on a wave with a harmonic. Invented data. */
export const dirtySignal: ChainExample = {
  kind: 'chain',
  slug: 'dirty-signal',
  title: 'A wave that is no sine',
  summary: 'Before the filter the detector may be off by nearly a decibel. After it, by a tenth of that.',
  question:
    'I measured the fox transmitter’s output stage before its filter was in: the peak detector gives 6.53\u00a0V. A receiver shows the second harmonic 20\u00a0dB down. Does that spoil the power reading?',
  wanted: 'the carrier power of the fundamental into 50\u00a0Ω at the socket, key down',
  method:
    'Peak voltage by a diode. It follows a crest, and a harmonic moves the crest by its volts: in decibels, a limit either way.',
  space: 'decibels',
  known: () => [
    { what: 'Voltmeter', value: given(DETECTED_V, 2, 'V') },
    {
      what: 'Drop of the diode, judged',
      value: within(DROP_V, 2, 'V', { half: DROP_KNOWN_V, decimals: 2, unit: 'V' }),
    },
    { what: 'Load', value: given(LOAD_OHM, 0, 'ohm') },
    { what: 'Second harmonic', value: (style) => `${num(style, DIRTY_DBC, 0, 'dB')} against the carrier` },
  ],
  sheet,
  steps,
  also,
  better: {
    sheet: filtered,
    words: 'The low-pass filter went in, and the receiver shows the harmonic 40 dB down.',
  },
  mistake: () =>
    `Blaming the meter for what the wave does. Peak to peak a second harmonic nearly cancels, one peak is up while the other is down; a third moves both. A heat meter would say ${num('shown', inMean(DIRTY_DBC), 2, 'dB')} more than the fundamental and be right.`,
  assumptions: [
    'One harmonic; several add their volts in the worst case.',
    'The harmonic’s phase stays as it is, and nobody knows it: so its limits are those of a U shape, as for a mismatch.',
    'Voltmeter and load are left out: they are small against this.',
  ],
  cautions: [
    'Into a dummy load: without its filter no transmitter belongs on an antenna.',
    'The diode has to stand twice the peak in reverse.',
  ],
  lesson: 'measuring/peak-detector',
  bench: () =>
    benchOf(sheet(), {
      setup: { method: 'peakDetector', resistance: ohms(LOAD_OHM), diodeDropV: DROP_V, curveFromDc: false },
      frequencyHz: 3.58e6,
      columns: { readings: [DETECTED_V] },
      instead: {
        drop: {
          stated: { form: 'limits', shape: 'rectangular', halfWidth: DROP_KNOWN_V },
          unit: 'volts',
        },
      },
    }),
};
