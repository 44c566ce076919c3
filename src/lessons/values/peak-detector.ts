import {
  addGain,
  amplitudeRatioToDb,
  dbToPercentOfPower,
  gainDb,
  harmonicsLimitsDb,
  levelDbm,
  levelToPower,
  levelToVolts,
  ohms,
  peakDetector,
  peakOfPower,
  peakOfRms,
  percentLimitsToDb,
  powerW,
} from '#compute';
import {
  clubDetector,
  type DetectorUse,
  detectedLevel,
  detectorFound,
  detectorParts,
  forgottenDb,
  harmonicsDb,
  LEAST_W,
  leastVolts,
} from '../../sheet/detector.ts';
import { foundOf, upperPower } from '../../sheet/found.ts';
import { uShaped } from '../../sheet/link.ts';
import { deviationsText, plusMinusText } from '../../text/deviation-text.ts';
import { powerText } from '../../text/power-text.ts';
import { changeText, levelText, quantityText } from '../../text/quantity-text.ts';
import { bandText, methodLevel } from '../../widgets/parts/level-words.ts';

/** Two transmitters by the same detector, and one too weak for it; invented. */
const STRONG_V = 16.77;
const WEAK_V = 1.85;
const LOW_V = 0.6;
const TEXTBOOK_V = 0.7;
const CURVE = { dropV: 0.4, dropKnownV: 0.03, dropFrom: 'curve' } as const;
const DIRTY_DBC = -20;
const CLEAN_DBC = -40;
/** A meter of ten megohms, and the usual part before it, in megohms. */
const METER_MOHM = 10;
const SERIES_MOHM = 4.7;
const PAD_DB = 20;

function resultOf(use: DetectorUse) {
  const found = detectorFound(use);
  if (!found.inRange) throw new RangeError(`detectorValues: use must be in range, got ${found.reason.code}`);
  return found.result;
}

const band = (use: DetectorUse): string => bandText('shown', resultOf(use).propagation.expanded);
const change = (value: number): string => changeText('shown', { value, decimals: 2, unit: 'dB' });
const watts = (value: number): string => powerText('shown', { powerW: value, digits: 3 });
const volts = (value: number): string => quantityText('shown', { value, decimals: 2, unit: 'V' });
const wattsOf = (use: DetectorUse): string => watts(levelToPower(detectedLevel(use, true)));

/** What an unknown part of the drop does at a power, as decibels. */
function knownAt(use: DetectorUse, power: number): string {
  const peak = peakOfPower({ power: powerW(power), resistance: ohms(50) });
  const percent = (100 * use.dropKnownV) / peak;
  const limits = percentLimitsToDb({ percent, quantity: 'volts', of: 'reading' });
  return deviationsText('shown', { ...limits, decimals: 2, unit: 'dB' });
}

const harmonic = (responds: 'peak' | 'mean') => harmonicsLimitsDb({ harmonicsDbc: [DIRTY_DBC], responds });

/** The band at exactly this level of harmonics, where only their phase is not known: its limits are U-shaped. */
function exactlyAt(use: DetectorUse): string {
  const found = foundOf(
    peakDetector({
      detectedV: use.detectedV,
      diodeDropV: use.dropV,
      resistance: ohms(use.loadOhm),
      curveFromDc: false,
      influences: detectorParts(use).map((part) =>
        part.id === 'harmonics' ? { ...part, statement: uShaped(harmonicsDb(use)) } : part,
      ),
    }),
  );
  if (!found.inRange) throw new RangeError(`exactlyAt: use must be in range, got ${found.reason.code}`);
  return bandText('shown', found.result.propagation.expanded);
}

/** What harmonics do. */
function harmonicValues(use: DetectorUse): Readonly<Record<string, () => string>> {
  const at = (harmonicsDbc: number): string => band({ ...use, harmonicsDbc });
  return {
    dirtyPeak: () => deviationsText('shown', { ...harmonic('peak'), decimals: 2, unit: 'dB' }),
    dirtyPower: () => change(harmonic('mean').upper),
    dirtyBand: () => at(DIRTY_DBC),
    cleanerBand: () => band(use),
    cleanBand: () => at(CLEAN_DBC),
    cleanerExactly: () => exactlyAt(use),
    dirtyExactly: () => exactlyAt({ ...use, harmonicsDbc: DIRTY_DBC }),
    dirtyCost: () => `${at(CLEAN_DBC)} claimed where ${at(DIRTY_DBC)} is due`,
  };
}

