import {
  gainDb,
  type LevelDbm,
  levelDbm,
  levelToPower,
  levelToVolts,
  mismatchLossDb,
  ohms,
  powerRatioToDb,
  reflectionOfReturnLoss,
  reflectionOfSwr,
  returnLossOfReflection,
} from '#compute';
import { SPECIFIED_UPPER_DBM } from '../../sheet/found.ts';
import {
  clubLine,
  highestVolts,
  type Line,
  linePowers,
  reachesDb,
  reflectionThere,
  returnLossThere,
  shownSwr,
  swrHere,
} from '../../sheet/what-comes-back.ts';
import { powerText } from '../../text/power-text.ts';
import {
  changeText,
  dbText,
  levelText,
  numberText,
  percentText,
  quantityText,
} from '../../text/quantity-text.ts';
import { rangeText, swrText } from '../../widgets/what-comes-back/words.ts';

/** A gentle mismatch, and a line that loses half of the power; invented. */
const GENTLE_SWR = 1.5;
const LOSSY_DB = 3;
const BEST_SWR = 1.1;

const LINE_OHM = ohms(50);
const db = (value: number): string => dbText('shown', { db: value, decimals: 1 });
const change = (value: number): string => changeText('shown', { value, decimals: 2, unit: 'dB' });
const percent = (share: number): string => percentText('shown', { percent: 100 * share, decimals: 1 });
const share = (value: number): string => numberText('shown', { value, decimals: 2 });
const watts = (powerW: number): string => powerText('shown', { powerW, digits: 3 });
const volts = (value: number): string => quantityText('shown', { value, decimals: 2, unit: 'Vrms' });
const swr = (value: number): string => numberText('shown', { value, decimals: 1 });

/** What matching at the antenna leaves: the loss of the line alone. */
const matchedDb = ({ lossDb }: Line): number => gainDb(0 - lossDb);
const differsDb = (line: Line): number => matchedDb(line) - reachesDb({ ...line, match: 'tuner' });

/** What socket, line and load have to stand, at the upper limit of the specification. */
function cautionValues(line: Line): Readonly<Record<string, () => string>> {
  const upper: LevelDbm = levelDbm(SPECIFIED_UPPER_DBM);
  const lossy = { ...line, lossDb: LOSSY_DB, match: 'tuner', levelDbm: upper } as const;
  return {
    upper: () => `${levelText('shown', { levelDbm: upper, decimals: 1 })} or ${watts(levelToPower(upper))}`,
    upperVolts: () => volts(highestVolts(line, upper)),
    tunedVolts: () => volts(highestVolts({ ...line, match: 'tuner' }, upper)),
    matchedVolts: () => volts(levelToVolts({ level: upper, resistance: LINE_OHM })),
    lineHeat: () => watts(linePowers(lossy).heat),
    heat: () => watts(levelToPower(upper)),
  };
}

/** A match so good that the coupler leaks more than comes back. */
function bestValues(best: Line): Readonly<Record<string, () => string>> {
  const { most } = shownSwr(best);
  if (most === undefined) throw new RangeError('bestValues: the meter must show a range, got no end');
  return {
    bestShown: () => `${swr(1)} to ${swrText('shown', most)}`,
    bestBack: () => percent(reflectionOfSwr(swrHere(best))),
    leak: () => percent(reflectionOfReturnLoss(best.directivityDb)),
  };
}

/** Numbers of the lesson on what comes back: the club's line, a gentle mismatch, and a lossy line. */
export function backValues(): Readonly<Record<string, () => string>> {
  const line = clubLine();
  const tuned = { ...line, match: 'tuner' } as const;
  const gentle = { ...line, antennaSwr: GENTLE_SWR, lossDb: 0 };
  const lossy = { ...line, lossDb: LOSSY_DB };
  const rho = reflectionOfSwr(GENTLE_SWR);
  const powers = linePowers(gentle);
  return {
    gentle: () => swr(GENTLE_SWR),
    gentleReflection: () => share(rho),
    gentleShare: () => percent(rho ** 2),
    gentleReturn: () => db(returnLossOfReflection(rho)),
    gentleBelow: () => dbText('shown', { db: mismatchLossDb(rho), decimals: 2 }),
    gentleShown: () => rangeText('shown', gentle),
    there: () => swr(line.antennaSwr),
    thereReflection: () => share(reflectionThere(line)),
    thereShare: () => percent(reflectionThere(line) ** 2),
    thereReturn: () => db(returnLossThere(line)),
    voltsCost: () => `${percent(rho)} for ${percent(rho ** 2)}`,
    forward: () => watts(powers.forward),
    reflected: () => watts(powers.back),
    net: () => watts(powers.into),
    tunedReaches: () => `${watts(linePowers(tuned).taken)} in the antenna`,
    tunedBack: () => watts(linePowers(tuned).back),
    lostCost: () =>
      `${change(powerRatioToDb(1 - reflectionThere(line) ** 2))} for ${change(reachesDb(tuned))}`,
    hidden: () => swrText('shown', swrHere(lossy)),
    hiddenTaken: () => `${watts(linePowers(lossy).taken)} of ${watts(linePowers(lossy).forward)}`,
    hiddenCost: () =>
      `an SWR of ${swrText('shown', swrHere(lossy))} shown, ${swr(line.antennaSwr)} there, and ${change(reachesDb(lossy))} of power in the antenna`,
    tunedLossy: () => change(reachesDb({ ...lossy, match: 'tuner' })),
    matchedLossy: () => change(matchedDb(lossy)),
    shortDiffers: () => dbText('shown', { db: differsDb(line), decimals: 2 }),
    lossyDiffers: () => dbText('shown', { db: differsDb(lossy), decimals: 2 }),
    directivity: () => dbText('shown', { db: line.directivityDb, decimals: 0 }),
    ...bestValues({ ...line, antennaSwr: BEST_SWR }),
    metersCost: () => `${rangeText('shown', gentle)} of one antenna of ${swr(GENTLE_SWR)}`,
    ...cautionValues(line),
  };
}
