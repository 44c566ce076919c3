/** Where the figure stands. Each frame has its own measures, so that text stays legible without a general scale factor. */
export type BandFrame = 'wide' | 'narrow' | 'stage';

/** Measures in units of the figure's own view box. */
export interface BandMeasures {
  readonly width: number;
  /** Ends of the common axis. */
  readonly axis: readonly [number, number];
  /** Space above the first row (axis of watts) and below the last (axis of levels). */
  readonly head: number;
  readonly foot: number;
  readonly rowPitch: number;
  /** From the top of a row: baselines of label and detail, middle of the strip. */
  readonly labelY: number;
  readonly detailY: number;
  readonly stripY: number;
  readonly stripHeight: number;
  readonly curveHeight: number;
  /** Left end of the row's words, and of the number (its right end where `numberAnchor` is `end`). */
  readonly labelX: number;
  readonly numberX: number;
  readonly numberAnchor: 'start' | 'end';
  readonly numberY: number;
  /** Least room between the text of two ticks, and about how many ticks. */
  readonly tickRoom: number;
  readonly tickCount: number;
  readonly showDetail: boolean;
  /** From the lower axis down to the baseline of its numbers. */
  readonly tickDrop: number;
  /** Whether there is room for a unit beyond the end of its axis. */
  readonly unitBeside: boolean;
  readonly handleRadius: number;
  /** Width of the line around a handle. */
  readonly handleEdge: number;
  /** From the baseline of a label up to its knot on the rail. */
  readonly knotRise: number;
}

const MEASURES: Readonly<Record<BandFrame, BandMeasures>> = {
  wide: {
    width: 880,
    axis: [290, 760],
    head: 46,
    foot: 36,
    rowPitch: 56,
    labelY: 24,
    detailY: 43,
    stripY: 29,
    stripHeight: 14,
    curveHeight: 19,
    labelX: 30,
    numberX: 880,
    numberAnchor: 'end',
    numberY: 34,
    tickRoom: 58,
    tickCount: 6,
    showDetail: true,
    tickDrop: 22,
    unitBeside: true,
    handleRadius: 9,
    handleEdge: 2,
    knotRise: 5,
  },
  narrow: {
    width: 300,
    axis: [16, 284],
    head: 48,
    foot: 48,
    rowPitch: 96,
    labelY: 18,
    detailY: 35,
    stripY: 64,
    stripHeight: 12,
    curveHeight: 17,
    labelX: 16,
    numberX: 300,
    numberAnchor: 'end',
    numberY: 18,
    tickRoom: 46,
    tickCount: 4,
    showDetail: true,
    tickDrop: 21,
    unitBeside: false,
    handleRadius: 8,
    handleEdge: 2,
    knotRise: 5,
  },
  stage: {
    width: 1000,
    axis: [408, 836],
    head: 62,
    foot: 52,
    rowPitch: 52,
    labelY: 37,
    detailY: 0,
    stripY: 27,
    stripHeight: 20,
    curveHeight: 14,
    labelX: 34,
    numberX: 1000,
    numberAnchor: 'end',
    numberY: 38,
    tickRoom: 84,
    tickCount: 4,
    showDetail: false,
    tickDrop: 38,
    unitBeside: true,
    handleRadius: 11,
    handleEdge: 3.25,
    knotRise: 11,
  },
};

export const measuresOf = (frame: BandFrame): BandMeasures => MEASURES[frame];

/** Whether a name is that of a frame. */
export const isBandFrame = (name: string | undefined): name is BandFrame =>
  name !== undefined && Object.hasOwn(MEASURES, name);
