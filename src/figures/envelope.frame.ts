/** Where the figure stands: each place has measures of its own. */
export type EnvelopeFrame = 'wide' | 'narrow' | 'stage' | 'card';

/** Measures in units of the figure's own view box. */
export interface EnvelopeMeasures {
  readonly width: number;
  readonly height: number;
  /** Left and right end, top and bottom of the plot. */
  readonly plot: readonly [number, number];
  readonly power: readonly [number, number];
  readonly labelX: number;
  readonly labelPitch: number;
  readonly labelDrop: number;
  readonly tickCount: number;
  readonly tickDrop: number;
  readonly handleRadius: number;
}

const WIDE: EnvelopeMeasures = {
  width: 880,
  height: 300,
  plot: [64, 660],
  power: [40, 252],
  labelX: 690,
  labelPitch: 23,
  labelDrop: 5,
  tickCount: 4,
  tickDrop: 22,
  handleRadius: 9,
};

const MEASURES: Readonly<Record<EnvelopeFrame, EnvelopeMeasures>> = {
  wide: WIDE,
  narrow: {
    width: 300,
    height: 232,
    plot: [38, 169],
    power: [40, 192],
    labelX: 187,
    labelPitch: 19,
    labelDrop: 5,
    tickCount: 3,
    tickDrop: 20,
    handleRadius: 8,
  },
  stage: {
    width: 1000,
    height: 420,
    plot: [104, 640],
    power: [56, 352],
    labelX: 676,
    labelPitch: 44,
    labelDrop: 11,
    tickCount: 3,
    tickDrop: 44,
    handleRadius: 12,
  },
  // cards are drawn by the build alone: no reader's script carries their measures
  card: import.meta.env.SSR
    ? {
        width: 1080,
        height: 262,
        plot: [110, 640],
        power: [48, 206],
        labelX: 690,
        labelPitch: 48,
        labelDrop: 15,
        tickCount: 2,
        tickDrop: 46,
        handleRadius: 12,
      }
    : WIDE,
};

export const envelopeMeasures = (frame: EnvelopeFrame): EnvelopeMeasures => MEASURES[frame];

/** Whether a name is that of a frame. */
export const isEnvelopeFrame = (name: string | undefined): name is EnvelopeFrame =>
  name !== undefined && Object.hasOwn(MEASURES, name);
