import type { Interval } from '#compute';
import { levelTicks, spaced, tickDecimals } from './axis-ticks.ts';
import { type LineBandFrame, type LineBandMeasures, lineBandMeasures } from './line-band.frame.ts';
import { coordinate, type LinearScale, linearScale } from './linear-scale.ts';

/** A place on the line. */
export interface LinePoint {
  readonly x: number;
  readonly y: number;
}

/** The band at one place. */
export interface BandPoint extends Interval {
  readonly x: number;
}

/** A point with the length of its bar to either side. */
export interface BarPoint extends LinePoint {
  readonly half: number;
}

/** What is drawn, in the units of the two axes. */
export interface LineBandProps {
  readonly frame: LineBandFrame;
  readonly domain: Interval;
  /** The upright axis reaches this far to both sides of nothing, or from nothing up. */
  readonly span: number;
  readonly upward?: boolean;
  readonly line: readonly LinePoint[];
  /** Empty where no band can be given. */
  readonly band: readonly BandPoint[];
  /** The band that is compared with, drawn as an outline. */
  readonly ghost?: readonly BandPoint[] | undefined;
  readonly points?: readonly BarPoint[];
  /** Lines at this distance above and below nothing, with barbs to the side that is allowed; none where none applies. */
  readonly limit?: number | undefined;
  /** At which end of the lower limit line its name stands: where the band leaves room. */
  readonly limitNamed?: 'start' | 'end';
  /** The place that is looked at; without a height where nothing can be said there. */
  readonly at: { readonly x: number; readonly y?: number | undefined };
  /** Where on the axis along a method ends: beyond it there is no line and no band. */
  readonly edge?: number | undefined;
}

/** A tick of either axis. */
export interface PlotTick {
  readonly place: number;
  readonly value: number;
}

/** Coordinates of everything. */
export interface LineBandDrawing {
  readonly measures: LineBandMeasures;
  readonly scaleX: LinearScale;
  readonly zeroY: number;
  readonly along: readonly (PlotTick & { readonly named: boolean })[];
  readonly up: readonly PlotTick[];
  readonly decimals: { readonly along: number; readonly up: number };
  readonly line: string;
  readonly band: string;
  readonly ghost: string;
  readonly bars: readonly { readonly x: number; readonly y: number; readonly path: string }[];
  readonly limits: { readonly upper: number; readonly lower: number } | undefined;
  /** `y` is the top of the plot where nothing can be said. */
  readonly at: LinePoint & { readonly known: boolean };
  /** The edge of the method, with the place of its words and whether they end there. */
  readonly edge: { readonly x: number; readonly wordsX: number; readonly ends: boolean } | undefined;
}

/** Round spans of the upright axis, so that small changes do not rescale the figure. */
const SPANS = [0.1, 0.2, 0.3, 0.5, 0.75, 1, 1.5, 2, 3, 4, 5, 6, 8, 10, 15, 20] as const;

/** Room beyond what is drawn, for the name of the limit lines. */
const ROOM = 1.25;

/** The smallest round span that holds everything up to `reach`, with a little room. */
export const spanFor = (reach: number): number =>
  SPANS.find((span) => span >= ROOM * reach) ?? Math.ceil((ROOM * reach) / 10) * 10;

const pathOf = (places: readonly (readonly [number, number])[]): string =>
  places.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${coordinate(x)} ${coordinate(y)}`).join('');

/** @throws RangeError if the domain or the span has no width. */
export function lineBandLayout(props: LineBandProps): LineBandDrawing {
  const measures = lineBandMeasures(props.frame);
  const [top, bottom] = measures.down;
  const scaleX = linearScale({ domain: [props.domain.lower, props.domain.upper], range: measures.across });
  const scaleY = linearScale({ domain: [props.upward ? 0 : -props.span, props.span], range: [bottom, top] });
  const outline = (band: readonly BandPoint[]): string => {
    if (band.length === 0) return '';
    const upper = band.map(({ x, upper: y }) => [scaleX(x), scaleY(y)] as const);
    const lower = band.map(({ x, lower: y }) => [scaleX(x), scaleY(y)] as const).toReversed();
    return `${pathOf([...upper, ...lower])}Z`;
  };
  return {
    measures,
    scaleX,
    zeroY: coordinate(scaleY(0)),
    ...axesOf(props, measures, { scaleX, scaleY }),
    line: pathOf(props.line.map(({ x, y }) => [scaleX(x), scaleY(y)])),
    band: outline(props.band),
    ghost: outline(props.ghost ?? []),
    bars: (props.points ?? []).map(({ x, y, half }) => ({
      x: coordinate(scaleX(x)),
      y: coordinate(scaleY(y)),
      path: barOf({ x: scaleX(x), top: scaleY(y + half), bottom: scaleY(y - half) }, measures.dotRadius),
    })),
    limits:
      props.limit === undefined
        ? undefined
        : { upper: coordinate(scaleY(props.limit)), lower: coordinate(scaleY(-props.limit)) },
    at: {
      x: coordinate(scaleX(props.at.x)),
      y: coordinate(props.at.y === undefined ? top : scaleY(props.at.y)),
      known: props.at.y !== undefined,
    },
    edge: props.edge === undefined ? undefined : edgeOf(scaleX(props.edge), measures),
  };
}

/** From the edge of a method to its words. */
const EDGE_GAP = 6;

/** The words stand where there is more room for them. */
function edgeOf(x: number, { across: [left, right] }: LineBandMeasures) {
  const ends = x > (left + right) / 2;
  return { x: coordinate(x), wordsX: coordinate(ends ? x - EDGE_GAP : x + EDGE_GAP), ends };
}

function axesOf(
  { domain, span, upward }: LineBandProps,
  { ticks, tickRoom }: LineBandMeasures,
  { scaleX, scaleY }: { readonly scaleX: LinearScale; readonly scaleY: LinearScale },
) {
  const along = levelTicks({ ...domain, count: ticks[0] });
  const up = levelTicks({ lower: upward ? 0 : -span, upper: span, count: ticks[1] });
  return {
    along: spaced(
      along.map((value) => ({ x: coordinate(scaleX(value)), value })),
      tickRoom,
    ).map(({ x, value, named }) => ({ place: x, value, named })),
    up: up.map((value) => ({ place: coordinate(scaleY(value)), value })),
    decimals: { along: Math.min(tickDecimals(along), 1), up: tickDecimals(up) },
  };
}

/** An upright bar with feet at both ends. */
function barOf({ x, top, bottom }: { x: number; top: number; bottom: number }, foot: number): string {
  const [left, right] = [coordinate(x - foot), coordinate(x + foot)];
  const [high, low] = [coordinate(top), coordinate(bottom)];
  return `M${left} ${high}H${right}M${coordinate(x)} ${high}V${low}M${left} ${low}H${right}`;
}
