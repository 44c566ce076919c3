import {
  levelDbm,
  levelToPower,
  levelToVolts,
  mismatchLimits,
  mismatchLossDb,
  ohms,
  reflectionOfSwr,
} from '#compute';
import { clubSheet } from '../../sheet/club.ts';
import { behindClubPad, clubPadHeat, clubUpperLevel } from '../../sheet/club-pad.ts';
import {
  clubPadsLine,
  EXTRA_ALLOWED_DB,
  EXTRA_DB,
  foundOf,
  magnitudesOf,
  matchOf,
  meterRange,
  type PadsLine,
  stepOf,
} from '../../sheet/pads-line.ts';
import { deviationsText, plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { powerText, powerWithEndsText } from '../../text/power-text.ts';
import { dbText, levelText, percentText, quantityText } from '../../text/quantity-text.ts';

/** A transmitter of SWR 2 on a meter of SWR 1.25, through 6 dB. */
const unmatchedLine = (): PadsLine => ({
  ...clubPadsLine(),
  readingDbm: 10,
  padDb: 6,
  sourceSwr: 2,
  meterSwr: 1.25,
});

/** The club's line when one more pad moves the reading by less than it should. */
const overloadedLine = (): PadsLine => ({ ...clubPadsLine(), movedDb: 9.1 });

/** The club's transmitter through 6 dB instead of 20 dB. */
const weakPadLine = (): PadsLine => ({ ...clubPadsLine(), padDb: 6, readingDbm: 21 });

/** Numbers of the lesson on pads into a meter, all from the club's line. */
export const padsValues = (): Readonly<Record<string, () => string>> => ({
  ...sumValues(),
  ...matchValues(),
  ...stepValues(),
  ...cautionValues(),
});

function sumValues() {
  const club = clubPadsLine();
  return {
    shown: () => level(club.readingDbm, 1),
    losses: () => dbText('shown', { db: estimateOf(club) - club.readingDbm, decimals: 1 }),
    result: () => `${level(estimateOf(club), 1)} ${bandOf(club)}`,
    band: () => bandOf(club),
    watts: () => {
      const { estimate, propagation } = resultOf(club);
      const { lower, upper } = propagation.interval;
      return powerWithEndsText('shown', {
        powerW: watts(estimate),
        lowerW: watts(lower),
        upperW: watts(upper),
      });
    },
    padShare: () => shareOf(club, 'pad'),
    coaxShare: () => shareOf(club, 'coax'),
    connectorsShare: () => shareOf(club, 'connectors'),
    padMeasured: () => bandOf({ ...club, padWithinDb: 0.1 }),
  };
}

function matchValues() {
  const club = clubPadsLine();
  const unmatched = unmatchedLine();
  const own = reflectionOfSwr(club.padSwr);
  return {
    clubMatch: () => limitsText(club),
    clubU: () => uText(club),
    clubBare: () => limitsText({ ...club, padDb: 0 }),
    clubBareU: () => uText({ ...club, padDb: 0 }),
    bare: () => limitsText({ ...unmatched, padDb: 0 }),
    bareU: () => uText({ ...unmatched, padDb: 0 }),
    perfect: () => deviations(mismatchLimits(magnitudesOf(unmatched, 'perfect'))),
    real: () => limitsText(unmatched),
    realU: () => uText(unmatched),
    manyDb: () => limitsText({ ...unmatched, padDb: 30 }),
    accepted: () => deviations(mismatchLimits({ source: own, load: reflectionOfSwr(club.meterSwr) })),
    acceptedLoss: () => dbText('shown', { db: mismatchLossDb(own), decimals: 2 }),
    costsMatch: () => `${limitsText(unmatched)} where it was ${limitsText({ ...unmatched, padDb: 0 })}`,
  };
}

function stepValues() {
  const line = overloadedLine();
  const tenths = (db: number): string => dbText('shown', { db, decimals: 1 });
  return {
    moved: () => tenths(line.movedDb),
    shortfall: () => tenths(stepOf(line).shortfallDb),
    due: () => dbText('shown', { db: EXTRA_DB, decimals: 0 }),
    allowed: () => plusMinusText('shown', { halfWidth: EXTRA_ALLOWED_DB, decimals: 1, unit: 'dB' }),
    costsOverload: () =>
      `the first reading is low by ${tenths(stepOf(line).shortfallDb)} or more, give or take what the further pad allows, and nothing on the display says so`,
    costsLess: () =>
      `${level(weakPadLine().readingDbm, 1)} on a meter that holds up to ${level(meterRange().largest, 1)}: no result`,
  };
}

const cautionValues = () => ({
  upperPower: () => powerText('shown', { powerW: watts(clubUpperLevel()), digits: 3 }),
  upperVolts: () => volts(clubUpperLevel()),
  padHeat: () => powerText('shown', { powerW: clubPadHeat(), digits: 3 }),
  atInput: () => level(behindClubPad(), 1),
  withoutPad: () => `${level(clubUpperLevel(), 1)}, ${volts(clubUpperLevel())}`,
  damage: () => level(clubSheet().damageLevelDbm ?? 0, 0),
});

const watts = (dbm: number): number => levelToPower(levelDbm(dbm));
const level = (dbm: number, decimals: number): string => levelText('shown', { levelDbm: dbm, decimals });
const deviations = ({ lower, upper }: { lower: number; upper: number }): string =>
  deviationsText('shown', { upper, lower, decimals: 2, unit: 'dB' });
const limitsText = (line: PadsLine): string => deviations(matchOf(line));
const uText = (line: PadsLine): string =>
  dbText('shown', { db: matchOf(line).standardUncertainty, decimals: 2 });
const volts = (dbm: number): string =>
  quantityText('shown', {
    value: levelToVolts({ level: levelDbm(dbm), resistance: ohms(50) }),
    decimals: 2,
    unit: 'Vrms',
  });

function resultOf(line: PadsLine) {
  const outcome = foundOf(line);
  if (!outcome.found) throw new RangeError('padsValues: a result must be there, got none');
  return outcome.result;
}

const estimateOf = (line: PadsLine): number => resultOf(line).estimate;

function bandOf(line: PadsLine): string {
  const { expanded } = resultOf(line).propagation;
  return plusMinusText('shown', { halfWidth: expanded, decimals: decimalsFor(expanded), unit: 'dB' });
}

function shareOf(line: PadsLine, id: string): string {
  const share = resultOf(line).propagation.budget.find((row) => row.id === id)?.share ?? 0;
  return percentText('shown', { percent: 100 * share, decimals: share < 0.1 ? 1 : 0 });
}
