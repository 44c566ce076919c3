import type { ChainFigure, Figure, RulerFigure, ZonesFigure } from '../questions/bank/figure.ts';
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
import { waveDrawing } from './wave-drawing.ts';

const ROW = 44;
/** Room that a letter takes, either way. */
const LETTER = 16;

/** Texts of the numbers on an axis come from the caller. */
type Write = (value: number) => string;

/** Numbers at an axis, so many that they do not touch. */
function ticks(
  axis: { from: number; to: number; step: number },
  y: number,
  write: Write,
): readonly Lettering[] {
  const count = Math.round((axis.to - axis.from) / axis.step);
  const every = Math.ceil(count / 5);
  return Array.from({ length: Math.floor(count / every) + 1 }, (_, k) => {
    const value = axis.from + k * every * axis.step;
    return { x: along(axis, value), y, text: write(value), anchor: 'middle', as: 'tick' } as const;
  });
}

/** Rows for letters along an axis: one that would touch its neighbour's stands a row higher. */
function rowsOf(places: readonly number[]): readonly number[] {
  const rows: number[] = [];
  for (const [at, x] of places.entries()) {
    const taken = places.slice(0, at).flatMap((other, k) => (Math.abs(other - x) < LETTER ? [rows[k]] : []));
    rows.push([0, 1, 2, 3].find((row) => !taken.includes(row)) ?? 0);
  }
  return rows;
}

function ruler(figure: RulerFigure, write: Write): PlaceDrawing {
  const places = figure.marks.map(({ at }) => along(figure, at));
  const rows = rowsOf(places);
  const top = 20 + LETTER * Math.max(0, ...rows);
  const base = top + 54;
  const count = Math.round((figure.to - figure.from) / figure.step);
  const letterAt = (mark: number): number => top - LETTER * (rows[mark] ?? 0);
  return {
    width: WIDTH,
    height: base + 52,
    strokes: [
      { path: `M${EDGE} ${base}H${WIDTH - EDGE}`, as: 'axis' },
      ...Array.from({ length: count + 1 }, (_, k): Stroke => {
        return { path: `M${along(figure, figure.from + k * figure.step)} ${base}v8`, as: 'axis' };
      }),
      ...places.map((x, mark): Stroke => ({ path: `M${x} ${letterAt(mark) + 6}V${base}`, as: 'mark' })),
    ],
    letters: [
      ...ticks(figure, base + 25, write),
      { x: WIDTH - EDGE, y: base + 44, text: figure.unit, anchor: 'end', as: 'tick' },
      ...figure.marks.map(({ label }, mark): Lettering => {
        return { x: places[mark] ?? 0, y: letterAt(mark), text: label, anchor: 'middle', as: 'label' };
      }),
    ],
    targets: figure.marks.map(({ id }, mark) => {
      return { id, x: round((places[mark] ?? 0) - FINGER / 2), y: 4, width: FINGER, height: base };
    }),
  };
}

function chain({ boxes }: ChainFigure): PlaceDrawing {
  const [height, gap] = [ROW, 14];
  const top = (row: number): number => 4 + row * (height + gap);
  return {
    width: WIDTH,
    height: top(boxes.length) - gap + 4,
    strokes: boxes.flatMap((_, row): readonly Stroke[] => {
      const box: Stroke = { path: `M4 ${top(row)}H${WIDTH - 4}v${height}H4z`, as: 'line' };
      return row === 0 ? [box] : [{ path: `M${WIDTH / 2} ${top(row) - gap}v${gap}`, as: 'mark' }, box];
    }),
    letters: boxes.flatMap(({ label, note }, row): readonly Lettering[] => [
      { x: 12, y: top(row) + 27, text: label, anchor: 'start', as: 'label' },
      { x: WIDTH - 12, y: top(row) + 27, text: note, anchor: 'end', as: 'tick' },
    ]),
    targets: boxes.map(({ id }, row) => ({ id, x: 4, y: top(row), width: WIDTH - 8, height })),
  };
}

const asideOf = (limit: number): readonly [off: number, anchor: Lettering['anchor']] =>
  limit >= 0 ? [-5, 'end'] : [5, 'start'];

function zones(figure: ZonesFigure, write: Write): PlaceDrawing {
  const top = 30;
  const base = top + ROW * figure.readings.length;
  const middle = (row: number): number => top + ROW * row + ROW / 2;
  const limits = [figure.lower, figure.upper].filter((limit) => limit !== undefined);
  const numbers = ticks({ ...figure, step: 1 }, base + 20, write);
  return {
    width: WIDTH,
    height: base + 50,
    strokes: [
      { path: `M${EDGE} ${base}H${WIDTH - EDGE}`, as: 'axis' },
      ...numbers.map(({ x }): Stroke => ({ path: `M${x} ${base}v6`, as: 'axis' })),
      ...limits.map(
        (limit): Stroke => ({ path: `M${along(figure, limit)} ${top - 6}V${base}`, as: 'limit' }),
      ),
      ...figure.readings.map(({ at, halfWidth }, row): Stroke => {
        const [low, high] = [along(figure, at - halfWidth), along(figure, at + halfWidth)];
        return { path: `M${low} ${middle(row) + 8}H${high}`, as: 'span' };
      }),
      ...figure.readings.map(
        ({ at }, row): Stroke => ({ path: `M${along(figure, at)} ${middle(row)}v16`, as: 'mark' }),
      ),
    ],
    letters: [
      ...limits.map((limit): Lettering => {
        return { x: along(figure, limit), y: 18, text: write(limit), anchor: 'middle', as: 'tick' };
      }),
      ...figure.readings.map(({ at, label }, row): Lettering => {
        const x = along(figure, at);
        const limit = limits.map((each) => along(figure, each) - x).find((off) => Math.abs(off) < LETTER);
        // beside a limit the letter stands on the other side of its mark
        const [off, anchor] = limit === undefined ? ([0, 'middle'] as const) : asideOf(limit);
        return { x: round(x + off), y: middle(row) - 5, text: label, anchor, as: 'label' };
      }),
      ...numbers,
      { x: WIDTH - EDGE, y: base + 40, text: figure.unit, anchor: 'end', as: 'tick' },
    ],
    targets: figure.readings.map(({ id }, row) => {
      return { id, x: EDGE, y: top + ROW * row, width: WIDTH - 2 * EDGE, height: ROW };
    }),
  };
}

/** The strokes, words and targets of a figure with places. */
export function placeDrawing(figure: Figure, write: Write): PlaceDrawing {
  switch (figure.figure) {
    case 'ruler':
      return ruler(figure, write);
    case 'wave':
      return waveDrawing(figure);
    case 'chain':
      return chain(figure);
    case 'zones':
      return zones(figure, write);
  }
}
