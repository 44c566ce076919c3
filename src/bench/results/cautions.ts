import {
  type Caution,
  type CautionInstrument,
  type CautionLink,
  cautionsOf,
  componentOf,
  gainDb,
  levelDbm,
  levelToPower,
  meanOfPeakEnvelope,
  ohms,
  peakEnvelopeOfMean,
  powerW,
  type Result,
  type UpperPowers,
  upperLevel,
} from '#compute';
import { RELATIVE_UNITS } from '../../sheet/amount.ts';
import { COVERAGE_FACTOR } from '../../sheet/coverage.ts';
import { readingOf } from '../../sheet/scatter.ts';
import type { Link, Sheet } from '../../sheet/sheet.ts';

/** Pads, cables and power meters of this trade. */
const SYSTEM_OHMS = 50;
/** A part that takes this much away protects what stands behind it: what happens without it is told. */
const PROTECTING_DB = 3;

/**
 * Powers that the cautions reckon with: what the specification allows at most, or the measured level at its upper end, whichever
 * is more; as peak envelope and as mean, by the keying. Undefined where neither is known.
 */
export function upperPowersOf(
  { specification, measurand: { power, keying = 'keyDown' } }: Pick<Sheet, 'specification' | 'measurand'>,
  result: Pick<Result, 'estimate' | 'propagation'> | undefined,
): UpperPowers | undefined {
  if (specification.upper === undefined && result === undefined) return undefined;
  const level = upperLevel({
    ...(specification.upper !== undefined && { specification: levelDbm(specification.upper) }),
    ...(result && {
      measured: { estimate: levelDbm(result.estimate), expanded: gainDb(result.propagation.expanded) },
    }),
  });
  const top = levelToPower(level);
  if (keying === 'keyDown') return { mean: top, peakEnvelope: top };
  return power === 'mean'
    ? { mean: top, peakEnvelope: peakEnvelopeOfMean({ mean: top, envelope: keying }) }
    : { mean: meanOfPeakEnvelope({ peakEnvelope: top, envelope: keying }), peakEnvelope: top };
}

/** Heat in each part, then what arrives at the instrument with the whole chain and without any one pad, as codes with numbers. */
export const sheetCautions = (sheet: Sheet, upper: UpperPowers): readonly Caution[] =>
  cautionsOf({
    upper,
    links: sheet.links.filter(isPart).toReversed().map(cautionLink),
    instrument: instrumentOf(sheet),
  });

/** What stands behind the last link, by the method. */
function instrumentOf(sheet: Sheet): CautionInstrument {
  const { setup } = readingOf(sheet);
  const damage = sheet.damageLevelDbm !== undefined && { damageLevel: sheet.damageLevelDbm };
  switch (setup.method) {
    case 'padsIntoMeter':
    case 'inLine':
      return { resistance: ohms(SYSTEM_OHMS), ...damage };
    case 'dcSubstitution':
      return { resistance: setup.resistance, ...damage };
    case 'oscilloscope':
      return {
        resistance: setup.resistance,
        ...damage,
        ...(setup.largestPeak !== undefined && { largestPeak: setup.largestPeak }),
      };
    case 'peakDetector':
      return {
        resistance: setup.resistance,
        ...damage,
        detector: setup.largestReverse === undefined ? {} : { largestReverse: setup.largestReverse },
      };
  }
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
    ...(ratedPowerW !== undefined && { rating: { power: powerW(ratedPowerW), of: 'input' as const } }),
  };
}

/** How far the true loss may lie below and above the stated one, in dB: its limits, or U where it has none. */
function spreadOf({ id, statement, unit, percentOf, sensitivity }: Link): { down: number; up: number } {
  // other units are of the reading and leave the loss as it is
  const own = RELATIVE_UNITS.find((candidate) => candidate === unit);
  if (own === undefined) return { down: 0, up: 0 };
  const { distribution, standardUncertainty } = componentOf({ id, statement, unit: own, percentOf });
  const { lower, upper } = distribution.limits;
  if (Number.isFinite(lower) && Number.isFinite(upper)) {
    const [least, most] = sensitivity === -1 ? [-upper, -lower] : [lower, upper];
    return { down: Math.max(0, -least), up: Math.max(0, most) };
  }
  const expanded = COVERAGE_FACTOR * (standardUncertainty ?? distribution.standardDeviation ?? 0);
  return { down: expanded, up: expanded };
}
