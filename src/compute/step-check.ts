import { finite, notNegative, positive } from './quantity.ts';

/** Result of putting one more known attenuation in. In dB. */
export interface StepCheck {
  /** How much less the reading moved than the step: negative if it moved more. */
  readonly shortfallDb: number;
  readonly outcome: 'passed' | 'moved-too-little' | 'moved-too-much';
}

/**
 * Does one more known pad move the reading by its attenuation? Too little tells of overload without the pad, or of a floor
 * with it; too much of a bad connection or a pad that is not what it says.
 * @param allowedDb what the pad's tolerance and the scatter of two readings allow together, >= 0; on it still passes.
 * @throws RangeError for a number not finite, a step not above zero, or a negative allowance.
 * Source: common practice.
 */
export function checkStep({
  withoutDb,
  withDb,
  stepDb,
  allowedDb,
}: {
  withoutDb: number;
  withDb: number;
  stepDb: number;
  allowedDb: number;
}): StepCheck {
  const moved = finite('checkStep', 'withoutDb', withoutDb) - finite('checkStep', 'withDb', withDb);
  const shortfallDb = positive('checkStep', 'stepDb', stepDb) - moved;
  const allowed = notNegative('checkStep', 'allowedDb', allowedDb);
  if (Math.abs(shortfallDb) <= allowed) return { shortfallDb, outcome: 'passed' };
  return { shortfallDb, outcome: shortfallDb > 0 ? 'moved-too-little' : 'moved-too-much' };
}
