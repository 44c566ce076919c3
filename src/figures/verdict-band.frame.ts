/** Where the figure stands: each place has measures of its own. */
export type VerdictBandFrame = 'wide' | 'narrow' | 'stage' | 'card';

/** Measures in units of the figure's own view box, from top to bottom. */
export interface VerdictBandMeasures {
  readonly width: number;
  readonly height: number;
  readonly across: readonly [number, number];
  /** Baseline of the numbers of the limits. */
  readonly numbersY: number;
  /** Top and foot of the lane of zones, and the baseline of their names. */
  readonly lane: readonly [number, number];
  readonly namesY: number;
  /** Top and foot of the curve. */
  readonly curve: readonly [number, number];
  /** Top and foot of the strip. */
  readonly strip: readonly [number, number];
  readonly axisY: number;
  readonly ticksY: number;
  readonly unitY: number;
  readonly tickCount: number;
  readonly tickRoom: number;
  /** Room that a word takes for each of its letters. */
  readonly letterWidth: number;
  readonly handleRadius: number;
}

const WIDE: VerdictBandMeasures = {
  width: 880,
  height: 330,
  across: [33, 847],
  numbersY: 18,
  lane: [28, 64],
  namesY: 52,
  curve: [84, 206],
  strip: [212, 232],
  axisY: 252,
  ticksY: 288,
  unitY: 316,
  tickCount: 8,
  tickRoom: 70,
  letterWidth: 8.6,
  handleRadius: 9,
};

const MEASURES: Readonly<Record<VerdictBandFrame, VerdictBandMeasures>> = {
  wide: WIDE,
  narrow: {
    width: 300,
    height: 308,
    across: [22, 278],
    numbersY: 14,
    lane: [24, 56],
    namesY: 45,
    curve: [74, 186],
    strip: [192, 210],
    axisY: 230,
    ticksY: 266,
    unitY: 292,
    tickCount: 4,
    tickRoom: 58,
    letterWidth: 7.4,
    handleRadius: 8,
  },
  stage: {
    width: 1000,
    height: 462,
    across: [50, 950],
    numbersY: 36,
    lane: [54, 116],
    namesY: 98,
    curve: [140, 262],
    strip: [272, 302],
    axisY: 326,
    ticksY: 386,
    unitY: 440,
    tickCount: 6,
    tickRoom: 130,
    letterWidth: 19.5,
    handleRadius: 12,
  },
  // cards are drawn by the build alone: no reader's script carries their measures
  card: import.meta.env.SSR
    ? {
        width: 1080,
        height: 268,
        across: [20, 1060],
        numbersY: 34,
        lane: [44, 94],
        namesY: 84,
        curve: [102, 182],
        strip: [184, 206],
        axisY: 216,
        ticksY: 260,
        unitY: 260,
        tickCount: 5,
        tickRoom: 150,
        letterWidth: 22,
        handleRadius: 12,
      }
    : WIDE,
};

export const verdictBandMeasures = (frame: VerdictBandFrame): VerdictBandMeasures => MEASURES[frame];

/** Whether a name is that of a frame. */
export const isVerdictBandFrame = (name: string | undefined): name is VerdictBandFrame =>
  name !== undefined && Object.hasOwn(MEASURES, name);
