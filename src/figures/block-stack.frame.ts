/** Where the figure stands: each place has measures of its own. */
export type BlockFrame = 'wide' | 'narrow' | 'stage' | 'card';

/** Measures in units of the figure's own view box. */
export interface BlockMeasures {
  readonly width: number;
  /** Ends of the part that is drawn to scale: 100 mm lie between them. */
  readonly scaled: readonly [number, number];
  /** Ends of the part that is magnified, whose axis is in micrometres. */
  readonly zone: readonly [number, number];
  /** Top of the first row, and of each row after the one before it. */
  readonly head: number;
  readonly pitch: number;
  /** From the lowest row to the foot of the figure. */
  readonly foot: number;
  /** From the top of a row: baselines of its label and of the line below it, middle of its bar, and the bar's height. */
  readonly labelY: number;
  readonly detailY: number;
  readonly barY: number;
  readonly barHeight: number;
  readonly showDetail: boolean;
  readonly curveHeight: number;
  readonly tickCount: number;
  readonly tickRoom: number;
  readonly tickDrop: number;
  readonly unitDrop: number;
  readonly handleRadius: number;
  readonly dotRadius: number;
}

const WIDE: BlockMeasures = {
  width: 880,
  scaled: [4, 304],
  zone: [322, 862],
  head: 40,
  pitch: 98,
  foot: 62,
  labelY: 16,
  detailY: 36,
  barY: 64,
  barHeight: 30,
  showDetail: true,
  curveHeight: 26,
  tickCount: 8,
  tickRoom: 56,
  tickDrop: 24,
  unitDrop: 46,
  handleRadius: 9,
  dotRadius: 7,
};

const MEASURES: Readonly<Record<BlockFrame, BlockMeasures>> = {
  wide: WIDE,
  narrow: {
    width: 300,
    scaled: [2, 98],
    zone: [108, 290],
    head: 34,
    pitch: 102,
    foot: 58,
    labelY: 16,
    detailY: 35,
    barY: 66,
    barHeight: 28,
    showDetail: true,
    curveHeight: 22,
    tickCount: 4,
    tickRoom: 40,
    tickDrop: 22,
    unitDrop: 42,
    handleRadius: 8,
    dotRadius: 6,
  },
  stage: {
    width: 1000,
    scaled: [4, 324],
    zone: [346, 966],
    head: 58,
    pitch: 112,
    foot: 100,
    labelY: 32,
    detailY: 0,
    barY: 72,
    barHeight: 44,
    showDetail: false,
    curveHeight: 30,
    tickCount: 6,
    tickRoom: 110,
    tickDrop: 46,
    unitDrop: 88,
    handleRadius: 13,
    dotRadius: 11,
  },
  // cards are drawn by the build alone: no reader's script carries their measures
  card: import.meta.env.SSR
    ? {
        width: 1080,
        scaled: [4, 330],
        zone: [360, 1060],
        head: 0,
        pitch: 72,
        foot: 54,
        labelY: 34,
        detailY: 0,
        barY: 54,
        barHeight: 26,
        showDetail: false,
        curveHeight: 14,
        tickCount: 5,
        tickRoom: 140,
        tickDrop: 46,
        unitDrop: 46,
        handleRadius: 12,
        dotRadius: 11,
      }
    : WIDE,
};

export const blockMeasures = (frame: BlockFrame): BlockMeasures => MEASURES[frame];

/** Whether a name is that of a frame. */
export const isBlockFrame = (name: string | undefined): name is BlockFrame =>
  name !== undefined && Object.hasOwn(MEASURES, name);
