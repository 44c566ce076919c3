/** Where the figure stands: each place has measures of its own. */
export type LaidFrame = 'wide' | 'narrow' | 'stage' | 'card';

/** Measures in units of the figure's own view box. */
export interface LaidMeasures {
  readonly width: number;
  readonly height: number;
  /** Left and right end of the axis. */
  readonly across: readonly [number, number];
  /** Top and foot of the drawing above the bars. */
  readonly above: readonly [number, number];
  /** Middles of the two bars, half their thickness, and the axis. */
  readonly bars: readonly [number, number];
  readonly barHalf: number;
  readonly axis: number;
  /** From the middle of a bar up to the baseline of its words. */
  readonly rise: number;
  /** Half the thickness of the drawn result, and the side of a mark at a right angle. */
  readonly lineHalf: number;
  readonly corner: number;
  readonly ticks: number;
  readonly tickRoom: number;
  /** From the axis to the baselines of its numbers and of its words. */
  readonly tickDrop: number;
  readonly wordsDrop: number;
  readonly handleRadius: number;
}

const WIDE: LaidMeasures = {
  width: 880,
  height: 472,
  across: [20, 860],
  above: [12, 262],
  bars: [310, 366],
  barHalf: 9,
  axis: 396,
  rise: 19,
  lineHalf: 2.5,
  corner: 8,
  ticks: 9,
  tickRoom: 60,
  tickDrop: 36,
  wordsDrop: 64,
  handleRadius: 9,
};

const MEASURES: Readonly<Record<LaidFrame, LaidMeasures>> = {
  wide: WIDE,
  narrow: {
    width: 300,
    height: 342,
    across: [14, 286],
    above: [8, 150],
    bars: [192, 242],
    barHalf: 8,
    axis: 270,
    rise: 16,
    lineHalf: 2,
    corner: 6,
    ticks: 5,
    tickRoom: 44,
    tickDrop: 34,
    wordsDrop: 58,
    handleRadius: 8,
  },
  stage: {
    width: 1000,
    height: 496,
    across: [40, 960],
    above: [8, 192],
    bars: [262, 342],
    barHalf: 13,
    axis: 378,
    rise: 28,
    lineHalf: 4,
    corner: 12,
    ticks: 6,
    tickRoom: 120,
    tickDrop: 58,
    wordsDrop: 106,
    handleRadius: 12,
  },
  // cards are drawn by the build alone: no reader's script carries their measures
  card: import.meta.env.SSR
    ? {
        width: 1080,
        height: 284,
        across: [20, 1060],
        above: [2, 138],
        bars: [166, 208],
        barHalf: 13,
        axis: 232,
        rise: 22,
        lineHalf: 4,
        corner: 12,
        ticks: 6,
        tickRoom: 140,
        tickDrop: 44,
        wordsDrop: 44,
        handleRadius: 12,
      }
    : WIDE,
};

export const laidMeasures = (frame: LaidFrame): LaidMeasures => MEASURES[frame];

/** Whether a name is that of a frame. */
export const isLaidFrame = (name: string | undefined): name is LaidFrame =>
  name !== undefined && Object.hasOwn(MEASURES, name);
