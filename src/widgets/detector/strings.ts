import type { DetectorPart, DropFrom } from '../../sheet/detector.ts';
import type { SettingsWords } from '../parts/SettingRow.tsx';

/** Words of the peak detector. */
export const strings = {
  name: 'What a peak detector may be off by, over its DC volts',
  description: (summary: string): string =>
    `Along: what the voltmeter shows. Up: what is stated less what is there, in decibels. The line is what comes of forgetting the diode’s drop; with a fixed drop it ends where the method ends. ${summary}`,
  axes: { up: 'dB: stated less what is there', along: 'the voltmeter shows, V', edge: 'the method ends' },
  parts: {
    voltmeter: 'Voltmeter',
    drop: 'Drop of the diode',
    harmonics: 'Harmonics',
    load: 'Load resistance',
  } satisfies Readonly<Record<DetectorPart, string>>,
  ofResistance: (amount: string): string => `${amount} of R`,
  forgotten: (error: string): string => `${error} without the drop`,
  forgottenWords: (level: string): string => `it would say ${level}, and nothing on the meter tells`,
  why: {
    belowDetector: ({ power, least }: Readonly<Record<'power' | 'least', string>>): string =>
      `Out of range: ${power} is below ${least}, where a fixed diode drop does not describe the detector; it needs a curve calibrated at DC.`,
    vagueVolts: (percent: string): string =>
      `Out of range: what is not known of the volts is ${percent} of the peak, more than a third of it.`,
  },
  help: {
    vagueVolts: 'a drop that is better known, or a finer range of the voltmeter',
    belowDetector:
      'a curve of this very detector, taken with DC at this level; or another method, such as a pad into a power meter',
  },
  caution: ({
    level,
    heat,
    volts,
    ohms,
    reverse,
  }: Readonly<Record<'level' | 'heat' | 'volts' | 'ohms' | 'reverse', string>>): string =>
    `at ${level}, the most to reckon with here, the load takes ${heat} as heat and ${volts} are across its ${ohms}. The diode sees up to ${reverse} in reverse, twice the peak.`,
  cautionHead: 'Before you key:',
  settings: {
    caption: 'The detector, its diode and the load',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: {
      from: {
        fixed: 'One figure for every level',
        curve: 'From a curve taken with DC at this level',
      } satisfies Record<DropFrom, string>,
    },
    units: { detected: 'V', drop: 'V', known: 'V', load: 'ohm', harmonics: 'dB' },
  } satisfies SettingsWords,
  note: 'Line: the error with the drop forgotten. Strip: where the level may lie with it added back (U, k = 2); dashed outline: the worst case. Of harmonics only the larger side is taken, both ways. Limits are taken as plain limits, with nothing else known. A curve’s drop holds at its own level.',
  reset: 'Back to the club’s detector',
  noScript:
    'Pulling and typing need JavaScript; the figure, its numbers and the table are complete without it.',
} as const;
