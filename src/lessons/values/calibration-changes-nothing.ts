import { dbToPercentOfPower, gainDb } from '#compute';
import { clubMeter, correctionAt, errorDb, knownTo, type MeterUse, verified } from '../../sheet/own-meter.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { changeText, levelText, percentText, quantityText } from '../../text/quantity-text.ts';
import { verdictLabel } from '../../text/words.ts';

/** Numbers of the lesson on calibration, all from the club's own meter. */
export function meterValues(): Readonly<Record<string, () => string>> {
  const use = clubMeter();
  const low = { ...use, readingDbm: -20 };
  const high = { ...use, readingDbm: 10 };
  const corrected = use.readingDbm + correctionAt(use.readingDbm);
  return {
    shown: () => level(use.readingDbm, 1),
    correction: () => change(correctionAt(use.readingDbm)),
    error: () => change(errorDb(use)),
    errorPower: () =>
      percentText('shown', { percent: dbToPercentOfPower(gainDb(errorDb(use))), decimals: 1 }),
    corrected: () => `${level(corrected, decimalsFor(expandedOf(use)))} ${band(use)}`,
    bandNow: () => band(use),
    bandFresh: () => band({ ...use, months: 0 }),
    bandYear: () => band({ ...use, months: 12 }),
    bandThreeYears: () => band({ ...use, months: 36 }),
    errorHigh: () => change(errorDb(high)),
    adjustedHigh: () => change(errorDb({ ...high, treatment: 'adjusted' })),
    adjustedNow: () => change(errorDb({ ...use, treatment: 'adjusted' })),
    reach: () => `${size(Math.abs(errorDb(use)) + expandedOf(use))}`,
    verdictNow: () => verdictOf(use),
    verdictLater: () => verdictOf({ ...use, months: 24 }),
    drawer: () =>
      `${change(errorDb(low))}: ${percentText('shown', { percent: dbToPercentOfPower(gainDb(errorDb(low))), decimals: 1 })} of the power`,
    screw: () =>
      `${change(errorDb({ ...high, treatment: 'adjusted' }))} where it was ${change(errorDb(high))}, and no band to go with it`,
    calibratedOnly: () => {
      const permissibleDb = 0.2;
      const limit = plusMinusText('shown', { halfWidth: permissibleDb, decimals: 1, unit: 'dB' });
      return `${verdictOf({ ...low, permissibleDb })} a limit of ${limit}, with the certificate in hand`;
    },
  };
}

const level = (levelDbm: number, decimals: number): string => levelText('shown', { levelDbm, decimals });
const change = (value: number): string => changeText('shown', { value, decimals: 2, unit: 'dB' });
const size = (value: number): string => quantityText('shown', { value, decimals: 2, unit: 'dB' });

function expandedOf(use: MeterUse): number {
  const found = knownTo(use);
  if (found === undefined) throw new RangeError('meterValues: a band must be known, got none');
  return found.propagation.expanded;
}

function band(use: MeterUse): string {
  const halfWidth = expandedOf(use);
  return plusMinusText('shown', { halfWidth, decimals: decimalsFor(halfWidth), unit: 'dB' });
}

function verdictOf(use: MeterUse): string {
  const judged = verified(use);
  if (judged === undefined) throw new RangeError('meterValues: a verdict must be there, got none');
  return verdictLabel(judged.verdict).replace("'", '\u2019');
}
