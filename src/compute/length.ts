import { finite, notNegative, positive, rangeError } from './quantity.ts';

/** Reference temperature of lengths, in degrees Celsius. Source: ISO 1:2016 (20 degrees since CIPM 1931). */
export const REFERENCE_CELSIUS = 20;

/**
 * How much longer a part is than at 20 degrees, in micrometres: L alpha (t - 20). 100 mm of steel, 3 K warm: 3.45 um.
 * @param lengthMm above zero. @param expansionPerK linear coefficient, for example 11.5e-6.
 * @throws RangeError unless the length is above zero and the rest finite.
 * Source: definition of the linear coefficient of expansion, first order.
 */
export function expansionUm({
  lengthMm,
  expansionPerK,
  temperatureC,
}: {
  lengthMm: number;
  expansionPerK: number;
  temperatureC: number;
}): number {
  const where = 'expansionUm';
  const deviationK = finite(where, 'temperatureC', temperatureC) - REFERENCE_CELSIUS;
  return (
    1000 * positive(where, 'lengthMm', lengthMm) * finite(where, 'expansionPerK', expansionPerK) * deviationK
  );
}

/**
 * Length at 20 degrees of a part measured at another temperature, in millimetres: L/(1 + alpha (t - 20)).
 * @throws RangeError unless the length is above zero, the rest finite, and the part does not shrink to nothing.
 * Source: definition of the linear coefficient of expansion.
 */
export function lengthAtReference({
  lengthMm,
  expansionPerK,
  temperatureC,
}: {
  lengthMm: number;
  expansionPerK: number;
  temperatureC: number;
}): number {
  const where = 'lengthAtReference';
  const deviationK = finite(where, 'temperatureC', temperatureC) - REFERENCE_CELSIUS;
  const factor = 1 + finite(where, 'expansionPerK', expansionPerK) * deviationK;
  if (!(factor > 0)) throw rangeError({ where, wish: 'expansion must leave a length', got: factor });
  return positive(where, 'lengthMm', lengthMm) / factor;
}

/**
 * What is left of a difference of temperature after a time, in kelvin: D exp(-t/T). After handling, blocks lie on a plate
 * until they are as warm as it.
 * @throws RangeError unless the time is 0 or more and the time constant above zero.
 * Source: Newton's law of cooling; the time constant is to be found by trial.
 */
export function remainingDifferenceK({
  differenceK,
  minutes,
  timeConstantMinutes,
}: {
  differenceK: number;
  minutes: number;
  timeConstantMinutes: number;
}): number {
  const where = 'remainingDifferenceK';
  const turns =
    notNegative(where, 'minutes', minutes) / positive(where, 'timeConstantMinutes', timeConstantMinutes);
  return finite(where, 'differenceK', differenceK) * Math.exp(-turns);
}
