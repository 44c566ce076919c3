/** Where the figure stands: each place has measures of its own. */
export type LineBandFrame = 'wide' | 'narrow' | 'stage' | 'card';

/** Measures in units of the figure's own view box. */
export interface LineBandMeasures {
  readonly width: number;
  readonly height: number;
  /** Left and right, top and bottom of the plot. */
  readonly across: readonly [number, number];
  readonly down: readonly [number, number];
  /** About how many ticks, along and up. */
  readonly ticks: readonly [number, number];
  /** Least room between the numbers of two ticks along. */
  readonly tickRoom: number;
  /** From the lower axis to the baselines of its numbers and of its words. */
  readonly tickDrop: number;
  readonly wordsDrop: number;
  /** From the middle of a text to its baseline. */
  readonly labelDrop: number;
  /** From the lower limit line down to the baseline of its name. */
  readonly limitDrop: number;
  /** From the upright axis to that name, where it stands at its start: away from the numbers of the axis. */
  readonly limitIndent: number;
  /** From the plot up to the words of the upright axis. */
  readonly wordsRise: number;
  readonly handleRadius: number;
  readonly dotRadius: number;
}

const WIDE: LineBandMeasures = {
  width: 880,
  height: 396,
  across: [60, 860],
  down: [40, 322],
  ticks: [8, 6],
  tickRoom: 60,
  tickDrop: 36,
  wordsDrop: 62,
  labelDrop: 5,
  limitDrop: 17,
  limitIndent: 4,
  wordsRise: 18,
  handleRadius: 9,
  dotRadius: 6,
};

const MEASURES: Readonly<Record<LineBandFrame, LineBandMeasures>> = {
  wide: WIDE,
  narrow: {
    width: 300,
    height: 326,
    across: [48, 282],
    down: [34, 252],
    ticks: [4, 5],
    tickRoom: 44,
    tickDrop: 34,
    wordsDrop: 58,
    labelDrop: 5,
    limitDrop: 15,
    limitIndent: 4,
    wordsRise: 16,
    handleRadius: 8,
    dotRadius: 5,
  },
  stage: {
    width: 1000,
    height: 452,
    across: [112, 956],
    down: [58, 324],
    ticks: [6, 4],
    tickRoom: 120,
    tickDrop: 58,
    wordsDrop: 108,
    labelDrop: 11,
    limitDrop: 32,
    limitIndent: 26,
    wordsRise: 24,
    handleRadius: 12,
    dotRadius: 10,
  },
  // cards are drawn by the build alone: no reader's script carries their measures
  card: import.meta.env.SSR
    ? {
        width: 1080,
        height: 260,
        across: [128, 1064],
        down: [52, 204],
        ticks: [6, 2],
        tickRoom: 150,
        tickDrop: 50,
        wordsDrop: 50,
        labelDrop: 15,
        limitDrop: 40,
        limitIndent: 4,
        wordsRise: 14,
        handleRadius: 12,
        dotRadius: 12,
      }
    : WIDE,
};

export const lineBandMeasures = (frame: LineBandFrame): LineBandMeasures => MEASURES[frame];

/** Whether a name is that of a frame. */
export const isLineBandFrame = (name: string | undefined): name is LineBandFrame =>
  name !== undefined && Object.hasOwn(MEASURES, name);
