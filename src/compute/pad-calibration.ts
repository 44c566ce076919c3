import type { Input, SumModel } from './model.ts';
import { finite, positive, rangeError } from './quantity.ts';

/** Decibels per unit of ln(voltage ratio). */
const DB_PER_LN = 20 / Math.LN10;
/** Relative step for the influence of the load: small enough for a straight line, large enough against rounding. */
const LOAD_STEP = 1e-4;

/**
 * Attenuation of a matched pad from the voltages at its input and across its load, in dB. With a load that is not the
 * pad's own impedance the ratio is S (1 + G) / (1 + S^2 G), G the load's reflection; solved for S.
 */
function attenuationDb(ratio: number, loadOhms: number, impedanceOhms: number): number {
  const reflection = (loadOhms - impedanceOhms) / (loadOhms + impedanceOhms);
  const sum = 1 + reflection;
  const s = (2 * ratio) / (sum + Math.sqrt(sum ** 2 - 4 * reflection * ratio ** 2));
  return -DB_PER_LN * Math.log(s);
}

/**
 * A pad measured at DC with a multimeter: attenuation in dB as a sum. Holds at DC; at radio frequency as far as the pad
 * is good for. One meter on one range for both voltages: give its gain error the same cause in both parts, and it cancels.
 * @param atInput what each reading may be off by, in dB (`componentOf` with `percentOfVolts`).
 * @param atLoad the same across the load.
 * @param load the load's own tolerance as an input in percent of its resistance (unit `own`), if it counts.
 * @throws RangeError unless voltages, load and impedance are > 0 and the output is below the input.
 * Source: voltage division of a matched two-port (S parameters); common practice for amateurs' pads.
 */
export function padByDc({
  voltsIn,
  voltsOut,
  loadOhms,
  impedanceOhms = 50,
  atInput = [],
  atLoad = [],
  load,
}: {
  voltsIn: number;
  voltsOut: number;
  loadOhms: number;
  impedanceOhms?: number;
  atInput?: readonly Input[];
  atLoad?: readonly Input[];
  load?: Input | undefined;
}): SumModel {
  const ratio = positive('padByDc', 'voltsOut', voltsOut) / positive('padByDc', 'voltsIn', voltsIn);
  if (ratio >= 1)
    throw rangeError({ where: 'padByDc', wish: 'voltsOut must be < voltsIn', got: [voltsIn, voltsOut] });
  positive('padByDc', 'loadOhms', loadOhms);
  positive('padByDc', 'impedanceOhms', impedanceOhms);
  const at = (factor: number) => attenuationDb(ratio, loadOhms * factor, impedanceOhms);
  const perPercent = (at(1 + LOAD_STEP) - at(1 - LOAD_STEP)) / (200 * LOAD_STEP);
  const loads = load === undefined ? [] : [load];
  return {
    kind: 'sum',
    constant: at(1),
    inputs: [...atInput, ...atLoad, ...loads],
    sensitivities: [...atInput.map(() => 1), ...atLoad.map(() => -1), ...loads.map(() => perPercent)],
  };
}

/**
 * A pad swapped in and out in front of one receiver: attenuation in dB as a sum. A ratio: the receiver's gain cancels, so
 * that it need not be calibrated; its linearity over the step, the scatter, and both mismatches stay (`parts`).
 * @param withoutDb the receiver's reading without the pad, and `withDb` with it, both in dB of any one kind.
 * @throws RangeError unless both readings are finite and the pad lowers them.
 * Source: common practice (insertion loss by substitution).
 */
export function padBySwap({
  withoutDb,
  withDb,
  parts,
}: {
  withoutDb: number;
  withDb: number;
  parts: readonly Input[];
}): SumModel {
  const constant = finite('padBySwap', 'withoutDb', withoutDb) - finite('padBySwap', 'withDb', withDb);
  if (constant <= 0)
    throw rangeError({ where: 'padBySwap', wish: 'withDb must be < withoutDb', got: [withoutDb, withDb] });
  return { kind: 'sum', constant, inputs: [...parts], sensitivities: parts.map(() => 1) };
}
