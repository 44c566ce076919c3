/** An event of the browser's trace, as far as it is read here; times in microseconds. */
export interface TraceEvent {
  readonly name: string;
  readonly ts: number;
  readonly dur?: number;
  /** The same by the clock of the thread, which stands still while other programs have the processor. */
  readonly tts?: number;
  readonly tdur?: number;
  readonly tid: number;
  readonly args?: { readonly data?: { readonly type?: string } };
}

/** What a drag took, frame by frame, in ms. */
export interface Dragged {
  /** For each frame in which something was painted: from the first movement handed out to the end of the painting. */
  readonly workMs: readonly number[];
  /** The same by the clock of the thread. */
  readonly threadMs: readonly number[];
  /** From each frame that came to the screen to the next. */
  readonly gapsMs: readonly number[];
}

const end = ({ ts, dur = 0 }: TraceEvent): number => ts + dur;
const threadEnd = ({ tts = Number.NaN, tdur = 0 }: TraceEvent): number => tts + tdur;
const isMove = ({ name, args }: TraceEvent): boolean =>
  name === 'EventDispatch' && args?.data?.type === 'pointermove';

/** From the first movement of a frame to its last painting. */
interface Frame {
  readonly move: TraceEvent;
  readonly paint: TraceEvent;
}

/**
 * Movements are handed out at the start of a frame, and several may come before one is painted: the first counts. A frame that is handed over
 * (`Commit`) without a painting showed nothing new: what begins it begins no other.
 */
function framesOf(events: readonly TraceEvent[]): readonly Frame[] {
  const frames: Frame[] = [];
  let move: TraceEvent | undefined;
  let paint: TraceEvent | undefined;
  for (const event of events) {
    if (isMove(event)) {
      if (move && paint) frames.push({ move, paint });
      if (paint) move = event;
      move ??= event;
      paint = undefined;
    } else if (event.tid === move?.tid) {
      if (event.name === 'Paint') paint = event;
      if (event.name === 'Commit' && !paint) move = undefined;
    }
  }
  return move && paint ? [...frames, { move, paint }] : frames;
}

/** Reads a drag out of a trace. */
export function dragged(events: readonly TraceEvent[]): Dragged {
  const sorted = events.toSorted((a, b) => a.ts - b.ts);
  const moves = sorted.filter(isMove);
  const [first] = moves;
  const last = moves.at(-1);
  if (first === undefined || last === undefined) throw new RangeError('dragged: wish movements, got none');
  const frames = framesOf(sorted);
  const shown = sorted.filter(
    ({ name, ts }) => name === 'AnimationFrame::Presentation' && ts >= first.ts && ts <= last.ts,
  );
  return {
    workMs: frames.map(({ move, paint }) => (end(paint) - move.ts) / 1000),
    threadMs: frames.map(({ move, paint }) => (threadEnd(paint) - (move.tts ?? Number.NaN)) / 1000),
    gapsMs: shown.slice(1).map(({ ts }, index) => (ts - (shown[index]?.ts ?? ts)) / 1000),
  };
}

/** The share of the times that are at most so long, in percent; NaN where there are none. */
export const percentWithin = (times: readonly number[], most: number): number =>
  (100 * times.filter((time) => time <= most).length) / times.length;

/** The time that so many percent of all are within, by the nearest rank. */
export function percentile(times: readonly number[], percent: number): number {
  const sorted = times.toSorted((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil((percent / 100) * sorted.length) - 1)] ?? Number.NaN;
}
