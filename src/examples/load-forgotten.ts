import {
  ohms,
  peakToPeakOfPower,
  powerOfPeakToPeak,
  powerRatioToDb,
  powerW,
  voltsPeakToPeak,
} from '#compute';
import { clubScope, type ScopeUse } from '../sheet/scope.ts';
import type { Outcome, Step, SumExample } from './example.ts';
import { measuredBy } from './measured-by.ts';
import { formula, given, num } from './said.ts';
import { stated } from './sheet-of.ts';

const TRUE_W = 0.2;
const LOAD_OHM = 50;
/** Into next to no load, a matched source shows its open-circuit voltage: twice that across a load of its own resistance. */
const OPEN_OVER_MATCHED = 2;

const terminated = (): number => peakToPeakOfPower({ power: powerW(TRUE_W), resistance: ohms(LOAD_OHM) });
const open = (): number => OPEN_OVER_MATCHED * terminated();
/** The oscilloscope as it was used, straight on the socket. */
export const openUse = (): ScopeUse => ({
  ...clubScope(),
  peakToPeakV: stated(open(), 1),
  loadOhm: LOAD_OHM,
  screenV: 20,
  end: 'open',
});
/** The same measured again, with the load in its place. */
export const terminatedUse = (): ScopeUse => ({
  ...openUse(),
  peakToPeakV: stated(terminated(), 1),
  end: 'load',
});
const claimed = () => powerOfPeakToPeak({ peakToPeak: voltsPeakToPeak(open()), resistance: ohms(LOAD_OHM) });
const tooMuchDb = () => powerRatioToDb(claimed() / TRUE_W);

const steps = (): readonly Step[] => [
  {
    id: 'with-load',
    title: 'With the load in its place',
    formula: formula(
      (style) =>
        `Vpp = √(8 R P) = √(8 × ${num(style, LOAD_OHM, 0, 'ohm')} × ${num(style, TRUE_W, 3, 'W')}) = ${num(style, terminated(), 2, 'V')}`,
    ),
  },
  {
    id: 'without-load',
    title: 'Without it',
    formula: formula(
      (style) =>
        `Vpp = ${OPEN_OVER_MATCHED} × ${num(style, terminated(), 2, 'V')} = ${num(style, open(), 2, 'V')}`,
    ),
    words: 'For a source of exactly 50 Ω, which a signal generator nearly is and a transmitter is not.',
  },
  {
    id: 'claimed',
    title: 'What one would claim',
    formula: formula(
      (style) =>
        `P = Vpp² / (8 R) = (${num(style, open(), 2, 'V')})² / (8 × ${num(style, LOAD_OHM, 0, 'ohm')}) = ${num(style, claimed(), 3, 'W')}, which is ${num(style, tooMuchDb(), 2, 'dB')} too much`,
    ),
    words: 'There is no 50 Ω for that voltage to stand on: the formula is used where nothing of it is true.',
  },
];

const outcomes = (): readonly Outcome[] => [
  {
    name: 'No number to correct',
    value: (style) =>
      `${num(style, claimed(), 3, 'W')} would be claimed where ${num(style, TRUE_W, 3, 'W')} are there: ${num(style, tooMuchDb(), 2, 'dB')} too much, if the source is matched`,
  },
  {
    name: 'Measured again, into the load',
    value: (style) => `${num(style, terminated(), 2, 'Vpp')}, ${num(style, TRUE_W, 3, 'W')}`,
  },
];

/** Scenario: the same bench with the load left off. Invented data. */
export const loadForgotten: SumExample = {
  kind: 'sum',
  slug: 'load-forgotten',
  title: 'The load that was forgotten',
  summary: 'The trace is twice as high as last week. Has the power grown fourfold, or is something missing?',
  question:
    'Last week my test oscillator gave 0.2\u00a0W into the load. Today, with the oscilloscope straight on its socket at 1\u00a0MΩ, I read twice the voltage, so four times the power. Can I just divide by four?',
  wanted: 'the carrier power into 50\u00a0Ω at the oscillator’s socket',
  method:
    'Voltage across a known resistance. Here the resistance is missing, so the method is out of range; the sum only shows how far wrong one would be.',
  space: 'none',
  known: () => [
    { what: 'True power into the load', value: given(TRUE_W, 1, 'W') },
    { what: 'Load that was left off', value: given(LOAD_OHM, 0, 'ohm') },
    {
      what: 'Input of the oscilloscope',
      value: (style) => `${num(style, 1000, 0, 'kohm')}, no load beside it`,
    },
  ],
  outcomes,
  steps,
  dominates: () =>
    'One thing decides alone: whether the line ends in its load. No tolerance in the chain is a tenth as large.',
  help: () => 'Put the load back. Nothing else helps, and no factor replaces it.',
  mistake: () =>
    `“Divide by four” would give back ${num('shown', claimed() / 4, 1, 'W')}, but only of a source that is matched. A transmitter is built to work into 50\u00a0Ω, not to have 50\u00a0Ω: without its load it shows some other voltage, and may not outlive it. The opposite slip is a load and a 50\u00a0Ω input together: 25\u00a0Ω, and too small a reading.`,
  assumptions: [
    'The source has an inner resistance of exactly 50 Ω, and gives the same voltage whatever hangs on it.',
    'A clean sine.',
  ],
  cautions: [
    'Never key a transmitter without a load: its final stage may be destroyed. This is a sum on paper, not something to try.',
    'Open ends of a line can carry twice the voltage: keep fingers away while it is keyed.',
  ],
  lesson: 'measuring/oscilloscope-across-a-load',
  bench: () => {
    const { loadOhm, frequencyHz, scopeHz, probeHz, peakToPeakV } = openUse();
    return measuredBy({
      title: 'A test oscillator whose load was left off',
      measurand: { power: 'carrier', plane: 'at the oscillator’s socket, into 50 Ω', conditions: 'no load' },
      setup: {
        method: 'oscilloscope',
        resistance: ohms(loadOhm),
        bandwidthsHz: [scopeHz, probeHz],
        terminated: false,
      },
      frequencyHz,
      specification: { lower: 22, upper: 24 },
      columns: { readings: [peakToPeakV] },
    });
  },
  benchSays:
    'The bench says there is no number, and why. Say there that the line ends in its load, read again, and it has one.',
};
