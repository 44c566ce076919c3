import { recalled, trade, type Word } from './word.ts';

/** Power, levels and ratios. */
export const powerWords = {
  decibel: {
    term: 'decibel',
    also: 'dB',
    means:
      'Ten times the common logarithm of a ratio of two powers. It compares; it says nothing about how many watts there are.',
    mind: 'Twenty times the logarithm of a ratio of voltages says the same thing where both stand across the same resistance.',
    defined: { in: 'decibelUse' },
  },
  level: {
    term: 'level',
    also: 'dBm',
    means: 'The logarithm of a power divided by a reference power: dBm has one milliwatt for its reference.',
    mind: 'The step between two levels is a ratio: dB, never dBm.',
    defined: { in: 'decibelUse' },
  },
  gain: {
    term: 'gain',
    means: 'What a part adds to the level, in dB; negative for a loss.',
    defined: trade(),
  },
  pad: {
    term: 'pad',
    also: 'attenuator',
    means: 'A part that takes a known number of decibels away and turns them into heat.',
    defined: trade(),
  },
  'peak-envelope-power': {
    term: 'peak envelope power',
    also: 'PEP',
    means: 'The mean power over one cycle of radio frequency at the crest of the envelope.',
    defined: recalled('1.157', 'radioRegulations'),
  },
  'mean-power': {
    term: 'mean power',
    means: 'The power averaged over a time that is long against the slowest modulation.',
    defined: recalled('1.158', 'radioRegulations'),
  },
  'carrier-power': {
    term: 'carrier power',
    means: 'The mean power over one cycle of radio frequency without modulation.',
    defined: recalled('1.159', 'radioRegulations'),
  },
  eirp: {
    term: 'equivalent isotropically radiated power',
    also: 'EIRP',
    means: 'Power to the antenna times its gain over an isotropic radiator.',
    defined: recalled('1.161', 'radioRegulations'),
  },
  erp: {
    term: 'effective radiated power',
    also: 'ERP',
    means: 'Power to the antenna times its gain over a half-wave dipole.',
    defined: recalled('1.162', 'radioRegulations'),
  },
  rms: {
    term: 'RMS',
    also: 'root mean square, effective value',
    means: 'The steady voltage that would heat a resistor just as much: the root of the mean of the squares.',
    mind: 'Said of voltage and current. “RMS power” is no quantity: RMS volts give mean power.',
    defined: trade(),
  },
  mismatch: {
    term: 'mismatch',
    means:
      'What happens where source and load are not alike: a part of the wave goes back, and how the parts meet depends on a phase that nobody knows.',
    defined: trade(),
  },
} satisfies Record<string, Word>;
