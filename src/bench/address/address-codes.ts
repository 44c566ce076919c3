import type { ChoiceSpec, TextSpec } from '../../address/field-spec.ts';

/** Longest text of a number field that an address carries: what is longer is no number, nor worth keeping. */
const LONGEST_NUMBER = 200;

/** A text, empty unless told otherwise. */
export const text = (key: string, label: string, maxLength = LONGEST_NUMBER, byDefault = ''): TextSpec => ({
  type: 'text',
  key,
  label,
  maxLength,
  default: byDefault,
});

/** A number as typed, with what stands there from the start. */
export const numberFrom = (key: string, label: string, byDefault: string): TextSpec =>
  text(key, label, LONGEST_NUMBER, byDefault);

/** A text of several lines. */
export const lines = (key: string, label: string, maxLength: number): TextSpec => ({
  ...text(key, label, maxLength),
  lines: true,
});

/** One of several codes. */
export const choice = <Code extends string>(
  key: string,
  label: string,
  choices: Readonly<Record<Code, string>>,
  byDefault: NoInfer<Code>,
): ChoiceSpec<Code> => ({ type: 'choice', key, label, choices, default: byDefault });

/** Yes or no; no unless told otherwise. */
export const flag = (key: string, label: string): ChoiceSpec<'yes' | 'no'> =>
  choice(key, label, { yes: 'y', no: 'n' }, 'no');

export const METHOD_CODES = {
  padsIntoMeter: 'pads',
  oscilloscope: 'scope',
  peakDetector: 'det',
  inLine: 'line',
  dcSubstitution: 'dc',
} as const;

export const FORM_CODES = {
  rectangular: 'lim',
  triangular: 'tri',
  arcsine: 'ush',
  trapezoid: 'trap',
  uncertainLimits: 'ulim',
  asymmetric: 'lop',
  expanded: 'exp',
  coverage: 'cov',
  corrections: 'corr',
  standard: 'std',
  readings: 'read',
  displayStep: 'step',
  halfWithin: 'half',
  terms: 'sum',
  swr: 'swr',
} as const;

export const KIND_CODES = {
  comparison: 'comp',
  meter: 'meter',
  mismatch: 'mis',
  pad: 'pad',
  cable: 'cable',
  amplifier: 'amp',
  transmitter: 'tx',
  other: 'other',
} as const;

export const SOURCE_CODES = {
  specification: 'spec',
  certificate: 'cert',
  measured: 'meas',
  borrowed: 'borr',
  judged: 'judge',
} as const;

export const UNIT_CODES = {
  dB: 'db',
  percentOfPower: 'pp',
  percentOfVolts: 'pv',
  percentOfResistance: 'pr',
  voltsPeakToPeak: 'vpp',
  volts: 'v',
  percentOfDcVolts: 'pdv',
  percentOfDcAmperes: 'pda',
  dcVolts: 'dv',
  dcAmperes: 'da',
  kelvinRf: 'kr',
  kelvinDc: 'kd',
} as const;

export const SPECIFICATION_CODES = {
  around: 'pm',
  uneven: 'un',
  between: 'lim',
  atMost: 'max',
  atLeast: 'min',
  licence: 'lic',
} as const;

export const POWER_CODES = { carrier: 'car', peakEnvelope: 'pep', mean: 'mean' } as const;
export const DELIVERY_CODES = { intoIdeal: 'ideal', delivered: 'load', net: 'net', incident: 'inc' } as const;
export const KEYING_CODES = {
  keyDown: 'down',
  steadyCarrier: 'steady',
  stringOfDits: 'dits',
  parisWord: 'paris',
  twoEqualTones: 'tones',
} as const;
export const RULE_CODES = { simple: 'simple', guardBand: 'guard', probability: 'prob' } as const;
