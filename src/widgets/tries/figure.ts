import { type Interval, normalDensity } from '#compute';
import type { DensityPoint, ShapeProps } from '../../figures/shape.layout.ts';
import type { Tried } from '../../sheet/tried.ts';
import type { Propagated, TryOrder } from '../../sheet/tries.ts';
import type { IntervalKind } from './spec.ts';
import { strings } from './strings.ts';
import { lanesOf } from './words.ts';

/** Steps in which a bell is drawn, and how far, in standard uncertainties. */
const STEPS = 120;
const BELL_REACH = 3.2;
/** Room on both sides, as a share of the width. */
const ROOM = 0.04;

/** The bell of propagation; nothing where it says that nothing varies. */
function bellCurve({ estimate, standardUncertainty: u }: Propagated): readonly DensityPoint[] {
  if (!(u > 0)) return [];
  return Array.from({ length: STEPS + 1 }, (_, step) => {
    const z = BELL_REACH * ((2 * step) / STEPS - 1);
    return { x: estimate + z * u, density: normalDensity(z) / u };
  });
}

/** From end to end of all that is shown, with room. */
function domainOf(places: readonly number[]): Interval {
  const [lower, upper] = [Math.min(...places), Math.max(...places)];
  const room = ROOM * (upper - lower) || 1;
  return { lower: lower - room, upper: upper + room };
}

/** The figure's data of what was tried. */
export function figureOf(tried: Tried, kind: IntervalKind): Omit<ShapeProps, 'frame'> {
  const { curve, propagated } = tried;
  const compared = bellCurve(propagated);
  const ends = [tried[kind], propagated.interval].flatMap(({ lower, upper }) => [lower, upper]);
  const places = [...curve, ...compared].map(({ x }) => x);
  return {
    domain: domainOf([...ends, ...places]),
    curve,
    compared,
    lanes: lanesOf(tried, kind),
  };
}

/** What the two axes give. */
export const axesOf = ({ model }: TryOrder): { readonly up: string; readonly along: string } => ({
  up: strings.up,
  along: strings.along[model],
});