/** A resistor before the meter, so that it shows the peak over the root of two. */
function resistorValues(): Readonly<Record<string, () => string>> {
  const shown = METER_MOHM / (METER_MOHM + SERIES_MOHM);
  const error = amplitudeRatioToDb(shown * Math.SQRT2);
  const percent = (value: number): string => changeText('shown', { value, decimals: 1, unit: 'percent' });
  return {
    resistor: () => change(error),
    exactResistor: () =>
      quantityText('shown', { value: 1000 * METER_MOHM * (Math.SQRT2 - 1), decimals: 0, unit: 'kohm' }),
    resistorVolts: () => percent(100 * (shown * Math.SQRT2 - 1)),
    resistorPower: () => percent(dbToPercentOfPower(error)),
  };
}

/** What the load and the diode have to stand. */
function cautionValues(use: DetectorUse): Readonly<Record<string, () => string>> {
  const power = upperPower({ inRange: false, reason: undefined });
  const upper = levelDbm(28.5);
  const rms = levelToVolts({ level: upper, resistance: ohms(use.loadOhm) });
  return {
    upper: () => `${levelText('shown', { levelDbm: upper, decimals: 1 })} or ${watts(power)}`,
    heat: () => watts(power),
    upperVolts: () => quantityText('shown', { value: rms, decimals: 2, unit: 'Vrms' }),
    reverse: () => quantityText('shown', { value: 2 * peakOfRms(rms), decimals: 1, unit: 'V' }),
    behindPad: () => watts(levelToPower(addGain({ level: detectedLevel(use, true), gain: gainDb(-PAD_DB) }))),
  };
}

/** Numbers of the lesson on the peak detector, all from the club's own. */
export function detectorValues(): Readonly<Record<string, () => string>> {
  const use = clubDetector();
  const strong = { ...use, detectedV: STRONG_V };
  const weak = { ...use, detectedV: WEAK_V };
  const low = { ...use, detectedV: LOW_V };
  const textbook = { ...weak, dropV: TEXTBOOK_V };
  return {
    load: () => quantityText('shown', { value: use.loadOhm, decimals: 1, unit: 'ohm' }),
    read: () => volts(use.detectedV),
    drop: () => volts(use.dropV),
    peak: () => volts(use.detectedV + use.dropV),
    watts: () => wattsOf(use),
    level: () => methodLevel('shown', resultOf(use)).figure,
    strongWatts: () => wattsOf(strong),
    strongError: () => change(forgottenDb(strong)),
    weakWatts: () => wattsOf(weak),
    weakError: () => change(forgottenDb(weak)),
    known: () => plusMinusText('shown', { halfWidth: use.dropKnownV, decimals: 1, unit: 'V' }),
    knownAtWatt: () => knownAt(use, 1),
    knownAtTenth: () => knownAt(use, 0.1),
    knownAtHundredth: () => knownAt(use, 0.01),
    forgottenCost: () =>
      `${change(forgottenDb(weak))} at ${wattsOf(weak)}, ${change(forgottenDb(use))} at ${wattsOf(use)}`,
    textbookCost: () =>
      `${change(detectedLevel(textbook, true) - detectedLevel(weak, true))} at ${wattsOf(weak)}`,
    least: () => powerText('shown', { powerW: LEAST_W, digits: 2 }),
    leastVolts: () => volts(leastVolts(use)),
    lowCost: () => `no number: ${volts(LOW_V)} are less than ${volts(leastVolts(use))}`,
    curveLevel: () => methodLevel('shown', resultOf({ ...low, ...CURVE })).figure,
    ...harmonicValues(use),
    ...resistorValues(),
    ...cautionValues(use),
  };
}
