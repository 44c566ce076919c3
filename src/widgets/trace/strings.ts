import type { SettingsWords } from '../parts/Settings.tsx';
import type { ShownSlip } from './spec.ts';

const slips: Readonly<Record<ShownSlip, string>> = {
  none: 'None',
  wholeAsPeak: 'Trough to crest taken for the peak',
  wholeAsRms: 'Trough to crest taken for RMS',
  peakAsRms: 'Peak taken for RMS',
  sineForAll: 'Vpp²/(8 R) for any shape',
  averageMeter: 'RMS from a meter that averages',
  assumedLoad: 'Load taken for 50 Ω',
  probe: 'Tenfold probe not told to the oscilloscope',
  tenLog: '10 lg on the volts',
};

/** Words of the trace. */
export const strings = {
  name: 'A trace across a load, with its measures',
  description: (summary: string): string =>
    `Two periods of the voltage across the load, with peak, RMS and rectified average as lines and the height from trough to crest as a bracket; below, the power in the load from moment to moment with its mean. ${summary}`,
  axes: { volts: 'volts at the load', power: 'watts in the load', time: 'periods' },
  marks: {
    peak: 'peak',
    rms: 'RMS',
    average: 'average',
    whole: 'trough to crest',
    greatest: 'greatest',
    mean: 'mean',
    slipped: 'slip',
  },
  measures: ({ peak, rms, average }: { peak: string; rms: string; average: string }): string =>
    `${peak}, ${rms}, rectified average ${average}`,
  power: (load: string): string => `mean power: RMS squared over the load of ${load}`,
  slipped: (power: string): string => `${power} by the slip`,
  off: ({ factor, error }: { factor: string; error: string }): string => `${factor} the power, ${error}`,
  right: 'no difference',
  sameHere: 'On this trace the slip happens to change nothing: that is how it becomes a habit.',
  noSlip: 'No slip chosen',
  noSlipWords: 'Choose one below, and see what it makes of this trace.',
  settings: {
    caption: 'The trace and its load',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: { wave: { sine: 'Sine', square: 'Square', triangle: 'Triangle' }, slip: slips },
    units: { peakToPeak: 'Vpp', load: 'ohm' },
  } satisfies SettingsWords,
  slips,
  /** Where a name is a formula: what is said. */
  slipsSaid: {
    sineForAll: 'The sine’s formula for any shape',
    assumedLoad: 'Load taken for 50 ohms',
  } as Readonly<Partial<Record<ShownSlip, string>>>,
  table: 'What the usual slips make of this trace',
  columns: { slip: 'Slip', says: 'It says', factor: 'Of the true power', error: 'Error' },
  looked: 'looked at',
  reset: 'Back to the prepared trace',
  noScript:
    'Pulling and typing need JavaScript; the figure, its numbers and the table of slips are complete without it.',
  note: 'The square and the triangle are drawn ideal; at radio frequency a filter behind the transmitter leaves nearly a sine.',
} as const;
