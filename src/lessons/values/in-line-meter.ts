import {
  type BandResult,
  dbToPercentOfPower,
  gainDb,
  levelDbm,
  levelToPower,
  levelToVolts,
  mismatchLossDb,
  ohms,
  percentOfPowerToDb,
  powerToLevel,
  powerW,
  reflectionOfSwr,
} from '#compute';
import { clubSheet } from '../../sheet/club.ts';
import { clubInLine, type InLineUse, inLineFound, scaleErrorW, swrFound } from '../../sheet/in-line-meter.ts';
import { deviationsText, plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { powerIntervalText, powerText } from '../../text/power-text.ts';
import { dbText, levelText, numberText, percentText, quantityText } from '../../text/quantity-text.ts';

/** A meter with a scale of 20 W, good to 5 % of it, that shows 3 W. */
const lowOnTheScale = (): InLineUse => ({
  ...clubInLine(),
  forwardW: 3,
  reflectedW: 0,
  fullScaleW: 20,
  wanted: 'incident',
});

/** A portable whip at the end of the line: 5.0 W out, 0.2 W back, needles taken as exact. */
const whip = (): InLineUse => ({
  ...clubInLine(),
  forwardW: 5,
  reflectedW: 0.2,
  fullScaleW: 20,
  percentOfFullScale: 0,
});

/** Numbers of the lesson on the meter in the line. */
export const inLineValues = (): Readonly<Record<string, () => string>> => ({
  ...scaleValues(),
  ...netValues(),
  ...swrValues(),
  ...cautionValues(),
});

function scaleValues() {
  const low = lowOnTheScale();
  const error = scaleErrorW(low);
  const part = (sign: 1 | -1): number => (100 * sign * error) / low.forwardW;
  return {
    low: () => watts(low.forwardW, 1),
    lowError: () => `±${watts(error, 1)}`,
    lowRange: () =>
      powerIntervalText('shown', { lowerW: low.forwardW - error, upperW: low.forwardW + error }),
    lowDb: () => ends(percentOfPowerToDb(part(1)), percentOfPowerToDb(part(-1))),
    asReading: () =>
      ends(percentOfPowerToDb(low.percentOfFullScale), percentOfPowerToDb(-low.percentOfFullScale)),
    least: () => watts(3 * error, 1),
    leastClub: () => watts(3 * scaleErrorW(clubInLine()), 2),
    costsOfReading: () =>
      `${ends(percentOfPowerToDb(low.percentOfFullScale), percentOfPowerToDb(-low.percentOfFullScale))} claimed where the scale allows ${ends(percentOfPowerToDb(part(1)), percentOfPowerToDb(part(-1)))}`,
    costsLargeScale: () =>
      `±${watts(scaleErrorW({ ...clubInLine(), fullScaleW: 20 }), 1)} on ${watts(clubInLine().forwardW, 2)}: no number`,
  };
}

function netValues() {
  const club = clubInLine();
  return {
    forward: () => watts(club.forwardW, 2),
    back: () => watts(club.reflectedW, 2),
    net: () => watts(club.forwardW - club.reflectedW, 2),
    result: () => bandOf(club),
    middle: () => levelOf(resultOf(club)),
    plain: () =>
      levelText('shown', { levelDbm: powerToLevel(powerW(club.forwardW - club.reflectedW)), decimals: 2 }),
    clubError: () => `±${watts(scaleErrorW(club), 1)}`,
  };
}

function swrValues() {
  const use = whip();
  const found = swrOf(use);
  const better = swrOf({ ...use, directivityDb: 35 });
  const near = swrOf(nearlyMatched());
  const loss = mismatchLossDb(reflectionOfSwr(found.swr));
  const gone = percentText('shown', {
    percent: -dbToPercentOfPower(gainDb(-loss)),
    decimals: 0,
  });
  return {
    whipForward: () => watts(use.forwardW, 2),
    whipBack: () => watts(use.reflectedW, 2),
    whipNet: () => watts(use.forwardW - use.reflectedW, 2),
    swr: () => two(found.swr),
    swrRange: () => `${two(found.lower)} to ${two(found.upper)}`,
    swrBetter: () => `${two(better.lower)} to ${two(better.upper)}`,
    loss: () => dbText('shown', { db: loss, decimals: 2 }),
    leak: () => percentText('shown', { percent: 100 * 10 ** (-use.directivityDb / 20), decimals: 1 }),
    costsPerfect: () =>
      `SWR ${two(near.swr)} is read, and the load has anything from ${two(near.lower)} to ${two(near.upper)}`,
    costsHalf: () =>
      `${gone} of the power comes back, ${dbText('shown', { db: loss, decimals: 2 })}, and not half of it`,
  };
}

/** A load that reads SWR 1.22. */
const nearlyMatched = (): InLineUse => ({ ...whip(), reflectedW: 0.05 });

function cautionValues() {
  const upper = clubSheet().specification.upper ?? 0;
  const volts = levelToVolts({ level: levelDbm(upper), resistance: ohms(50) });
  return {
    loadHeat: () => watts(levelToPower(levelDbm(upper)), 3),
    volts: () => quantityText('shown', { value: volts, decimals: 2, unit: 'Vrms' }),
  };
}

const two = (value: number): string => numberText('shown', { value, decimals: 2 });
const watts = (powerW: number, digits: number): string =>
  powerText('shown', { powerW, digits: Math.max(2, digits) });
const ends = (upper: number, lower: number): string =>
  deviationsText('shown', { upper, lower, decimals: 2, unit: 'dB' });

function resultOf(use: InLineUse): BandResult {
  const outcome = inLineFound(use);
  if (!outcome.found) throw new RangeError('inLineValues: a result must be there, got none');
  return outcome.result;
}

const levelOf = ({ estimate, propagation }: BandResult): string =>
  levelText('shown', { levelDbm: estimate, decimals: decimalsFor(propagation.expanded) });

function bandOf(use: InLineUse): string {
  const result = resultOf(use);
  const halfWidth = result.propagation.expanded;
  return `${levelOf(result)} ${plusMinusText('shown', { halfWidth, decimals: decimalsFor(halfWidth), unit: 'dB' })}`;
}

function swrOf(use: InLineUse) {
  const outcome = swrFound(use);
  if (!outcome.found) throw new RangeError('inLineValues: an SWR must be there, got none');
  return outcome;
}
