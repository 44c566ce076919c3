import type { MeterKind } from '../../sheet/joined.ts';
import type { SettingsWords } from '../parts/SettingRow.tsx';

const percent = '%: shown less what was there';

/** Words of a meter that joins a circuit. */
export const strings = {
  name: 'What is shown less what was there before',
  description: (summary: string): string =>
    `Line: what joining and the kind of meter do. Strip: where the reading may lie besides. ${summary}`,
  axes: {
    source: { up: percent, along: 'resistance of the source, kΩ', limit: '' },
    kilohertz: { up: percent, along: 'frequency, kHz', limit: '' },
    megahertz: { up: 'dB: shown less what was there', along: 'frequency, MHz', limit: '' },
  },
  off: (error: string): string => `${error}`,
  why: {
    digital: (rm: string): string => `of volts: the meter’s ${rm} are joined to the circuit`,
    needle: (rm: string): string => `of volts: the meter’s ${rm} are joined to the circuit`,
    alternating: 'of volts: the mean is taken, and the scale is made for a sine',
    probe: (c: string): string => `the tip’s ${c} are joined to the circuit; it gives less than before`,
  },
  power: (db: string): string => `${db} of power`,
  powerWords: (percentOfPower: string): string => `${percentOfPower}, if a power is worked out from it`,
  changed: (percentOfPower: string): string =>
    `${percentOfPower}: the circuit is changed, not the reading alone`,
  from: ({ lower, upper }: { lower: string; upper: string }): string => `${lower} to ${upper}`,
  spoken: {
    off: (text: string): string => `What is shown is off by ${text}`,
    power: (text: string): string => `That is ${text}`,
    range: (text: string): string => `With what else may be wrong, from ${text}`,
  },
  stated: 'with what the meter itself may be wrong by',
  rolledOff: 'with what oscilloscope and probe may show too little, by a single pole',
  outOfRange: 'Out of range: no number',
  outWords: (most: string): string =>
    `this meter is stated, or can be stood behind, up to ${most} only; what it shows beyond is no measurement`,
  outAdvice: {
    alternating: 'Take an instrument that is made for it',
    probe: 'Take another probe, or a power meter',
  },
  outAdviceWords: 'a correction for what is not known would be invented',
  outSource: 'Nothing is written down',
  outSourceWords: 'not even a value with a wide band: nobody knows how wide',
  settings: {
    caption: 'The meter and what it joins',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: {
      meter: {
        digital: 'Digital multimeter, DC volts: 10 MΩ',
        needle: 'Needle meter, 10 V range: 20 kΩ for each volt',
        alternating: 'Multimeter on its AC range, responding to the mean',
        probe1: 'Oscilloscope, probe at 1×',
        probe10: 'Oscilloscope, probe at 10×',
      } satisfies Record<MeterKind, string>,
      wave: { sine: 'Sine', square: 'Square', triangle: 'Triangle' },
    },
    units: { source: 'kohm', kilohertz: 'kHz', megahertz: 'MHz', resistance: 'ohm' },
  } satisfies SettingsWords,
  note: 'Line: how much is shown too little or too much because the meter joins, or because of what it responds to. Strip: where the reading may lie by what is stated of the meter, of the needle in percent of its whole range, twice the voltage there. Where the line ends, the meter is out of range. Meters and probes are invented; values like theirs are common.',
  reset: 'Back to the needle meter',
  noScript: 'Pulling and typing need JavaScript; the figure and its numbers are complete without it.',
} as const;
