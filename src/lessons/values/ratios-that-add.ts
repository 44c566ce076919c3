import {
  amplitudeRatioToDb,
  dbToAmplitudeRatio,
  dbToPercentOfPower,
  dbToPowerRatio,
  gainDb,
  levelDbm,
  levelToPower,
  levelToVolts,
  ohms,
  powerRatioToDb,
} from '#compute';
import { clubSheet } from '../../sheet/club.ts';
import { behindClubPad, clubPadHeat } from '../../sheet/club-pad.ts';
import { factorText } from '../../text/factor-text.ts';
import { powerText } from '../../text/power-text.ts';
import { changeText, dbText, percentText, quantityText } from '../../text/quantity-text.ts';
import { GAIN } from '../../widgets/ratio-ruler/spec.ts';
import { type Steps, stepsOf } from '../../widgets/ratio-ruler/steps.ts';
import { headText, stepsText } from '../../widgets/ratio-ruler/words.ts';

const NOMINAL_DBM = 27;
const LOAD_OHM = 50;
/** The loss that the lesson goes by: a pad of 20 dB and one of 6. */
const LOSS_DB = 26;
const PROBE = 10;

const power = (db: number, digits = 3): string =>
  factorText('shown', { ratio: dbToPowerRatio(gainDb(db)), digits });
const volts = (db: number, digits = 3): string =>
  factorText('shown', { ratio: dbToAmplitudeRatio(gainDb(db)), digits });
const db = (value: number, decimals: number): string => dbText('shown', { db: value, decimals });
const watts = (powerW: number): string => powerText('shown', { powerW, digits: 3 });
const percentOff = ({ headRatio, exactRatio }: Steps): number => 100 * (headRatio / exactRatio - 1);

/** What somebody reports of a power, and what it is; short, since it may not be broken into lines. */
const slipCost = ({ said, is }: { said: number; is: number }): string =>
  `${power(said, 2)} reported for ${power(is, 2)}`;

/** The whole numbers of decibels on the ruler for which tens and twos are farthest off, all of them as far. */
function worstSteps(): readonly { readonly gain: number; readonly steps: Steps }[] {
  const all = Array.from({ length: GAIN.max }, (_, index) => ({
    gain: index + 1,
    steps: stepsOf(gainDb(index + 1)),
  }));
  const most = Math.max(...all.map(({ steps }) => Math.abs(steps.offDb)));
  return all.filter(({ steps }) => Math.abs(steps.offDb) > most - 1e-9);
}

/** Numbers of the lesson on ratios. */
export function ratiosValues(): Readonly<Record<string, () => string>> {
  const nominal = levelToPower(levelDbm(NOMINAL_DBM));
  const steps = stepsOf(gainDb(-LOSS_DB));
  const [worst] = worstSteps();
  if (worst === undefined) throw new RangeError('ratiosValues: the ruler must have whole decibels, got none');
  return {
    left: () => watts(nominal * dbToPowerRatio(gainDb(-LOSS_DB))),
    loss: () => db(LOSS_DB, 0),
    lossFactor: () => power(-LOSS_DB),
    steps: () => stepsText('shown', steps),
    head: () => headText('shown', steps),
    headOff: () => percentText('shown', { percent: Math.abs(percentOff(steps)), decimals: 1 }),
    headOffDb: () => db(Math.abs(steps.offDb), 2),
    worstGain: () =>
      worstSteps()
        .map(({ gain }) => db(gain, 0))
        .join(' and '),
    worstOff: () => percentText('shown', { percent: Math.abs(percentOff(worst.steps)), decimals: 1 }),
    worstOffDb: () => db(Math.abs(worst.steps.offDb), 2),
    padOff: () => percentText('shown', { percent: dbToPercentOfPower(gainDb(0.5)), decimals: 0 }),
    three: () => factorText('shown', { ratio: dbToPowerRatio(gainDb(3)), digits: 4 }),
    two: () => db(powerRatioToDb(2), 2),
    ten: () => power(10, 2),
    twoVolts: () => db(amplitudeRatioToDb(2), 2),
    twentyVolts: () => volts(20, 2),
    lossVolts: () => volts(-LOSS_DB),
    probePower: () => factorText('shown', { ratio: PROBE ** 2, digits: 3 }),
    costTenLg: () => slipCost({ said: powerRatioToDb(2), is: amplitudeRatioToDb(2) }),
    costTwentyLg: () => slipCost({ said: -LOSS_DB, is: -LOSS_DB / 2 }),
    costProbe: () => `${power(-amplitudeRatioToDb(PROBE))} in power`,
    costTwice: () => slipCost({ said: powerRatioToDb(2 * 10), is: 20 }),
    twenty: () => power(20),
    tenth: () =>
      changeText('shown', { value: dbToPercentOfPower(gainDb(0.1)), decimals: 1, unit: 'percent' }),
    ...cautionValues(),
  };
}

/** What the pads and an input would get at the upper limit of the specification. */
function cautionValues(): Readonly<Record<string, () => string>> {
  const upperDbm = clubSheet().specification.upper ?? NOMINAL_DBM;
  return {
    padHeat: () => watts(clubPadHeat()),
    upperVolts: () =>
      quantityText('shown', {
        value: levelToVolts({ level: levelDbm(upperDbm), resistance: ohms(LOAD_OHM) }),
        decimals: 2,
        unit: 'Vrms',
      }),
    secondPadIn: () => watts(levelToPower(behindClubPad())),
  };
}
