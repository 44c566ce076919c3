import { clubPadHeat } from '../../sheet/club-pad.ts';
import {
  clubSpending,
  enoughFactor,
  expandedWith,
  HOURS,
  neededExpanded,
  readingsWorth,
  SPECIFICATION,
  type Spendable,
  type Spending,
  shareOf,
  spentOn,
} from '../../sheet/spend.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { powerText } from '../../text/power-text.ts';
import { levelText, numberText, percentText } from '../../text/quantity-text.ts';
import { enoughText } from '../../widgets/spend/words.ts';

/** Numbers of the lesson on what to improve, all from one evening of the club. */
export function spendValues(): Readonly<Record<string, () => string>> {
  const club = clubSpending();
  const once = { ...club, count: 1 };
  return {
    level: () => levelText('shown', { levelDbm: club.levelDbm, decimals: 2 }),
    limit: () => levelText('shown', { levelDbm: SPECIFICATION.upper, decimals: 1 }),
    band: () => band(uOf(club)),
    needed: () => band(neededExpanded(club)),
    padShare: () => share(club, 'pad'),
    coaxShare: () => share(club, 'coax'),
    padPerfect: () => band(expandedWith(club, 'pad', 0)),
    padHalved: () => band(expandedWith(club, 'pad', 0.5)),
    meterPerfect: () => band(expandedWith(club, 'meter', 0)),
    coaxPerfect: () => band(expandedWith(club, 'coax', 0)),
    padEnough: () => enoughText('shown', club, 'pad').replace(/^at /, ''),
    padMeasured: () => band(uOf({ ...club, pad: 0.1 })),
    afterPad: () => next({ ...club, pad: 0.1 }),
    oneReading: () => band(uOf(once)),
    thirtyReadings: () => band(uOf({ ...club, count: 30 })),
    endlessReadings: () => band(expandedWith(club, 'readings', 0)),
    worth: () => numberText('shown', { value: readingsWorth(club), decimals: 0 }),
    worthAfter: () => numberText('shown', { value: readingsWorth({ ...club, pad: 0.1 }), decimals: 0 }),
    padHours: () => numberText('shown', { value: HOURS.pad, decimals: 0 }),
    meterHours: () => numberText('shown', { value: HOURS.meter, decimals: 0 }),
    closer: () => levelText('shown', { levelDbm: 28.3, decimals: 2 }),
    closerNeeded: () => band(neededExpanded({ ...club, levelDbm: 28.3 })),
    dividedAll: () =>
      `${band(uOf(once) / Math.sqrt(30))} claimed after thirty readings, where ${band(uOf({ ...club, count: 30 }))} is due`,
    meterFirst: () =>
      `${band(uOf(club))} becomes ${band(expandedWith(club, 'meter', 0))}, with a meter that no laboratory has: still no verdict`,
    coaxFirst: () => `${band(uOf(club))} becomes ${band(expandedWith(club, 'coax', 0))}`,
    padHeat: () => powerText('shown', { powerW: clubPadHeat(), digits: 3 }),
    padMissing: () => levelText('shown', { levelDbm: SPECIFICATION.upper, decimals: 1 }),
  };
}

const band = (halfWidth: number): string => plusMinusText('shown', { halfWidth, decimals: 2, unit: 'dB' });
const uOf = (of: Spending): number => spentOn(of).expanded;
const share = (of: Spending, link: Spendable): string =>
  percentText('shown', { percent: 100 * shareOf(of, link), decimals: 0 });

/** Which link decides next, with its share. */
function next(of: Spending): string {
  const factor = enoughFactor(of, 'meter');
  if (factor !== 1) throw new RangeError(`spendValues: a verdict must be there, got ${factor}`);
  return share(of, 'meter');
}
