import { levelDbm, levelToPower, powerToLevel, powerW } from '#compute';
import { levelTicks, powerTicks, spaced } from './axis-ticks.ts';
import { type LevelFrame, type LevelMeasures, levelMeasures } from './level-diagram.frame.ts';
import { coordinate, type LinearScale, linearScale } from './linear-scale.ts';

/** One row: a part that moves the level from here to there, or a place where the level just stands. Levels in dBm. */
export interface LevelRow {
  readonly id: string;
  readonly label: string;
  readonly detail: string;
  readonly number: string;
  readonly from: number;
  readonly to: number;
  /** What the part stands at its input, as a level. */
  readonly limit?: number;
  /** Whether the part gets more than it stands. */
  readonly over: boolean;
  readonly handle: boolean;
}

export interface LevelDiagramProps {
  readonly frame: LevelFrame;
  readonly rows: readonly LevelRow[];
  /** Levels of the same rows on another way down: before the last change, or with a part left out; `undefined` skips a row. */
  readonly ghost?: readonly (Pick<LevelRow, 'from' | 'to'> | undefined)[] | undefined;
  readonly left?: readonly (Pick<LevelRow, 'from' | 'to'> | undefined)[] | undefined;
  /** A level that a slip states, in the row with this id. */
  readonly slipped?: { readonly row: string; readonly level: number } | undefined;
  /** Ends of the axis: fixed while a handle is held. */
  readonly within: { readonly lower: number; readonly upper: number };
}

/** Room beyond the outermost level, and the round step on which the axis ends, in dB. */
const MARGIN_DB = 4;
const ROUND_DB = 10;

/** The round ends of an axis that holds these levels with room to pull. */
export function levelSpan(levels: readonly number[]): { lower: number; upper: number } {
  const lower = Math.floor((Math.min(...levels) - MARGIN_DB) / ROUND_DB) * ROUND_DB;
  const upper = Math.ceil((Math.max(...levels) + MARGIN_DB) / ROUND_DB) * ROUND_DB;
  return { lower, upper };
}

export interface LevelRowDrawing {
  readonly row: LevelRow;
  readonly y: number;
  readonly fromX: number;
  readonly toX: number;
  readonly limitX: number | undefined;
  readonly slippedX: number | undefined;
}

export interface LevelTick {
  readonly x: number;
  readonly value: number;
  readonly named: boolean;
}

export interface LevelDrawing {
  readonly measures: LevelMeasures;
  readonly width: number;
  readonly height: number;
  readonly axisTop: number;
  readonly axisBottom: number;
  readonly rows: readonly LevelRowDrawing[];
  /** The staircase: across with each part, down from part to part. */
  readonly stairs: string;
  readonly ghost: string | undefined;
  readonly left: string | undefined;
  readonly levels: readonly LevelTick[];
  /** Powers in watts. */
  readonly powers: readonly LevelTick[];
  readonly scale: LinearScale;
}

/** All coordinates of the figure. @throws RangeError unless the axis has a width. */
export function levelDiagramLayout(props: LevelDiagramProps): LevelDrawing {
  const { rows, within, slipped, frame } = props;
  const measures = levelMeasures(frame);
  const scale = linearScale({ domain: [within.lower, within.upper], range: measures.axis });
  const at = (level: number): number =>
    coordinate(scale(Math.min(within.upper, Math.max(within.lower, level))));
  const height = measures.head + rows.length * measures.rowPitch + measures.foot;
  const yOf = (index: number): number => coordinate(measures.head + index * measures.rowPitch);
  const inside = (level: number | undefined): boolean =>
    level !== undefined && level >= within.lower && level <= within.upper;
  const stairs = (steps: readonly (Pick<LevelRow, 'from' | 'to'> | undefined)[]): string =>
    stairsPath(steps, { at, yOf: (index) => yOf(index) + measures.stepY });
  return {
    measures,
    width: measures.width,
    height,
    axisTop: measures.head - 8,
    axisBottom: height - measures.foot + 6,
    rows: rows.map((row, index) => ({
      row,
      y: yOf(index),
      fromX: at(row.from),
      toX: at(row.to),
      limitX: row.limit !== undefined && inside(row.limit) ? at(row.limit) : undefined,
      slippedX: slipped?.row === row.id ? at(slipped.level) : undefined,
    })),
    stairs: stairs(rows),
    ghost: props.ghost && stairs(props.ghost),
    left: props.left && stairs(props.left),
    ...axes(within, scale, measures),
    scale,
  };
}

interface Places {
  readonly at: (level: number) => number;
  readonly yOf: (index: number) => number;
}

/** Across at each row, and straight down to the next: the level does not change between parts. */
function stairsPath(
  steps: readonly (Pick<LevelRow, 'from' | 'to'> | undefined)[],
  { at, yOf }: Places,
): string {
  const pieces = steps.flatMap((step, index) =>
    step === undefined ? [] : [`${at(step.from)} ${yOf(index)}`, `${at(step.to)} ${yOf(index)}`],
  );
  return `M${pieces.join('L')}`;
}

/** How much more room a power takes on its axis than a level, since its unit stands with it and may be spaced widely. */
const UNIT_ROOM = 12;

function axes(
  within: { readonly lower: number; readonly upper: number },
  scale: LinearScale,
  { tickCount, tickRoom, width }: LevelMeasures,
): Pick<LevelDrawing, 'levels' | 'powers'> {
  const watts = (level: number): number => levelToPower(levelDbm(level));
  const levels = levelTicks({ ...within, count: tickCount }).map((value) => ({
    value,
    x: coordinate(scale(value)),
  }));
  const powers = powerTicks({
    lower: watts(within.lower),
    upper: watts(within.upper),
    count: tickCount,
  }).map((value) => ({ value, x: coordinate(scale(powerToLevel(powerW(value)))) }));
  // A number at the very end of the axis would reach beyond the drawing.
  const fits = ({ x }: { x: number }): boolean => x >= tickRoom / 2 - 1 && x <= width - tickRoom / 2 + 1;
  const named = <T extends { x: number }>(ticks: readonly T[], room: number): (T & { named: boolean })[] => {
    const within = spaced(ticks.filter(fits), room);
    return ticks.map((tick) => ({ ...tick, named: within.some(({ x, named: is }) => is && x === tick.x) }));
  };
  return { levels: named(levels, tickRoom), powers: named(powers, tickRoom + UNIT_ROOM) };
}
