import { coherentSum, levelDbm, levelToVolts, ohms, sumOfLevels, voltsRms, voltsToLevel } from '#compute';
import type { SignalsState } from './spec.ts';

/** The load that both signals meet in. */
export const LOAD_OHM = 50;
/** A cancellation that leaves less than this, in dB above nothing, is said to leave nothing: no bench is that equal. */
const LEAST_DBM = -60;

/** Two signals in one load, by each way of adding them. */
export interface Sums {
  /** Unrelated signals: their powers add. */
  readonly unrelatedDbm: number;
  /** One frequency: their volts add as arrows. Undefined where they cancel. */
  readonly coherentDbm: number | undefined;
  /** The same with the best and the worst phase. */
  readonly inPhaseDbm: number;
  readonly againstDbm: number | undefined;
  /** What adding the numbers before the unit would claim. */
  readonly claimedDbm: number;
}

/** Every way of adding the two signals of a state. */
export function sumsOf({ first, second, phase }: SignalsState): Sums {
  const levels = [levelDbm(first), levelDbm(second)] as const;
  const across = (level: (typeof levels)[number]): number =>
    levelToVolts({ level, resistance: ohms(LOAD_OHM) });
  const [a, b] = [across(levels[0]), across(levels[1])];
  const left = Math.abs(a - b);
  // the law of cosines in the form that does not lose what is left near half a turn
  const together = Math.hypot(left, 2 * Math.sqrt(a * b) * Math.cos((phase * Math.PI) / 360));
  const nothing = levelToVolts({ level: levelDbm(LEAST_DBM), resistance: ohms(LOAD_OHM) });
  const against =
    left < nothing ? undefined : voltsToLevel({ volts: voltsRms(left), resistance: ohms(LOAD_OHM) });
  const at = (phaseDegrees: number): number =>
    coherentSum([
      { level: levels[0], phaseDegrees: 0 },
      { level: levels[1], phaseDegrees },
    ]);
  return {
    unrelatedDbm: sumOfLevels(levels),
    coherentDbm: together < nothing ? undefined : at(phase),
    inPhaseDbm: at(0),
    againstDbm: against,
    claimedDbm: first + second,
  };
}
