import { levelTicks, spaced, tickDecimals } from './axis-ticks.ts';
import { type GyrationFrame, type GyrationMeasures, gyrationMeasures } from './gyration.frame.ts';
import { coordinate, type LinearScale, linearScale } from './linear-scale.ts';

export interface GyrationProps {
  readonly frame: GyrationFrame;
  /** The axis reaches this far to both sides of the middle. */
  readonly span: number;
  /** The number that is stated: where the knob is, and the end of the bar where it has ends. */
  readonly halfWidth: number;
  /** Whether the bar ends there. */
  readonly ended: boolean;
  /** Density per unit, finite or infinite. */
  readonly density: (x: number) => number;
  /** Where the lumps sit that are as hard to twirl, and how far the strip reaches. */
  readonly lump: number;
  readonly reach: number;
  /** Where somebody says that they sit, and how far the strip would reach; nothing if nobody says otherwise. */
  readonly said?: { readonly lump: number; readonly reach: number } | undefined;
}

/** A pair of places to both sides of the middle. */
export type Pair = readonly [number, number];

export interface GyrationDrawing {
  readonly measures: GyrationMeasures;
  readonly scale: LinearScale;
  readonly middle: number;
  readonly outline: string;
  /** Whether the outline runs out of the figure at the top. */
  readonly cut: boolean;
  readonly ends: Pair | undefined;
  readonly lumps: Pair;
  readonly strip: Pair;
  readonly saidLumps: Pair | undefined;
  readonly saidStrip: Pair | undefined;
  readonly handleX: number;
  readonly ticks: readonly { readonly x: number; readonly value: number; readonly named: boolean }[];
  readonly decimals: number;
}

/** The figure is as high as this density times the stated number; the flat bar has a half, and the peak of a triangle 1. */
const TOP = 1.1;
/** Pieces in which the outline is drawn. */
const PIECES = 160;

/** @throws RangeError unless span and halfWidth are > 0. */
export function gyrationLayout(props: GyrationProps): GyrationDrawing {
  const measures = gyrationMeasures(props.frame);
  const { span, halfWidth, ended, lump, reach, said } = props;
  if (!(span > 0 && halfWidth > 0))
    throw new RangeError(`gyrationLayout: span and halfWidth must be > 0, got ${span}, ${halfWidth}`);
  const scale = linearScale({ domain: [-span, span], range: measures.across });
  const pair = (value: number): Pair => [coordinate(scale(-value)), coordinate(scale(value))];
  const values = levelTicks({ lower: -span, upper: span, count: measures.ticks });
  const ticks = spaced(
    values.map((value) => ({ x: coordinate(scale(value)), value })),
    measures.tickRoom,
  );
  return {
    measures,
    scale,
    middle: coordinate(scale(0)),
    ...outlineOf(props, measures, scale),
    ends: ended ? pair(halfWidth) : undefined,
    lumps: pair(lump),
    strip: pair(Math.min(reach, span)),
    saidLumps: said && pair(said.lump),
    saidStrip: said && pair(Math.min(said.reach, span)),
    handleX: coordinate(scale(halfWidth)),
    ticks,
    decimals: tickDecimals(values),
  };
}

/** The bar's outline: as thick in each place as values there are likely, closed along the line that it stands on. */
function outlineOf(
  { halfWidth, ended, span, density }: GyrationProps,
  { bar: [top, foot] }: GyrationMeasures,
  scale: LinearScale,
): { readonly outline: string; readonly cut: boolean } {
  const reach = ended ? halfWidth : span;
  let cut = false;
  const points = Array.from({ length: PIECES + 1 }, (_, piece) => {
    const x = -reach + (2 * reach * piece) / PIECES;
    const height = density(Math.min(reach, Math.max(-reach, x))) * halfWidth;
    cut ||= height > TOP;
    return `L${coordinate(scale(x))} ${coordinate(foot - (Math.min(height, TOP) / TOP) * (foot - top))}`;
  });
  const [left, right] = [coordinate(scale(-reach)), coordinate(scale(reach))];
  return { outline: `M${left} ${foot}${points.join('')}L${right} ${foot}Z`, cut };
}
