import { ohms, powerW } from '#compute';
import type { CheckQuestion } from '../../src/bench/validity/check-reader.ts';
import { measurementOf } from '../../src/sheet/at-point.ts';
import { CHECK_KEYS, type CheckKey } from '../../src/sheet/check-keys.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import type { SheetEntries } from '../../src/sheet/entries.ts';
import type { MethodKind, MethodSetup } from '../../src/sheet/method.ts';

/** A set-up of every method, invented. */
export const SETUPS: Readonly<Record<MethodKind, MethodSetup>> = {
  padsIntoMeter: { method: 'padsIntoMeter', shows: 'mean' },
  oscilloscope: { method: 'oscilloscope', resistance: ohms(50), bandwidthsHz: [100e6], terminated: true },
  peakDetector: { method: 'peakDetector', resistance: ohms(50), diodeDropV: 0.25, curveFromDc: false },
  inLine: {
    method: 'inLine',
    shows: 'mean',
    forward: { fullScale: powerW(20), percentOfFullScale: 5 },
    reflected: { fullScale: powerW(2), percentOfFullScale: 5 },
  },
  dcSubstitution: { method: 'dcSubstitution', resistance: ohms(50) },
};

/** A main reading of about 500 mW by each method. */
const READINGS: Readonly<Record<MethodKind, number>> = {
  padsIntoMeter: 7,
  oscilloscope: 14.14,
  peakDetector: 6.8,
  inLine: 10,
  dcSubstitution: 14.2,
};

/** Texts of all checks, empty but for those given. */
export const checkTexts = (texts: Partial<Record<CheckKey, string>>): SheetEntries['checks'] => ({
  ...(Object.fromEntries(CHECK_KEYS.map((key) => [key, ''])) as Record<CheckKey, string>),
  ...texts,
});

/** What is asked of the checks of a method, with these texts and a standard uncertainty of 0.3 dB if not said. */
export function checkQuestion(
  method: MethodKind,
  texts: Partial<Record<CheckKey, string>>,
  uncertaintyDb: number | undefined = 0.3,
): CheckQuestion {
  const club = measurementOf(clubSheet());
  const columns = { readings: [READINGS[method]], reflected: [0], riseDc: [14], volts: [10], amperes: [0.2] };
  const points = club.points.map((point) => ({ ...point, columns }));
  return {
    checks: checkTexts(texts),
    measurement: { ...club, setup: SETUPS[method], points },
    uncertaintyDb,
  };
}
