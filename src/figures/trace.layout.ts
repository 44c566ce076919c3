import type { Waveform } from '#compute';
import { levelTicks } from './axis-ticks.ts';
import { coordinate, type LinearScale, linearScale } from './linear-scale.ts';
import { roundAbove, spread } from './spread.ts';
import { type TraceFrame, type TraceMeasures, traceMeasures } from './trace.frame.ts';
import { wavePoints } from './trace.wave.ts';

/** Periods that are drawn: two, so that the eye sees that it repeats. */
export const PERIODS = 2;
/** Room above the crest, for the handle and its label. */
const HEADROOM = 1.12;

/** A wave's measures, as the figure draws them; volts and watts. */
export interface TraceValues {
  readonly wave: Waveform;
  readonly peak: number;
  readonly rms: number;
  readonly average: number;
  readonly meanW: number;
  readonly greatestW: number;
}

export interface TraceProps {
  readonly frame: TraceFrame;
  readonly values: TraceValues;
  /** The trace before the last change. */
  readonly before?: Pick<TraceValues, 'wave' | 'peak'> | undefined;
  /** Half of the axis of volts, and the whole of the axis of power: fixed while a handle is held. */
  readonly spanV: number;
  readonly spanW: number;
  /** The power that a slip makes of the trace. */
  readonly slippedW?: number | undefined;
}

/** The half axis of volts that holds these peaks, with room to pull. */
export const voltsSpan = (peaks: readonly number[]): number => roundAbove(HEADROOM * Math.max(...peaks));
/** The axis of power that holds these. */
export const wattsSpan = (powersW: readonly number[]): number => roundAbove(Math.max(...powersW));

export interface Mark {
  readonly id: 'peak' | 'rms' | 'average' | 'greatest' | 'mean' | 'slipped';
  readonly y: number;
  /** Middle of its label. */
  readonly labelY: number;
}

export interface TraceDrawing {
  readonly measures: TraceMeasures;
  readonly zeroY: number;
  readonly wave: string;
  readonly ghost: string | undefined;
  readonly marks: readonly Mark[];
  /** The bracket from trough to crest. */
  readonly whole: { readonly x: number; readonly top: number; readonly bottom: number };
  readonly voltTicks: readonly { readonly y: number; readonly value: number }[];
  readonly power: PowerDrawing | undefined;
  readonly periodX: readonly number[];
  readonly handle: { readonly x: number; readonly y: number };
  /** Volts to coordinate; its `invert` turns a pointer into a peak. */
  readonly scale: LinearScale;
}

export interface PowerDrawing {
  readonly line: string;
  readonly area: string;
  readonly ground: number;
  readonly marks: readonly Mark[];
  readonly ticks: readonly { readonly y: number; readonly value: number }[];
}

/** All coordinates of the figure. @throws RangeError unless both spans are above zero. */
export function traceLayout(props: TraceProps): TraceDrawing {
  const { frame, values, before, spanV } = props;
  const measures = traceMeasures(frame);
  const [top, bottom] = measures.volts;
  const [left, right] = measures.plot;
  const scale = linearScale({ domain: [spanV, -spanV], range: [top, bottom] });
  const time = linearScale({ domain: [0, PERIODS], range: [left, right] });
  const y = (volts: number): number => coordinate(scale(Math.min(spanV, Math.max(-spanV, volts))));
  const path = ({ wave, peak }: Pick<TraceValues, 'wave' | 'peak'>): string =>
    `M${wavePoints(wave, PERIODS)
      .map(({ at, value }) => `${coordinate(time(at))} ${y(peak * value)}`)
      .join('L')}`;
  return {
    measures,
    zeroY: y(0),
    wave: path(values),
    ghost: before && (before.peak !== values.peak || before.wave !== values.wave) ? path(before) : undefined,
    marks: placed(
      [
        { id: 'peak', y: y(values.peak) },
        { id: 'rms', y: y(values.rms) },
        { id: 'average', y: y(values.average) },
      ],
      measures,
    ),
    whole: { x: coordinate(right + 14), top: y(values.peak), bottom: y(-values.peak) },
    voltTicks: levelTicks({ lower: -spanV, upper: spanV, count: measures.tickCount }).map((value) => ({
      value,
      y: y(value),
    })),
    power: measures.power && powerDrawing(props, measures, measures.power, time),
    periodX: Array.from({ length: PERIODS + 1 }, (_, index) => coordinate(time(index))),
    handle: { x: right, y: y(values.peak) },
    scale,
  };
}

const placed = (
  marks: readonly Pick<Mark, 'id' | 'y'>[],
  { labelPitch }: Pick<TraceMeasures, 'labelPitch'>,
): Mark[] => {
  const sorted = marks.toSorted((a, b) => a.y - b.y);
  const labels = spread(
    sorted.map(({ y }) => y),
    labelPitch,
  );
  return sorted.map((mark, index) => ({ ...mark, labelY: coordinate(labels[index] ?? mark.y) }));
};

/** The power in the load from moment to moment: the square of the wave, and its mean. */
function powerDrawing(
  { values, spanW, slippedW }: TraceProps,
  measures: TraceMeasures,
  [top, bottom]: readonly [number, number],
  time: LinearScale,
): PowerDrawing {
  const scale = linearScale({ domain: [spanW, 0], range: [top, bottom] });
  const y = (watts: number): number => coordinate(scale(Math.min(spanW, Math.max(0, watts))));
  const line = wavePoints(values.wave, PERIODS)
    .flatMap((point, index, all) => between(point, all[index + 1], values.wave))
    .map(({ at, value }) => `${coordinate(time(at))} ${y(values.greatestW * value ** 2)}`)
    .join('L');
  const ground = y(0);
  const marks: Pick<Mark, 'id' | 'y'>[] = [
    { id: 'greatest', y: y(values.greatestW) },
    { id: 'mean', y: y(values.meanW) },
    ...(slippedW === undefined ? [] : [{ id: 'slipped' as const, y: y(slippedW) }]),
  ];
  return {
    line: `M${line}`,
    area: `M${coordinate(time(0))} ${ground}L${line}L${coordinate(time(PERIODS))} ${ground}Z`,
    ground,
    marks: placed(marks, measures),
    ticks: levelTicks({ lower: 0, upper: spanW, count: 2 }).map((value) => ({ value, y: y(value) })),
  };
}

interface Point {
  readonly at: number;
  readonly value: number;
}

/** The square of a straight side is a curve: it needs points between the corners. */
function between(point: Point, next: Point | undefined, wave: Waveform): readonly Point[] {
  if (wave !== 'triangle' || next === undefined) return [point];
  return Array.from({ length: 8 }, (_, index) => ({
    at: point.at + ((next.at - point.at) * index) / 8,
    value: point.value + ((next.value - point.value) * index) / 8,
  }));
}
