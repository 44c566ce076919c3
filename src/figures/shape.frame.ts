/** Where the figure stands: each place has measures of its own. */
export type ShapeFrame = 'wide' | 'narrow' | 'stage' | 'card';

/** Measures in units of the figure's own view box. */
export interface ShapeMeasures {
  readonly width: number;
  /** Left and right of the axis. */
  readonly across: readonly [number, number];
  /** Highest point and ground of the curves. */
  readonly down: readonly [number, number];
  /** From the ground to the first lane, and from lane to lane. */
  readonly lanesDrop: number;
  readonly lanePitch: number;
  /** Within a lane: baseline of its words, middle and height of what is drawn. */
  readonly labelY: number;
  readonly middleY: number;
  readonly stripHeight: number;
  /** Where the numbers of the lanes end. */
  readonly numberX: number;
  /** From the last lane to the axis, from there to the baselines of its numbers and of its words, and to the foot. */
  readonly axisDrop: number;
  readonly tickDrop: number;
  readonly wordsDrop: number;
  readonly foot: number;
  readonly tickCount: number;
  readonly tickRoom: number;
  /** From the highest point up to the words of the upright axis. */
  readonly wordsRise: number;
  readonly handleRadius: number;
}

const WIDE: ShapeMeasures = {
  width: 880,
  across: [190, 730],
  down: [38, 224],
  lanesDrop: 10,
  lanePitch: 30,
  labelY: 20,
  middleY: 15,
  stripHeight: 12,
  numberX: 880,
  axisDrop: 8,
  tickDrop: 34,
  wordsDrop: 58,
  foot: 8,
  tickCount: 7,
  tickRoom: 56,
  wordsRise: 16,
  handleRadius: 9,
};

const MEASURES: Readonly<Record<ShapeFrame, ShapeMeasures>> = {
  wide: WIDE,
  narrow: {
    width: 300,
    across: [16, 284],
    down: [34, 168],
    lanesDrop: 6,
    lanePitch: 42,
    labelY: 16,
    middleY: 32,
    stripHeight: 10,
    numberX: 300,
    axisDrop: 8,
    tickDrop: 32,
    wordsDrop: 54,
    foot: 8,
    tickCount: 5,
    tickRoom: 46,
    wordsRise: 16,
    handleRadius: 8,
  },
  stage: {
    width: 1000,
    across: [310, 740],
    down: [54, 230],
    lanesDrop: 6,
    lanePitch: 48,
    labelY: 36,
    middleY: 24,
    stripHeight: 20,
    numberX: 1000,
    axisDrop: 8,
    tickDrop: 50,
    wordsDrop: 96,
    foot: 10,
    tickCount: 4,
    tickRoom: 110,
    wordsRise: 18,
    handleRadius: 13,
  },
  // cards are drawn by the build alone: no reader's script carries their measures
  card: import.meta.env.SSR
    ? {
        width: 1080,
        across: [350, 780],
        down: [8, 84],
        lanesDrop: 4,
        lanePitch: 42,
        labelY: 36,
        middleY: 22,
        stripHeight: 20,
        numberX: 1080,
        axisDrop: 4,
        tickDrop: 46,
        wordsDrop: 46,
        foot: 10,
        tickCount: 4,
        tickRoom: 130,
        wordsRise: -30,
        handleRadius: 12,
      }
    : WIDE,
};

export const shapeMeasures = (frame: ShapeFrame): ShapeMeasures => MEASURES[frame];

/** Whether a name is that of a frame. */
export const isShapeFrame = (name: string | undefined): name is ShapeFrame =>
  name !== undefined && Object.hasOwn(MEASURES, name);
