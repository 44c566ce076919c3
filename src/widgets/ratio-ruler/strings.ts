import type { Slip } from './spec.ts';

/** Words of the ruler of ratios. */
export const strings = {
  name: 'One ratio on three rulers: power, decibels, volts',
  description: (summary: string): string =>
    `Three rulers of one length. The decibels are even; the ratios of power and of volts stand where their logarithm puts them. ${summary}`,
  power: 'Power ratio',
  decibels: 'Decibels',
  volts: 'Voltage ratio',
  voltsNote: 'across equal resistances',
  decibelsNote: 'ten times the logarithm of the power ratio',
  powerNote: (plain: string): string => `as a number: ${plain}`,
  stepsHeading: 'by steps',
  noSteps: 'No step at all',
  stepsNote: ({ steps, off }: { steps: string; off: string }): string => `${steps}; ${off}`,
  exact: 'which is what it is',
  off: ({ percent, db, more }: { percent: string; db: string; more: boolean }): string =>
    `${percent} ${more ? 'more' : 'less'} than it is, or ${db}`,
  rest: (db: string): string => `then ${db}`,
  controls: 'The ratio, in the form you have it in',
  formColumn: 'Form',
  valueColumn: 'Value',
  setColumn: 'Set it',
  slider: 'Ratio: drag the decibels',
  fieldDb: 'Ratio in decibels',
  fieldPower: 'Power ratio',
  fieldVolts: 'Voltage ratio',
  slip: 'Show beside it what comes out with',
  slips: {
    none: 'no mistake',
    tenForVolts: '10 lg of a ratio of volts',
    twentyForWatts: '20 lg of a ratio of powers',
  } satisfies Readonly<Record<Slip, string>>,
  slipSaid: ({
    slip,
    said,
    means,
    truth,
  }: {
    slip: Slip;
    said: string;
    means: string;
    truth: string;
  }): string =>
    `${slip === 'tenForVolts' ? '10 lg of the voltage ratio' : '20 lg of the power ratio'} gives ${said} (dashed). Whoever reads that takes the power for ${means}, where it is ${truth}.`,
  slipBeyond: ' The dashed line stops where the ruler ends.',
  reset: 'Back to the prepared ratio',
  noScript:
    'Dragging and typing need JavaScript; the figure, its numbers and its table are complete without it.',
} as const;
