import { expect } from 'vitest';
import { decode } from '../../src/address/decode.ts';
import { thermometerAt, thermometerLine } from '../../src/sheet/thermometer.ts';
import { borrowedSpec } from '../../src/widgets/borrowed/spec.ts';

/** The numbers of the thermometer's line in the state of an address, by what a check calls them. */
export function thermometerFigures(address: string): Readonly<Record<string, number>> {
  const { state, problems } = decode(borrowedSpec, address);
  expect(problems).toEqual([]);
  expect(state.item).toBe('thermometer');
  const line = thermometerLine(state.origin);
  const found = thermometerAt(state.temperature, state.origin);
  return {
    intercept: line.intercept,
    'u of the intercept': line.interceptUncertainty,
    slope: line.slope,
    'u of the slope': line.slopeUncertainty,
    'correlation of the two': line.correlation,
    'scatter about the line': line.residualDeviation,
    [`correction at ${state.temperature} °C`]: found.value,
    'its u': found.standardUncertainty,
    'its variance': 1e5 * found.standardUncertainty ** 2,
    'degrees of freedom': found.degreesOfFreedom,
  };
}
