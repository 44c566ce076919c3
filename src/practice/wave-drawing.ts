import type { WaveFigure } from '../questions/bank/figure.ts';
import {
  along,
  EDGE,
  FINGER,
  type Lettering,
  type PlaceDrawing,
  round,
  type Stroke,
  WIDTH,
} from './place-parts.ts';

const [MIDDLE, CREST, TURNS] = [90, 62, 1.5] as const;
/** Room that a letter takes, and how far it is to keep from every stroke. */
const LETTER = { width: 11, height: 11, clear: 5 } as const;

const at = (turn: number): number => along({ from: 0, to: TURNS }, turn);
const level = (height: number): number => round(MIDDLE - CREST * height);

interface Point {
  readonly x: number;
  readonly y: number;
}

/** The sine, close enough for a polyline. */
const CURVE: readonly Point[] = Array.from({ length: 73 }, (_, k) => {
  const turn = (TURNS * k) / 72;
  return { x: at(turn), y: level(Math.sin(2 * Math.PI * turn)) };
});

/** How far a letter, whose left lower corner is given, keeps from a point; nought within it. */
function distance({ x, y }: Point, corner: Point): number {
  const across = Math.max(corner.x - x, 0, x - corner.x - LETTER.width);
  const down = Math.max(corner.y - LETTER.height - y, 0, y - corner.y);
  return Math.hypot(across, down);
}

/** Points of the strokes that a letter must not touch: the curve, the middle line, and the marked heights. */
function strokePoints({ heights }: WaveFigure): readonly Point[] {
  const line = CURVE.map(({ x }) => ({ x, y: MIDDLE }));
  const marks = heights.flatMap(({ turns, from, to }) =>
    Array.from({ length: 13 }, (_, k) => ({ x: at(turns), y: level(from + ((to - from) * k) / 12) })),
  );
  return [...CURVE, ...line, ...marks];
}

/** Where the letter of a height stands: beside its middle if there is room, else as near to it as there is. */
function letterOf(
  { turns, from, to, label }: WaveFigure['heights'][number],
  strokes: readonly Point[],
): Lettering {
  const middle = level((from + to) / 2) + LETTER.height / 2;
  const places = [0, -8, 8, -16, 16, -24, 24, -32, -40].flatMap((down) =>
    [at(turns) + 7, at(turns) - 7 - LETTER.width].map((x) => ({ x, y: round(middle + down) })),
  );
  const room = (place: Point): number => Math.min(...strokes.map((point) => distance(point, place)));
  const inside = places.filter(({ x, y }) => x + LETTER.width <= WIDTH && x >= 0 && y >= LETTER.height + 2);
  const found =
    inside.find((place) => room(place) >= LETTER.clear) ?? inside.toSorted((a, b) => room(b) - room(a))[0];
  const { x, y } = found ?? { x: at(turns), y: middle };
  return { x: round(x), y, text: label, anchor: 'start', as: 'label' };
}

/** A sine with marked heights. */
export function waveDrawing(figure: WaveFigure): PlaceDrawing {
  const { heights } = figure;
  const strokes = strokePoints(figure);
  return {
    width: WIDTH,
    height: 180,
    strokes: [
      { path: `M${EDGE} ${MIDDLE}H${WIDTH - EDGE}`, as: 'axis' },
      { path: `M${CURVE.map(({ x, y }) => `${x} ${y}`).join('L')}`, as: 'line' },
      ...heights.map(({ turns, from, to }): Stroke => {
        const [x, a, b] = [at(turns), level(from), level(to)];
        return { path: `M${x} ${a}V${b}M${x - 5} ${a}h10M${x - 5} ${b}h10`, as: 'mark' };
      }),
    ],
    letters: heights.map((height) => letterOf(height, strokes)),
    targets: heights.map(({ id, turns, from, to }) => {
      const top = Math.min(level(from), level(to));
      const height = Math.max(FINGER, Math.abs(level(from) - level(to)));
      return { id, x: round(at(turns) - FINGER / 2), y: round(top), width: FINGER, height };
    }),
  };
}
