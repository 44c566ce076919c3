import { type Interval, type Judgement, normalDensity, type Verdict } from '#compute';
import { levelTicks, spaced, tickDecimals } from './axis-ticks.ts';
import { coordinate, type LinearScale, linearScale } from './linear-scale.ts';
import {
  type VerdictBandFrame,
  type VerdictBandMeasures,
  verdictBandMeasures,
} from './verdict-band.frame.ts';
import { verdictAt } from './verdict-zones.layout.ts';

/** What is drawn, in the unit of the axis. */
export interface VerdictBandProps {
  readonly frame: VerdictBandFrame;
  /** The ends of the axis; what lies beyond is cut off. */
  readonly domain: Interval;
  readonly estimate: number;
  readonly standardUncertainty: number;
  /** Half of the strip. */
  readonly expanded: number;
  /** The strip before the last change, as an outline. */
  readonly ghost?: Interval | undefined;
  /** Ends infinite where there is no limit. */
  readonly specification: Interval;
  readonly judgement: Pick<Judgement, 'acceptance' | 'rejection'>;
  readonly names: Readonly<Record<Verdict, string>>;
}

/** A zone of the lane. */
export interface VerdictZone {
  readonly verdict: Verdict;
  readonly x: number;
  readonly width: number;
  /** Whether its name fits into it. */
  readonly named: boolean;
}

interface Stretch {
  readonly x: number;
  readonly width: number;
}

/** Coordinates of everything. */
export interface VerdictBandDrawing {
  readonly measures: VerdictBandMeasures;
  readonly scale: LinearScale;
  readonly zones: readonly VerdictZone[];
  /** Limits with the side that is allowed: 1 to the right, -1 to the left. */
  readonly limits: readonly { readonly x: number; readonly value: number; readonly allowed: 1 | -1 }[];
  readonly line: string;
  readonly areas: readonly { readonly inside: boolean; readonly path: string }[];
  readonly strip: Stretch;
  readonly ghost: Stretch | undefined;
  readonly estimateX: number;
  readonly ticks: readonly { readonly x: number; readonly value: number; readonly named: boolean }[];
  readonly decimals: number;
}

/** Points of the bell, and how many standard uncertainties it is drawn to. */
const POINTS = 97;
const REACH = 4;

/** @throws RangeError if the domain has no width. */
export function verdictBandLayout(props: VerdictBandProps): VerdictBandDrawing {
  const { domain, estimate, expanded, specification } = props;
  const measures = verdictBandMeasures(props.frame);
  const scale = linearScale({ domain: [domain.lower, domain.upper], range: measures.across });
  const within = (value: number): number => Math.min(domain.upper, Math.max(domain.lower, value));
  const stretch = ({ lower, upper }: Interval): Stretch => {
    const x = scale(within(lower));
    return { x: coordinate(x), width: coordinate(scale(within(upper)) - x) };
  };
  const values = levelTicks({ ...domain, count: measures.tickCount });
  return {
    measures,
    scale,
    zones: zonesOf(props, measures, scale),
    limits: [specification.lower, specification.upper]
      .filter((value) => value > domain.lower && value < domain.upper)
      .map((value) => ({
        x: coordinate(scale(value)),
        value,
        allowed: value === specification.lower ? 1 : -1,
      })),
    ...bellOf(props, measures, scale),
    strip: stretch({ lower: estimate - expanded, upper: estimate + expanded }),
    ghost: props.ghost && stretch(props.ghost),
    estimateX: coordinate(scale(within(estimate))),
    ticks: spaced(
      values.map((value) => ({ x: coordinate(scale(value)), value })),
      measures.tickRoom,
    ),
    decimals: tickDecimals(values),
  };
}

/** The lane of verdicts: what any reading on the axis would be called. */
function zonesOf(
  { domain, judgement, names }: VerdictBandProps,
  { letterWidth }: VerdictBandMeasures,
  scale: LinearScale,
): VerdictZone[] {
  const { acceptance, rejection } = judgement;
  const edges = [acceptance?.lower, acceptance?.upper, rejection.lower, rejection.upper].filter(
    (edge): edge is number => edge !== undefined && edge > domain.lower && edge < domain.upper,
  );
  const ends = [domain.lower, ...edges.toSorted((a, b) => a - b), domain.upper];
  return ends.slice(1).flatMap((upper, index): VerdictZone[] => {
    const lower = ends[index] ?? domain.lower;
    if (!(upper > lower)) return [];
    const verdict = verdictAt((lower + upper) / 2, judgement);
    const [x, width] = [scale(lower), scale(upper) - scale(lower)];
    const named = width >= names[verdict].length * letterWidth;
    return [{ verdict, x: coordinate(x), width: coordinate(width), named }];
  });
}

/** The bell about the estimate, and the areas under it on either side of the limits. */
function bellOf(
  { domain, estimate, standardUncertainty: u, specification }: VerdictBandProps,
  { curve: [top, foot] }: VerdictBandMeasures,
  scale: LinearScale,
) {
  const place = (value: number): string => {
    const height = normalDensity((value - estimate) / u) / normalDensity(0);
    return `${coordinate(scale(value))} ${coordinate(foot - (foot - top) * height)}`;
  };
  const from = Math.max(domain.lower, estimate - REACH * u);
  const to = Math.min(domain.upper, estimate + REACH * u);
  const places = Array.from({ length: POINTS }, (_, index) => from + ((to - from) * index) / (POINTS - 1));
  const clamp = (value: number): number => Math.min(to, Math.max(from, value));
  const [low, high] = [clamp(specification.lower), clamp(specification.upper)];
  const pieces = [
    { lower: from, upper: low, inside: false },
    { lower: low, upper: high, inside: true },
    { lower: high, upper: to, inside: false },
  ];
  return {
    line: `M${places.map(place).join('L')}`,
    areas: pieces.flatMap(({ lower, upper, inside }) => {
      if (!(upper > lower)) return [];
      const inner = places.filter((value) => value > lower && value < upper);
      const path = `M${coordinate(scale(lower))} ${foot}L${[lower, ...inner, upper].map(place).join('L')}L${coordinate(scale(upper))} ${foot}Z`;
      return [{ inside, path }];
    }),
  };
}
