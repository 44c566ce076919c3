import type { GainOf, ScopeEnd, ScopePart } from '../../sheet/scope.ts';
import type { SettingsWords } from '../parts/SettingRow.tsx';

/** Numbers of a caution, as texts. */
interface CautionNumbers {
  readonly level: string;
  readonly heat: string;
  readonly volts: string;
  readonly ohms: string;
}

/** Words of the oscilloscope across a load. */
export const strings = {
  name: 'What a trace may be off by, over the frequency',
  description: (summary: string): string =>
    `Along: the frequency. Up: what is shown less what is there, in decibels. The band ends where the method ends. ${summary}`,
  axes: { up: 'dB: shown less what is there', along: 'frequency, MHz', edge: 'the method ends' },
  parts: {
    gain: 'Gain of the oscilloscope',
    flatness: 'Flatness with frequency',
    trace: 'Reading the trace',
    harmonics: 'Harmonics',
    load: 'Load resistance',
    probe: 'What the probe takes',
    rollOff: 'Roll-off',
  } satisfies Readonly<Record<ScopePart, string>>,
  ofVolts: (amount: string): string => `${amount} of volts`,
  ofResistance: (amount: string): string => `${amount} of R`,
  upTo: (most: string): string => `0 to ${most}`,
  why: {
    noTermination: 'Out of range: the oscilloscope is not terminated, so that nothing is known of the load.',
    aboveBandwidth: ({ share, largest }: { share: string; largest: string }): string =>
      `Out of range: the frequency is ${share} of the bandwidth, and above ${largest} no correction can be stood behind.`,
    offScreen: (screen: string): string =>
      `The trace is higher than the screen, which is ${screen} from bottom to top: nobody can read it.`,
    lowOnScreen: (percent: string): string =>
      `Out of range: what the screen may be wrong by is ${percent} of the trace, more than a third of it.`,
    twoLoads: (together: string): string =>
      `Two loads side by side are ${together}. What the transmitter gives into that says nothing of what it gives into one load.`,
  },
  help: {
    offScreen: 'a coarser setting of the vertical scale, so that the whole trace is on the screen',
    lowOnScreen: 'a finer setting of the vertical scale, so that the trace fills the screen',
    twoLoads: 'setting the oscilloscope’s input to high resistance, so that the load alone ends the line',
    noTermination:
      'a load of its own at the end of the line, before the key goes down. What an open line shows is no power at all',
    aboveBandwidth: (needed: string): string =>
      `oscilloscope and probe with a bandwidth of at least ${needed} together; or another method, such as pads into a power meter`,
  },
  unknown: 'not known',
  cautions: {
    load: ({ level, heat, volts, ohms }) =>
      `at ${level}, the most to reckon with here, the load takes ${heat} as heat and ${volts} are across its ${ohms}. An oscilloscope’s own 50 Ω input commonly stands 5 V RMS at most.`,
    open: () =>
      'this is a sum on paper. With nothing at the end of its line a transmitter may be harmed: do not key it so.',
    twoLoads: ({ level, volts, ohms }) =>
      `at ${level} a load of ${ohms} alone has ${volts} across it, and an oscilloscope’s own 50 Ω input commonly stands 5 V RMS at most: do not key it so.`,
  } satisfies Readonly<Record<ScopeEnd, (at: CautionNumbers) => string>>,
  cautionHead: 'Before you key:',
  settings: {
    caption: 'The oscilloscope, its probe and the load',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: {
      end: {
        load: 'A load of its own',
        open: 'Nothing but the oscilloscope (1 MΩ)',
        twoLoads: 'A load, and the oscilloscope set to 50 Ω',
      } satisfies Record<ScopeEnd, string>,
      gainOf: { reading: 'What is read', fullScale: 'The full screen' } satisfies Record<GainOf, string>,
    },
    units: {
      peakToPeak: 'Vpp',
      load: 'ohm',
      frequency: 'MHz',
      scope: 'MHz',
      probe: 'MHz',
      gain: 'percent',
      screen: 'V',
    },
  } satisfies SettingsWords,
  note: 'Line: the most that a front end of one pole would show too little. Strip: where the trace may be off (U, k = 2); dashed outline: the worst case. The trace is taken as read to a tenth of a division, of eight. Limits are taken as plain limits, with nothing else known.',
  reset: 'Back to the club’s oscilloscope',
  noScript:
    'Pulling and typing need JavaScript; the figure, its numbers and the table are complete without it.',
} as const;
