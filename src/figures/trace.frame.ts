/** Where the figure stands: each place has measures of its own. */
export type TraceFrame = 'wide' | 'narrow' | 'stage' | 'card';

/** Measures in units of the figure's own view box. */
export interface TraceMeasures {
  readonly width: number;
  readonly height: number;
  /** Left and right end of the plots. */
  readonly plot: readonly [number, number];
  /** Top and bottom of the plot of volts. */
  readonly volts: readonly [number, number];
  /** Top and bottom of the plot of power; none on the wall, where one picture at a time is enough. */
  readonly power?: readonly [number, number];
  /** Left end of the labels, and the least distance between two. */
  readonly labelX: number;
  readonly labelPitch: number;
  /** From the middle of a label to its baseline. */
  readonly labelDrop: number;
  readonly tickCount: number;
  /** From the end of the lower axis to the baseline of its numbers. */
  readonly tickDrop: number;
  readonly handleRadius: number;
}

const WIDE: TraceMeasures = {
  width: 880,
  height: 500,
  plot: [64, 630],
  volts: [28, 268],
  power: [322, 458],
  labelX: 668,
  labelPitch: 23,
  labelDrop: 5,
  tickCount: 5,
  tickDrop: 22,
  handleRadius: 9,
};

const MEASURES: Readonly<Record<TraceFrame, TraceMeasures>> = {
  wide: WIDE,
  narrow: {
    width: 300,
    height: 428,
    plot: [32, 155],
    volts: [26, 220],
    power: [272, 390],
    labelX: 178,
    labelPitch: 19,
    labelDrop: 5,
    tickCount: 3,
    tickDrop: 19,
    handleRadius: 8,
  },
  stage: {
    width: 1000,
    height: 470,
    plot: [96, 600],
    volts: [40, 410],
    labelX: 648,
    labelPitch: 44,
    labelDrop: 11,
    tickCount: 3,
    tickDrop: 42,
    handleRadius: 12,
  },
  // cards are drawn by the build alone: no reader's script carries their measures
  card: import.meta.env.SSR
    ? {
        width: 1080,
        height: 272,
        plot: [104, 640],
        volts: [40, 224],
        labelX: 690,
        labelPitch: 46,
        labelDrop: 15,
        tickCount: 2,
        tickDrop: 42,
        handleRadius: 12,
      }
    : WIDE,
};

export const traceMeasures = (frame: TraceFrame): TraceMeasures => MEASURES[frame];

/** Whether a name is that of a frame. */
export const isTraceFrame = (name: string | undefined): name is TraceFrame =>
  name !== undefined && Object.hasOwn(MEASURES, name);
