import type { Interval } from '#compute';
import { coordinate, type LinearScale, linearScale } from './linear-scale.ts';
import { type RulersMeasures, rulersMeasuresOf } from './rulers.frame.ts';
import type {
  Lane,
  LaneDrawing,
  Ruler,
  RulerDrawing,
  RulersDrawing,
  RulersProps,
  RulerTick,
  TickDrawing,
} from './rulers.types.ts';

/** Width of a letter as a share of its size, on the wide side: digits of the page's face take 0.56. */
const LETTER = 0.58;
/** Least room between two numbers, and between a step and the words beside it, as shares of the letters' size. */
const GAP = 0.6;
/** How many times as wide a number is with letters as far apart as a reader may set them. */
const SPACED = 1.2;

/** Below the last ruler where no knob hangs from it. */
const FOOT_WITHOUT_KNOB = 6;

/** About how wide a text is drawn, in units of the view box. */
const widthOf = (text: string, { fontSize }: RulersMeasures): number => text.length * LETTER * fontSize;

/**
 * All coordinates of the rulers. Values beyond a ruler's ends are drawn at its ends.
 * @throws RangeError if there is no ruler or the domain of one has no width.
 */
export function rulersLayout({ frame, lanes, rulers, needles }: RulersProps): RulersDrawing {
  const measures = rulersMeasuresOf(frame);
  const first = rulers[0];
  if (first === undefined) throw new RangeError('rulersLayout: rulers must hold at least one, got none');
  const common = scaleOf(first, measures);
  const at = (value: number): number => coordinate(common(within(value, first.domain)));
  const below = measures.head + lanes.length * measures.lanePitch;
  const foot = needles.some(({ handle }) => handle !== undefined) ? measures.foot : FOOT_WITHOUT_KNOB;
  const height = below + rulers.length * measures.rulerPitch + foot;
  return {
    measures,
    width: measures.width,
    height,
    lanes: lanes.map((lane, index) => drawLane({ lane, index, at, measures })),
    rulers: rulers.map((ruler, index) =>
      drawRuler({ ruler, y: below + index * measures.rulerPitch, measures }),
    ),
    needles: needles.map((needle) => ({ ...needle, x: at(needle.at) })),
    needleTop: measures.head,
    needleBottom: height - foot + 4,
  };
}

const within = (value: number, { lower, upper }: Interval): number => Math.min(upper, Math.max(lower, value));

const scaleOf = ({ domain }: Ruler, { axis }: RulersMeasures): LinearScale =>
  linearScale({ domain: [domain.lower, domain.upper], range: axis });

function drawRuler({
  ruler,
  y,
  measures,
}: {
  ruler: Ruler;
  y: number;
  measures: RulersMeasures;
}): RulerDrawing {
  const scale = scaleOf(ruler, measures);
  const at = (value: number): number => coordinate(scale(within(value, ruler.domain)));
  const bar = ({ lower, upper }: Interval) => ({
    x: at(lower),
    width: coordinate(at(upper) - at(lower)),
  });
  return {
    ruler,
    y,
    ticks: namedTicks(ruler, scale, measures),
    ...(ruler.strip && { strip: bar(ruler.strip) }),
    ...(ruler.ghost && { ghost: bar(ruler.ghost) }),
    ...(ruler.middle !== undefined && { middleX: at(ruler.middle) }),
    scale,
  };
}

/** Divisions inside the ruler, from left to right; numbers go to the landmarks first, and nowhere into another number. */
function namedTicks(ruler: Ruler, scale: LinearScale, measures: RulersMeasures): readonly TickDrawing[] {
  const { lower, upper } = ruler.domain;
  const inside = ruler.ticks.filter(({ at }) => at >= lower && at <= upper);
  const taken: { readonly from: number; readonly to: number }[] = [];
  const names = new Set<RulerTick>();
  for (const tick of [...inside].sort((a, b) => a.rank - b.rank)) {
    if (tick.text === '') continue;
    const half = widthOf(tick.text, measures) / 2;
    const x = scale(tick.at);
    const place = { from: x - half, to: x + half };
    const gap = GAP * measures.fontSize;
    const cut = place.from < 0 || x + SPACED * half > measures.width;
    if (cut || taken.some(({ from, to }) => place.from < to + gap && place.to > from - gap)) continue;
    taken.push(place);
    names.add(tick);
  }
  return inside
    .map((tick) => ({ ...tick, x: coordinate(scale(tick.at)), named: names.has(tick) }))
    .sort((a, b) => a.x - b.x);
}

/** Steps of a lane, with its words right of them where there is room, else left of them. */
function drawLane({
  lane,
  index,
  at,
  measures,
}: {
  lane: Lane;
  index: number;
  at: (value: number) => number;
  measures: RulersMeasures;
}): LaneDrawing {
  const xs = lane.stops.map(at);
  const gap = GAP * measures.fontSize + (lane.stops.length === 1 ? measures.knobRadius : 0);
  const right = Math.max(...xs) + gap;
  const left = Math.min(...xs) - gap;
  const wide = widthOf(lane.label, measures);
  const fitsRight = right + wide <= measures.width;
  const text =
    fitsRight || left < wide
      ? { x: coordinate(Math.max(0, Math.min(right, measures.width - wide))), anchor: 'start' as const }
      : { x: coordinate(left), anchor: 'end' as const };
  return { lane, y: measures.head + (index + 0.5) * measures.lanePitch, xs, text };
}
