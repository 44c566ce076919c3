import {
  type Caution,
  type CautionLink,
  cautionsOf,
  componentOf,
  gainDb,
  levelDbm,
  levelToPower,
  ohms,
  type Result,
  upperLevel,
} from '#compute';
import { COVERAGE_FACTOR } from '../sheet/chain.ts';
import type { Link, Sheet } from '../sheet/sheet.ts';

/** Pads, cables and power meters of this trade. */
const SYSTEM_OHMS = 50;
/** A part that takes this much away protects what stands behind it: what happens without it is told. */
const PROTECTING_DB = 3;

/** Level that the cautions reckon with: what the specification allows at most, or the measured level at its upper end. */
export const upperLevelOf = ({
  specification,
  result,
}: {
  specification: Sheet['specification'];
  result: Result;
}) =>
  upperLevel({
    ...(specification.upper !== undefined && { specification: levelDbm(specification.upper) }),
    measured: { estimate: levelDbm(result.estimate), expanded: gainDb(result.propagation.expanded) },
  });

/** Heat in each pad and levels at the meter's input, with the whole chain and without any one pad, as codes with numbers. */
export function sheetCautions(sheet: Sheet, result: Result): readonly Caution[] {
  const power = levelToPower(upperLevelOf({ specification: sheet.specification, result }));
  const { damageLevelDbm } = sheet;
  return cautionsOf({
    upper: { mean: power, peakEnvelope: power },
    links: sheet.links.filter(isPart).toReversed().map(cautionLink),
    instrument: {
      resistance: ohms(SYSTEM_OHMS),
      ...(damageLevelDbm !== undefined && { damageLevel: damageLevelDbm }),
    },
  });
}

/** Whether power goes through it: a comparison or a mismatch changes what is known, not what flows. */
const isPart = ({ lossDb }: Link): boolean => lossDb !== 0;

function cautionLink(link: Link): CautionLink {
  const { lossDb, id, ratedPowerW } = link;
  const { down, up } = spreadOf(link);
  return {
    id,
    highestGain: gainDb(-(lossDb - down)),
    lowestGain: gainDb(-(lossDb + up)),
    removable: lossDb >= PROTECTING_DB,
    ...(ratedPowerW !== undefined && { rating: { power: ratedPowerW, of: 'input' as const } }),
  };
}

/** How far the true loss may lie below and above the stated one, in dB: its limits, or U where it has none. */
function spreadOf({ id, statement, unit, percentOf }: Link): { down: number; up: number } {
  const { distribution, standardUncertainty } = componentOf({ id, statement, unit, percentOf });
  const { lower, upper } = distribution.limits;
  if (Number.isFinite(lower) && Number.isFinite(upper))
    return { down: Math.max(0, -lower), up: Math.max(0, upper) };
  const expanded = COVERAGE_FACTOR * (standardUncertainty ?? distribution.standardDeviation ?? 0);
  return { down: expanded, up: expanded };
}
