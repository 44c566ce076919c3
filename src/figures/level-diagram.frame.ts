/** Where the figure stands: each place has measures of its own. */
export type LevelFrame = 'wide' | 'narrow' | 'stage' | 'card';

/** Measures in units of the figure's own view box. */
export interface LevelMeasures {
  readonly width: number;
  /** Ends of the common axis of levels. */
  readonly axis: readonly [number, number];
  readonly head: number;
  readonly foot: number;
  readonly rowPitch: number;
  /** From the top of a row: baselines of its words, and the height of its step. */
  readonly labelY: number;
  readonly detailY: number;
  readonly stepY: number;
  readonly labelX: number;
  readonly numberX: number;
  readonly numberY: number;
  readonly tickRoom: number;
  readonly tickCount: number;
  readonly tickDrop: number;
  readonly unitBeside: boolean;
  readonly showDetail: boolean;
  readonly handleRadius: number;
}

const WIDE: LevelMeasures = {
  width: 880,
  axis: [300, 740],
  head: 52,
  foot: 42,
  rowPitch: 56,
  labelY: 25,
  detailY: 44,
  stepY: 30,
  labelX: 0,
  numberX: 880,
  numberY: 35,
  tickRoom: 52,
  tickCount: 7,
  tickDrop: 22,
  unitBeside: true,
  showDetail: true,
  handleRadius: 9,
};

const MEASURES: Readonly<Record<LevelFrame, LevelMeasures>> = {
  wide: WIDE,
  narrow: {
    width: 300,
    axis: [14, 286],
    head: 50,
    foot: 48,
    rowPitch: 92,
    labelY: 18,
    detailY: 36,
    stepY: 64,
    labelX: 0,
    numberX: 300,
    numberY: 18,
    tickRoom: 44,
    tickCount: 5,
    tickDrop: 20,
    unitBeside: false,
    showDetail: true,
    handleRadius: 8,
  },
  stage: {
    width: 1000,
    axis: [300, 800],
    head: 60,
    foot: 56,
    rowPitch: 62,
    labelY: 42,
    detailY: 0,
    stepY: 31,
    labelX: 0,
    numberX: 1000,
    numberY: 42,
    tickRoom: 120,
    tickCount: 5,
    tickDrop: 40,
    unitBeside: true,
    showDetail: false,
    handleRadius: 12,
  },
  // cards are drawn by the build alone: no reader's script carries their measures
  card: import.meta.env.SSR
    ? {
        width: 1080,
        axis: [330, 800],
        head: 10,
        foot: 52,
        rowPitch: 42,
        labelY: 34,
        detailY: 0,
        stepY: 20,
        labelX: 0,
        numberX: 1080,
        numberY: 34,
        tickRoom: 120,
        tickCount: 4,
        tickDrop: 44,
        unitBeside: true,
        showDetail: false,
        handleRadius: 12,
      }
    : WIDE,
};

export const levelMeasures = (frame: LevelFrame): LevelMeasures => MEASURES[frame];

/** Whether a name is that of a frame. */
export const isLevelFrame = (name: string | undefined): name is LevelFrame =>
  name !== undefined && Object.hasOwn(MEASURES, name);
