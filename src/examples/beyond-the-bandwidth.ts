import {
  levelDbm,
  levelToPower,
  ohms,
  peakToPeakOfPower,
  powerToLevel,
  powerW,
  singlePoleLossDb,
  voltsOfPower,
} from '#compute';
import { clubMeasurement } from '../sheet/club-measurement.ts';
import { NO_READINGS } from '../sheet/method.ts';
import { type ScopeUse, scopeFound } from '../sheet/scope.ts';
import { outOfRangeText } from '../text/out-of-range-text.ts';
import type { Outcome, Step, SumExample } from './example.ts';
import { formula, given, num, watts } from './said.ts';
import { stated } from './sheet-of.ts';

const TRUE_W = 1;
const FREQUENCY_HZ = 145e6;
const BANDWIDTH_HZ = 100e6;
const PROBE_HZ = 500e6;
const LOAD_OHM = 50;

const ratio = (): number => FREQUENCY_HZ / BANDWIDTH_HZ;
const lossDb = (): number => singlePoleLossDb(ratio());
const shownW = () => levelToPower(levelDbm(powerToLevel(powerW(TRUE_W)) - lossDb()));
const shownVolts = (): number =>
  stated(peakToPeakOfPower({ power: shownW(), resistance: ohms(LOAD_OHM) }), 1);

/** The oscilloscope as it was used; a probe so fast that it does not matter. */
export const beyondUse = (): ScopeUse => ({
  peakToPeakV: shownVolts(),
  loadOhm: LOAD_OHM,
  frequencyHz: FREQUENCY_HZ,
  scopeHz: BANDWIDTH_HZ,
  probeHz: PROBE_HZ,
  gainPercent: 3,
  gainOf: 'reading',
  screenV: 16,
  end: 'load',
});

/** What the handheld really puts across its load, as a text. */
export const handheldVolts = (): string =>
  num('shown', voltsOfPower({ power: powerW(TRUE_W), resistance: ohms(LOAD_OHM) }), 1, 'Vrms');

/** Why the method gives no number. */
function reason() {
  const found = scopeFound(beyondUse());
  if (found.inRange || found.reason.code !== 'aboveBandwidth')
    throw new RangeError('beyondTheBandwidth: the frequency must be above what the method bears');
  return found.reason;
}

const steps = (): readonly Step[] => [
  {
    id: 'ratio',
    title: 'How far beyond',
    formula: formula(
      (style) =>
        `f / B = ${num(style, FREQUENCY_HZ / 1e6, 0, 'MHz')} / ${num(style, BANDWIDTH_HZ / 1e6, 0, 'MHz')} = ${num(style, ratio(), 2, 'none')} for the oscilloscope alone; with the probe ${num(style, reason().ratio, 2, 'none')}`,
    ),
    words: 'The method stands behind no more than three tenths of the bandwidth (common practice).',
  },
  {
    id: 'roll-off',
    title: 'What a front end of one pole would leave',
    formula: formula(
      (style) =>
        `10 lg(1 + ${num(style, ratio(), 2, 'none')}²) = ${num(style, lossDb(), 2, 'dB')}: ${watts(style, TRUE_W, 1)} shows as ${watts(style, shownW(), 2)}`,
    ),
    words:
      'Real front ends are not of one pole: flatter at first, then steeper, with ripple. Nobody states them there.',
  },
];

const outcomes = (): readonly Outcome[] => [
  { name: 'No number', value: (style) => outOfRangeText(style, reason()) },
  {
    name: 'What it would show, if its front end were of one pole',
    value: (style) =>
      `${watts(style, shownW(), 2)} for ${watts(style, TRUE_W, 1)}: ${num(style, lossDb(), 2, 'dB')} too little`,
  },
];

/** Scenario: a handheld at 145 MHz on an oscilloscope of 100 MHz. Invented data. */
export const beyondTheBandwidth: SumExample = {
  kind: 'sum',
  slug: 'beyond-the-bandwidth',
  title: 'Beyond the bandwidth',
  summary: 'A handheld of 1\u00a0W shows a third of it on a 100 MHz oscilloscope. Is it broken?',
  question:
    'My handheld is sold as 1\u00a0W at 145\u00a0MHz. Across the load my 100\u00a0MHz oscilloscope says a third of that. Is the handheld at fault, or can I correct for the oscilloscope?',
  wanted: 'the carrier power into 50\u00a0Ω at the antenna socket, key down, at 145\u00a0MHz',
  method:
    'Voltage across a known resistance, at a frequency where the instrument is stated for nothing: the answer is that there is none.',
  space: 'none',
  known: () => [
    { what: 'Frequency', value: given(FREQUENCY_HZ / 1e6, 0, 'MHz') },
    { what: 'Bandwidth of the oscilloscope', value: given(BANDWIDTH_HZ / 1e6, 0, 'MHz') },
    { what: 'Bandwidth of the probe', value: given(PROBE_HZ / 1e6, 0, 'MHz') },
    { what: 'Trace, trough to crest', value: given(shownVolts(), 1, 'Vpp') },
    { what: 'Load', value: given(LOAD_OHM, 0, 'ohm') },
  ],
  outcomes,
  steps,
  dominates: (style) =>
    `The front end decides: ${num(style, lossDb(), 1, 'dB')} by the simplest model, and nobody knows by how much that model is wrong. Against this a gain of 3\u00a0% is nothing.`,
  help: () =>
    'Take a method that reaches 145\u00a0MHz: a detector with a curve, pads into a meter that is stated there, or the heat in the load.',
  mistake: () =>
    `Adding the ${num('shown', lossDb(), 2, 'dB')} back and calling the sum a measurement. It is the model’s number, not the instrument’s: with a front end that falls steeper the same trace would stand for more.`,
  assumptions: [
    'The number shown is computed with a front end of one pole and the true power, to show how large the effect is.',
    'The load is 50 Ω at this frequency, which a long-legged resistor is not.',
  ],
  cautions: [
    'Into a dummy load that is meant for this frequency; never key without it.',
    `Work out the voltage first: an input that ends the line commonly bears 5 V RMS at most, and ${watts('shown', TRUE_W, 1)} are ${handheldVolts()}.`,
  ],
  lesson: 'measuring/oscilloscope-across-a-load',
  bench: () => {
    const club = clubMeasurement('oscilloscope');
    return {
      ...club,
      title: 'A handheld at 145 MHz',
      measurand: {
        ...club.measurand,
        plane: 'at the antenna socket, into 50 Ω',
        conditions: '145 MHz, key down',
      },
      setup: {
        method: 'oscilloscope',
        resistance: ohms(LOAD_OHM),
        bandwidthsHz: [BANDWIDTH_HZ, PROBE_HZ],
        terminated: true,
      },
      points: club.points.map((point) => ({
        ...point,
        frequencyHz: FREQUENCY_HZ,
        specification: { lower: 29, upper: 31 },
        columns: { ...NO_READINGS, readings: [shownVolts()] },
      })),
    };
  },
};
