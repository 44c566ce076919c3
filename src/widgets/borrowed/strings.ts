import type { SettingsWords } from '../parts/SettingRow.tsx';
import type { Item } from './spec.ts';

/** Words of a line of corrections. */
export const strings = {
  name: 'A line of corrections, with what it is uncertain by',
  description: (summary: string): string =>
    `Along: what one’s own instrument shows. Up: what is to be added. Circles are what was found, place by place. ${summary}`,
  axes: {
    meter: { up: 'dB to be added', along: 'our meter shows, dBm', limit: '' },
    thermometer: {
      up: '0.001 °C to add, over −0.160 °C',
      along: 'thermometer shows, °C',
      limit: '',
    },
  } satisfies Record<Item, { up: string; along: string; limit: string }>,
  correction: (text: string): string => `Correction ${text}`,
  correctionWords: 'read from the line, lent meter less own; to be added (k = 2)',
  none: 'No correction',
  noneWords: ({ lower, upper }: { lower: string; upper: string }): string =>
    `compared was from ${lower} to ${upper}; beyond that nothing was measured, and the line says nothing`,
  laterWords: ({ shown, months }: { shown: string; months: string }): string =>
    `${shown} shown later, corrected: with its own scatter, display, warmth and mismatch, and ${months} of drift (k = 2)`,
  spokenReading: (text: string): string => `The reading, corrected, is ${text}`,
  asShown: (shown: string): string => `${shown} as shown`,
  asShownWords: 'uncorrected: what its data sheet claims, and no more',
  months: (count: number): string => (count === 1 ? 'a month' : count === 0 ? 'no month' : `${count} months`),
  floor: (text: string): string => `Never below ${text}`,
  floorWords:
    'the lender’s own: one and the same in every round and at every level, so that neither averaging nor the line shrinks it',
  averaged: 'Claimed too little',
  averagedWords: ({ claimed, due }: { claimed: string; due: string }): string =>
    `${claimed} where ${due} is due: the lender’s part was divided by the root of the levels, as if each had been compared with another meter`,
  uncertain: ({ value, u }: { value: string; u: string }): string => `${value}, u = ${u}`,
  predictionWords: ({ at, degrees, beyond }: { at: string; degrees: string; beyond: boolean }): string =>
    `correction at ${at}, ${degrees} degrees of freedom${beyond ? '; beyond the readings, as in print: only if the line goes on' : ''}`,
  line: ({ height, slope, origin }: { height: string; slope: string; origin: string }): string =>
    `${height} and ${slope} for each kelvin from ${origin} on`,
  lineWords: ({
    height,
    slope,
    correlation,
    scatter,
  }: {
    height: string;
    slope: string;
    correlation: string;
    scatter: string;
  }): string =>
    `u of the height ${height}, of the slope ${slope}, correlation ${correlation}; the readings scatter by ${scatter} about the line`,
  apart: (u: string): string => `u = ${u} otherwise`,
  apartWords: 'if height and slope were taken for independent; they are so about the mean temperature alone',
  table: {
    caption: 'What the readings gave',
    columns: ['Our meter showed', 'Correction', 'U of the readings alone (k = 2)'],
  },
  settings: {
    caption: 'The comparison and its use',
    columns: ['What', 'Set to'],
    slide: (label: string): string => `${label}: drag`,
    choices: {
      item: { meter: 'The club’s meter, by a lent one', thermometer: 'A thermometer (JCGM 100, H.3)' },
      shared: { whole: 'Counted whole', averaged: 'Divided by the root of the levels' },
    },
    units: {
      reading: 'dBm',
      lender: 'dB',
      months: 'none',
      temperature: 'degC',
      origin: 'degC',
    },
  } satisfies SettingsWords,
  note: {
    meter:
      'Circles: the correction at each level, bars its U by the readings alone. Line: through them, by weight. Strip: U of the correction, with the lender’s part, warmth and mismatch; the dashed outline is by the readings alone. The knob is a later reading.',
    thermometer:
      'Circles: the corrections found, bars twice their scatter about the line. Strip: twice the u of the line; the dashed outline is what comes of taking height and slope for independent. The knob is the temperature that is asked for.',
  } satisfies Record<Item, string>,
  reset: 'Back to the club’s meter',
  noScript:
    'Pulling and typing need JavaScript; the figure, its numbers and the table are complete without it.',
} as const;
