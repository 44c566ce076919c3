import { componentOf, type Input } from '#compute';

/** Ids of what makes a calibration uncertain. */
export const IDS = {
  lender: 'lender',
  lenderDrift: 'lender drift',
  resolution: 'resolution',
  temperature: 'temperature',
  mismatch: 'mismatch',
  other: 'other',
  laterScatter: 'later scatter',
  laterResolution: 'later resolution',
  laterTemperature: 'later temperature',
  laterMismatch: 'later mismatch',
  linearity: 'linearity',
  meterIn: 'meter at the input',
  meterOut: 'meter across the load',
  stepIn: 'step at the input',
  stepOut: 'step across the load',
  load: 'load',
  scatterWithout: 'scatter without',
  scatterWith: 'scatter with',
  straightness: 'straightness',
  mismatchWithout: 'mismatch without',
  mismatchIn: 'mismatch at the input',
  mismatchOut: 'mismatch at the output',
  mismatchThrough: 'mismatch through',
} as const;

/** Limits to either side in dB as an input, or none for 0. */
export function limits(
  id: string,
  halfWidth: number,
  shape: 'rectangular' | 'arcsine' = 'rectangular',
): readonly Input[] {
  if (halfWidth === 0) return [];
  return [componentOf({ id, unit: 'dB', statement: { form: 'limits', shape, halfWidth } })];
}
