import type { Interval, Judgement, Verdict } from '#compute';
import { coordinate, linearScale } from './linear-scale.ts';

/** Measures in units of the view box: at 320 pixels one unit is about one pixel. */
export const ZONES = {
  width: 300,
  height: 92,
  axis: [4, 296],
  labelY: 14,
  zoneY: 22,
  zoneHeight: 22,
  bandY: 54,
  bandHeight: 8,
  limitBottom: 68,
  numberY: 84,
} as const;

/** Room on both sides of everything that is drawn, as a share of its width. */
const MARGIN = 0.22;
/** A name is written into its zone only where the zone is this wide for each of its letters. */
const WIDTH_PER_LETTER = 7.5;

export interface ZonesProps {
  readonly estimate: number;
  readonly judgement: Judgement;
  /** Ends infinite where there is no limit. */
  readonly specification: Interval;
  /** Names of the zones. */
  readonly names: Readonly<Record<Verdict, string>>;
}

export interface Zone {
  readonly verdict: Verdict;
  readonly x: number;
  readonly width: number;
  /** Whether its name fits into it. */
  readonly named: boolean;
}

export interface ZonesDrawing {
  readonly zones: readonly Zone[];
  readonly limits: readonly { readonly x: number; readonly value: number }[];
  readonly band: { readonly x: number; readonly width: number };
  readonly estimateX: number;
}

/** What a value would be judged to be. */
export function verdictAt(
  level: number,
  { acceptance, rejection }: Pick<Judgement, 'acceptance' | 'rejection'>,
): Verdict {
  if (acceptance && level >= acceptance.lower && level <= acceptance.upper) return 'inside';
  return level < rejection.lower || level > rejection.upper ? 'outside' : 'cant-tell';
}

/** Coordinates of the zones, the limits, and the interval that decided. */
export function verdictZonesLayout({ estimate, judgement, specification, names }: ZonesProps): ZonesDrawing {
  const { acceptance, rejection, interval } = judgement;
  const limits = [specification.lower, specification.upper].filter(Number.isFinite);
  const edges = [acceptance?.lower, acceptance?.upper, rejection.lower, rejection.upper].filter(
    (edge): edge is number => edge !== undefined && Number.isFinite(edge),
  );
  const within = domainOf([
    estimate,
    ...limits,
    ...edges,
    ...[interval.lower, interval.upper].filter(Number.isFinite),
  ]);
  const scale = linearScale({ domain: [within.lower, within.upper], range: ZONES.axis });
  const ends = [within.lower, ...edges.toSorted((a, b) => a - b), within.upper];
  const zones = ends.slice(1).flatMap((upper, index): Zone[] => {
    const lower = ends[index] ?? within.lower;
    if (!(upper > lower)) return [];
    const verdict = verdictAt((lower + upper) / 2, judgement);
    const width = scale(upper) - scale(lower);
    const named = width >= names[verdict].length * WIDTH_PER_LETTER;
    return [{ verdict, x: coordinate(scale(lower)), width: coordinate(width), named }];
  });
  const clamp = (value: number): number => Math.min(within.upper, Math.max(within.lower, value));
  const left = scale(clamp(interval.lower));
  return {
    zones,
    limits: limits.map((value) => ({ x: coordinate(scale(value)), value })),
    band: { x: coordinate(left), width: coordinate(scale(clamp(interval.upper)) - left) },
    estimateX: coordinate(scale(estimate)),
  };
}

/** From the lowest to the highest value, with a margin. */
function domainOf(values: readonly number[]): Interval {
  const [lower, upper] = [Math.min(...values), Math.max(...values)];
  const margin = Math.max(MARGIN * (upper - lower), 0.1);
  return { lower: lower - margin, upper: upper + margin };
}
