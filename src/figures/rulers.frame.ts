import type { BandFrame } from './reading-band.frame.ts';

/** Where rulers and tiles stand. */
export type RulersFrame = BandFrame | 'card';

/** Measures of the rulers in units of the figure's own view box, by the frame that it stands in. */
export interface RulersMeasures {
  readonly width: number;
  /** Ends of every ruler. */
  readonly axis: readonly [number, number];
  /** Above the first lane or ruler, and below the last ruler where a knob hangs there. */
  readonly head: number;
  readonly foot: number;
  readonly lanePitch: number;
  readonly rulerPitch: number;
  /** From the top of a ruler: baselines of its title and of its reading, the ruler itself. */
  readonly titleY: number;
  readonly readingY: number;
  readonly axisY: number;
  /** Where a reading is written: its left end in a column of its own, or its right end beside the title. */
  readonly readingX: number;
  readonly readingAnchor: 'start' | 'end';
  /** From a ruler down to the baseline of its numbers. */
  readonly tickDrop: number;
  readonly tickLength: number;
  readonly stripHeight: number;
  readonly knobRadius: number;
  /** Size of the letters, to tell how much room a text takes. */
  readonly fontSize: number;
}

const WIDE: RulersMeasures = {
  width: 880,
  axis: [236, 856],
  head: 8,
  foot: 46,
  lanePitch: 30,
  rulerPitch: 78,
  titleY: 30,
  readingY: 52,
  axisY: 40,
  readingX: 0,
  readingAnchor: 'start',
  tickDrop: 22,
  tickLength: 7,
  stripHeight: 14,
  knobRadius: 9,
  fontSize: 15,
};

const MEASURES: Readonly<Record<RulersFrame, RulersMeasures>> = {
  wide: WIDE,
  narrow: {
    width: 300,
    axis: [14, 280],
    head: 6,
    foot: 44,
    lanePitch: 27,
    rulerPitch: 92,
    titleY: 20,
    readingY: 20,
    axisY: 58,
    readingX: 300,
    readingAnchor: 'end',
    tickDrop: 19,
    tickLength: 6,
    stripHeight: 12,
    knobRadius: 8,
    fontSize: 13.5,
  },
  stage: {
    width: 1000,
    axis: [300, 965],
    head: 6,
    foot: 44,
    lanePitch: 44,
    rulerPitch: 104,
    titleY: 38,
    readingY: 78,
    axisY: 48,
    readingX: 0,
    readingAnchor: 'start',
    tickDrop: 40,
    tickLength: 10,
    stripHeight: 20,
    knobRadius: 12,
    fontSize: 34,
  },
  // cards are drawn by the build alone: no reader's script carries their measures
  card: import.meta.env.SSR
    ? {
        width: 1080,
        axis: [390, 1050],
        head: 2,
        foot: 4,
        lanePitch: 46,
        rulerPitch: 88,
        titleY: 38,
        readingY: 80,
        axisY: 40,
        readingX: 0,
        readingAnchor: 'start',
        tickDrop: 42,
        tickLength: 12,
        stripHeight: 22,
        knobRadius: 13,
        fontSize: 44,
      }
    : WIDE,
};

export const rulersMeasuresOf = (frame: RulersFrame): RulersMeasures => MEASURES[frame];
