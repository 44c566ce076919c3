import { finite, type LevelDbm, levelDbm, rangeError } from './quantity.ts';

/** Below this fraction of the amplitudes' plain sum, what is left of a cancellation is rounding of the sum itself. */
const SMALLEST_REST = 1e-12;

/** The highest of some levels. @throws RangeError if there is none. */
function highest(where: string, levels: readonly LevelDbm[]): number {
  if (levels.length === 0) throw rangeError({ where, wish: 'levels must hold at least one level', got: [] });
  return levels.reduce((top, level) => Math.max(top, level), Number.NEGATIVE_INFINITY);
}

/**
 * The level of unrelated signals together: their powers add. Two of 17 dBm make 20.01 dBm, not 34.
 * Any finite levels: the sum is taken relative to the highest, so that nothing overflows.
 * @throws RangeError if there is no level.
 */
export function sumOfLevels(levels: readonly LevelDbm[]): LevelDbm {
  const top = highest('sumOfLevels', levels);
  const ratio = levels.reduce((sum, level) => sum + 10 ** ((level - top) / 10), 0);
  return levelDbm(top + 10 * Math.log10(ratio));
}

/** A signal of one frequency: its level and its phase against the others, in degrees. */
export interface Phasor {
  readonly level: LevelDbm;
  readonly phaseDegrees: number;
}

/**
 * The level of coherent signals (one frequency, fixed phases) across one resistance: their volts add as arrows.
 * Two equal ones in phase give 6.02 dB more than one; a third of a turn apart, as much as one.
 * @throws RangeError if there is no signal, a phase is not finite, or they cancel to within rounding (1e-12).
 */
export function coherentSum(signals: readonly Phasor[]): LevelDbm {
  const where = 'coherentSum';
  const levels = signals.map((signal) => signal.level);
  const top = highest(where, levels);
  let inPhase = 0;
  let quadrature = 0;
  let plain = 0;
  for (const { level, phaseDegrees } of signals) {
    const amplitude = 10 ** ((level - top) / 20);
    const phase = (finite(where, 'phaseDegrees', phaseDegrees) * Math.PI) / 180;
    inPhase += amplitude * Math.cos(phase);
    quadrature += amplitude * Math.sin(phase);
    plain += amplitude;
  }
  const rest = Math.hypot(inPhase, quadrature);
  if (rest < SMALLEST_REST * plain)
    throw rangeError({ where, wish: 'signals must not cancel each other', got: rest });
  return levelDbm(top + 20 * Math.log10(rest));
}

/**
 * The mean of several levels as powers: what a thermal meter would show if each lasted equally long.
 * For 10, 10 and 13 dBm it is 11.24 dBm. Right where the power itself varies.
 * @throws RangeError if there is no level.
 */
export function meanAsPowers(levels: readonly LevelDbm[]): LevelDbm {
  highest('meanAsPowers', levels);
  return levelDbm(sumOfLevels(levels) - 10 * Math.log10(levels.length));
}

/**
 * The mean of several levels in decibels (the geometric mean of the powers): for 10, 10 and 13 dBm it is 11 dBm.
 * Right for an instrument's scatter in dB. Never above {@link meanAsPowers}.
 * @throws RangeError if there is no level.
 */
export function meanOfDecibels(levels: readonly LevelDbm[]): LevelDbm {
  const top = highest('meanOfDecibels', levels);
  return levelDbm(top + levels.reduce((sum, level) => sum + (level - top), 0) / levels.length);
}
