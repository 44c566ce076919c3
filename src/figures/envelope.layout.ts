import type { Envelope } from '#compute';
import { levelTicks } from './axis-ticks.ts';
import { type EnvelopeFrame, type EnvelopeMeasures, envelopeMeasures } from './envelope.frame.ts';
import { parisMarks, patternOf } from './envelope.pattern.ts';
import { coordinate, type LinearScale, linearScale } from './linear-scale.ts';
import { roundAbove, spread } from './spread.ts';

export interface EnvelopeProps {
  readonly frame: EnvelopeFrame;
  readonly envelope: Envelope;
  readonly peakW: number;
  readonly meanW: number;
  /** Carrier power; two tones have none. */
  readonly carrierW?: number | undefined;
  /** Peak before the last change. */
  readonly beforeW?: number | undefined;
  /** End of the axis: fixed while the handle is held. */
  readonly spanW: number;
  /** The power that a slip states. */
  readonly slippedW?: number | undefined;
}

/** Room above the peak, for the handle. */
const HEADROOM = 1.12;

/** The axis of power that holds these, with room to pull. */
export const envelopeSpan = (powersW: readonly number[]): number =>
  roundAbove(HEADROOM * Math.max(...powersW));

export interface EnvelopeMark {
  readonly id: 'peak' | 'carrier' | 'mean' | 'slipped';
  readonly y: number;
  readonly labelY: number;
}

export interface EnvelopeDrawing {
  readonly measures: EnvelopeMeasures;
  readonly line: string;
  readonly area: string;
  readonly ghostY: number | undefined;
  readonly ground: number;
  readonly marks: readonly EnvelopeMark[];
  readonly ticks: readonly { readonly y: number; readonly value: number }[];
  /** Letters under the word. */
  readonly letters: readonly { readonly x: number; readonly name: string }[];
  readonly handle: { readonly x: number; readonly y: number };
  /** Watts to coordinate; its `invert` turns a pointer into a peak. */
  readonly scale: LinearScale;
}

/** All coordinates of the figure. @throws RangeError unless spanW is above zero. */
export function envelopeLayout(props: EnvelopeProps): EnvelopeDrawing {
  const { frame, envelope, peakW, meanW, carrierW, beforeW, spanW, slippedW } = props;
  const measures = envelopeMeasures(frame);
  const [left, right] = measures.plot;
  const scale = linearScale({ domain: [spanW, 0], range: measures.power });
  const time = linearScale({ domain: [0, 1], range: [left, right] });
  const y = (watts: number): number => coordinate(scale(Math.min(spanW, Math.max(0, watts))));
  const ground = y(0);
  const line = patternOf(envelope)
    .map(({ at, share }) => `${coordinate(time(at))} ${y(peakW * share)}`)
    .join('L');
  return {
    measures,
    line: `M${line}`,
    area: `M${coordinate(left)} ${ground}L${line}L${coordinate(right)} ${ground}Z`,
    ghostY: beforeW === undefined || beforeW === peakW ? undefined : y(beforeW),
    ground,
    marks: marksOf(
      { peak: y(peakW), carrier: maybe(carrierW, y), mean: y(meanW), slipped: maybe(slippedW, y) },
      measures,
    ),
    ticks: levelTicks({ lower: 0, upper: spanW, count: measures.tickCount }).map((value) => ({
      value,
      y: y(value),
    })),
    letters: envelope === 'parisWord' ? lettersOf(time) : [],
    handle: { x: right, y: y(peakW) },
    scale,
  };
}

const maybe = (watts: number | undefined, y: (watts: number) => number): number | undefined =>
  watts === undefined ? undefined : y(watts);

function marksOf(
  ys: Readonly<Record<EnvelopeMark['id'], number | undefined>>,
  { labelPitch }: EnvelopeMeasures,
): EnvelopeMark[] {
  const marks = (['peak', 'carrier', 'mean', 'slipped'] as const)
    .flatMap((id) => {
      const y = ys[id];
      return y === undefined ? [] : [{ id, y }];
    })
    .toSorted((a, b) => a.y - b.y);
  const labels = spread(
    marks.map(({ y }) => y),
    labelPitch,
  );
  return marks.map((mark, index) => ({ ...mark, labelY: coordinate(labels[index] ?? mark.y) }));
}

function lettersOf(time: LinearScale) {
  const { letters, length } = parisMarks();
  return letters.map(({ name, middle }) => ({ name, x: coordinate(time(middle / length)) }));
}
