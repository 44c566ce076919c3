/** Where the figure stands: each place has measures of its own. */
export type GyrationFrame = 'wide' | 'narrow' | 'stage' | 'card';

/** Measures in units of the figure's own view box. */
export interface GyrationMeasures {
  readonly width: number;
  readonly height: number;
  /** Left and right end of the axis. */
  readonly across: readonly [number, number];
  /** Top of the bar's outline and the line that it stands on. */
  readonly bar: readonly [number, number];
  /** Heights of the lumps' rod, of the strip's middle, and of the axis. */
  readonly rod: number;
  readonly strip: number;
  readonly axis: number;
  readonly stripHalf: number;
  readonly lumpRadius: number;
  /** From the bar's top, the rod or the strip up to the baseline of its words. */
  readonly rise: { readonly bar: number; readonly rod: number; readonly strip: number };
  readonly ticks: number;
  readonly tickRoom: number;
  /** From the axis to the baselines of its numbers and of its words. */
  readonly tickDrop: number;
  readonly wordsDrop: number;
  readonly handleRadius: number;
}

const WIDE: GyrationMeasures = {
  width: 880,
  height: 386,
  across: [20, 860],
  bar: [32, 158],
  rod: 216,
  strip: 276,
  axis: 312,
  stripHalf: 11,
  lumpRadius: 11,
  rise: { bar: 14, rod: 24, strip: 20 },
  ticks: 9,
  tickRoom: 60,
  tickDrop: 36,
  wordsDrop: 64,
  handleRadius: 9,
};

const MEASURES: Readonly<Record<GyrationFrame, GyrationMeasures>> = {
  wide: WIDE,
  narrow: {
    width: 300,
    height: 318,
    across: [14, 286],
    bar: [28, 118],
    rod: 168,
    strip: 220,
    axis: 250,
    stripHalf: 9,
    lumpRadius: 9,
    rise: { bar: 12, rod: 20, strip: 17 },
    ticks: 5,
    tickRoom: 44,
    tickDrop: 34,
    wordsDrop: 58,
    handleRadius: 8,
  },
  stage: {
    width: 1000,
    height: 480,
    across: [40, 960],
    bar: [50, 162],
    rod: 238,
    strip: 320,
    axis: 362,
    stripHalf: 17,
    lumpRadius: 17,
    rise: { bar: 18, rod: 34, strip: 30 },
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
        height: 276,
        across: [20, 1060],
        bar: [46, 86],
        rod: 148,
        strip: 208,
        axis: 222,
        stripHalf: 10,
        lumpRadius: 12,
        rise: { bar: 10, rod: 22, strip: 8 },
        ticks: 6,
        tickRoom: 140,
        tickDrop: 46,
        wordsDrop: 46,
        handleRadius: 12,
      }
    : WIDE,
};

export const gyrationMeasures = (frame: GyrationFrame): GyrationMeasures => MEASURES[frame];

/** Whether a name is that of a frame. */
export const isGyrationFrame = (name: string | undefined): name is GyrationFrame =>
  name !== undefined && Object.hasOwn(MEASURES, name);
