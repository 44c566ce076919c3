import { type Interval, normalDensity } from '#compute';
import type { DensityPoint, ShapeProps } from '../../figures/shape.layout.ts';
import { roundAbove } from '../../figures/spread.ts';
import type { WholeSum } from '../../sheet/evaluated-link-sum.ts';
import {
  bellOf,
  type LinkSum,
  linkDistribution,
  type SizedLink,
  sizeOfStated,
} from '../../sheet/link-sum.ts';
import type { FieldsState } from '../parts/fields.ts';
import { firstStatedDb, type LinkSumFields, type LinkSumState, sumOf } from './spec.ts';
import { lanesOf } from './words.ts';

/** How far a bell is drawn, in standard uncertainties, and in how many steps. */
const BELL_REACH = 3.2;
const STEPS = 96;
/** Room beyond what reaches farthest. */
const ROOM = 1.04;

const along = ({ lower, upper }: Interval, density: (x: number) => number): readonly DensityPoint[] =>
  Array.from({ length: STEPS + 1 }, (_, step) => {
    const x = lower + ((upper - lower) * step) / STEPS;
    return { x, density: density(x) };
  });

/** The bell of a standard uncertainty. */
const bellCurve = (u: number): readonly DensityPoint[] =>
  along({ lower: -BELL_REACH * u, upper: BELL_REACH * u }, (x) => normalDensity(x / u) / u);

/** One link alone, with upright sides where its limits are. A U shape has no top at its limits: it is drawn up to just before them. */
function partCurve(link: SizedLink, sizes: LinkSum['sizes']): readonly DensityPoint[] {
  const { density, limits, standardDeviation = 0 } = linkDistribution(link, sizes);
  if (!Number.isFinite(limits.upper)) return bellCurve(standardDeviation);
  const inside = 1 - 1e-3;
  const drawn = along({ lower: limits.lower * inside, upper: limits.upper * inside }, density);
  const foot = (x: number): DensityPoint => ({ x, density: 0 });
  return [foot(limits.lower), ...drawn, foot(limits.upper)];
}

/** How far the axis of a state reaches to both sides, in dB. */
function reachOf(state: LinkSumState): number {
  const { worstCase, propagation } = bellOf(sumOf(state));
  const bell = BELL_REACH * propagation.standardUncertainty;
  const worst = worstCase.unlimited.length > 0 ? 0 : worstCase.interval.upper;
  return roundAbove(ROOM * Math.max(bell, worst));
}

/** The figure's data of a state, with the whole distribution where it is at hand; the axis stays while the knob is held. */
export function figureOf(
  { values, held }: FieldsState<LinkSumFields>,
  whole?: WholeSum,
): Omit<ShapeProps, 'frame'> {
  const sum = sumOf(values);
  const [first] = sum.links;
  const reach = reachOf(held ?? values);
  return {
    domain: { lower: -reach, upper: reach },
    curve: whole?.curve ?? [],
    compared: bellCurve(bellOf(sum).propagation.standardUncertainty),
    part: first && sum.links.length > 1 ? partCurve(first, sum.sizes) : [],
    lanes: lanesOf(values, whole),
    handle: firstStatedDb(values),
  };
}

/** The size of the first link whose knob is at this place. */
export const sizeFor = (state: LinkSumState, place: number): number =>
  sizeOfStated(Math.abs(place), { shape: state.firstShape, sizeDb: state.first }, state.sizes);
