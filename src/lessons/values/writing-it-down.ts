import { levelDbm, levelToPower } from '#compute';
import { clubSheet } from '../../sheet/club.ts';
import { clubPadHeat } from '../../sheet/club-pad.ts';
import { type BudgetUse, clubUse, printedGauge, written } from '../../sheet/stated-budget.ts';
import { plusMinusText } from '../../text/deviation-text.ts';
import { decimalsFor } from '../../text/place.ts';
import { powerIntervalText, powerText } from '../../text/power-text.ts';
import { probabilityText } from '../../text/probability-text.ts';
import { levelText, numberText, percentText, quantityText } from '../../text/quantity-text.ts';
import type { UnitName } from '../../text/units.ts';
import { freedomText, statedText } from '../../widgets/budget/words.ts';

/** Numbers of the lesson on writing a result down, from the club's budget and the end gauge of GUM H.1. */
export function writingValues(): Readonly<Record<string, () => string>> {
  const club = clubUse();
  const few: BudgetUse = { ...club, count: 2, scatterDb: 0.5 };
  const gauge = printedGauge();
  const exact: BudgetUse = { ...gauge, onTheWay: false };
  return {
    stated: () => stated(club),
    u: () => amount(club),
    padShare: () => shareOf(club, 'pad'),
    readingsShare: () => shareOf(few, 'readings'),
    freedom: () => freedom(club),
    fewFreedom: () => freedom(few),
    fewCovers: () => probabilityText('shown', written(few).coverageProbability),
    fewFactor: () => factor({ ...few, coverage: 'p95' }),
    fewStated: () => stated({ ...few, coverage: 'p95' }),
    watts: () => {
      const { estimate, expanded } = written(club);
      return powerIntervalText('shown', {
        lowerW: watts(estimate - expanded),
        upperW: watts(estimate + expanded),
      });
    },
    gaugeU: () => amount(gauge, 'nm'),
    gaugeFreedom: () => freedom(exact),
    gaugeCut: () => freedom(gauge),
    gaugeFactor: () => factor(gauge),
    gaugeStated: () => stated(gauge),
    gaugeExact: () => stated(exact),
    upper: () => powerText('shown', { powerW: upperW(), digits: 3 }),
    upperLevel: () => levelText('shown', { levelDbm: upperDbm(), decimals: 2 }),
    heat: () => powerText('shown', { powerW: clubPadHeat(), digits: 3 }),
    twoReadings: () => {
      const claimed = written(few);
      return `${band(claimed.expanded)} is claimed, which covers ${probabilityText('shown', claimed.coverageProbability)}; for 95\u00a0% it takes ${band(written({ ...few, coverage: 'p95' }).expanded)}`;
    },
    oneDigit: () => {
      const { expanded, stated: cut } = written({ ...few, coverage: 'p95', digits: 1 });
      return `${band(expanded)} was worked out, ${plusMinusText('shown', { halfWidth: cut.plus, decimals: 0, unit: 'dB' })} is written`;
    },
    halved: () => {
      const { expanded, standardUncertainty } = written({ ...club, coverage: 'p99' });
      return `u is taken to be ${size(expanded / 2)} where it is ${size(standardUncertainty)}`;
    },
  };
}

const size = (value: number, unit: UnitName = 'dB'): string =>
  quantityText('shown', { value, decimals: decimalsFor(value), unit });
const band = (halfWidth: number): string =>
  plusMinusText('shown', { halfWidth, decimals: decimalsFor(halfWidth), unit: 'dB' });
const stated = (use: BudgetUse): string => statedText('shown', use, written(use));
const amount = (use: BudgetUse, unit?: UnitName): string => size(written(use).standardUncertainty, unit);
const freedom = (use: BudgetUse): string => freedomText('shown', written(use).degreesOfFreedom);
const factor = (use: BudgetUse): string =>
  numberText('shown', { value: written(use).coverageFactor, decimals: 2 });
const watts = (dbm: number): number => levelToPower(levelDbm(dbm));

function shareOf(use: BudgetUse, id: string): string {
  const row = written(use).budget.find((one) => one.id === id);
  if (row === undefined) throw new RangeError(`shareOf: the budget must have the part, got ${id}`);
  return percentText('shown', { percent: 100 * row.share, decimals: 0 });
}

/** The upper limit of the specification: what a caution has to reckon with, as U is no limit. */
function upperDbm(): number {
  const { upper } = clubSheet().specification;
  if (upper === undefined)
    throw new RangeError('upperDbm: the specification must have an upper limit, got none');
  return upper;
}
const upperW = (): number => watts(upperDbm());
