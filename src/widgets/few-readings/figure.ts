import { normalDensity } from '#compute';
import type { DensityPoint, ShapeProps } from '../../figures/shape.layout.ts';
import type { FoundMean } from '../../sheet/evaluated-readings.ts';
import { lanesOf } from './words.ts';

/** How far a bell is drawn, in standard uncertainties, and in how many steps. */
const BELL_REACH = 3.2;
const STEPS = 96;
/** Room beyond what reaches farthest, and the least reach, in dB. */
const ROOM = 1.05;
const LEAST_DB = 0.3;

const bellCurve = (mean: number, u: number): readonly DensityPoint[] =>
  Array.from({ length: STEPS + 1 }, (_, step) => {
    const z = BELL_REACH * ((2 * step) / STEPS - 1);
    return { x: mean + z * u, density: normalDensity(z) / u };
  });

/** The figure's data of what is known of a mean. */
export function figureOf(found: FoundMean): Omit<ShapeProps, 'frame'> {
  const { use, meanDbm: mean, band } = found;
  const compared = band ? bellCurve(mean, band.standardUncertainty) : [];
  const curve = band?.whole.curve ?? [];
  const ends = [...compared, ...curve].map(({ x }) => Math.abs(x - mean));
  const reach = ROOM * Math.max(LEAST_DB, use.limitsDb, ...ends);
  return {
    domain: { lower: mean - reach, upper: mean + reach },
    curve,
    compared,
    lanes: lanesOf(found),
  };
}
