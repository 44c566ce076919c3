import { describe, expect, it } from 'vitest';
import { placeDrawing } from '../../src/practice/place-drawing.ts';
import { WIDTH } from '../../src/practice/place-parts.ts';
import { shown } from '../../src/practice/shown.ts';
import { type Figure, placesOf } from '../../src/questions/bank/figure.ts';
import { bankQuestion, bankQuestions } from '../../src/questions/bank/index.ts';
import { sitting } from '../../src/questions/bank/sitting.ts';

const write = (value: number): string => String(Math.round(10 * value) / 10);

/** Figures of the bank with a few seeds, and one of each kind that is certain to be there. */
const figures: readonly Figure[] = [
  {
    figure: 'ruler',
    name: 'ruler',
    unit: 'dB',
    from: -10,
    to: 30,
    step: 2,
    marks: [
      { id: 'a', label: 'A', at: -10 },
      { id: 'b', label: 'B', at: 30 },
    ],
  },
  {
    figure: 'wave',
    name: 'wave',
    heights: [
      { id: 'peak', label: 'A', turns: 0.25, from: 0, to: 1 },
      { id: 'whole', label: 'B', turns: 1.25, from: -1, to: 1 },
    ],
  },
  {
    figure: 'chain',
    name: 'chain',
    boxes: [
      { id: 'transmitter', label: 'Transmitter', note: '27 dBm' },
      { id: 'pad', label: 'Pad', note: '20 dB' },
      { id: 'meter', label: 'Meter', note: '' },
    ],
  },
  {
    figure: 'zones',
    name: 'zones',
    unit: 'dBm',
    from: 24,
    to: 30,
    lower: 25.5,
    upper: 28.5,
    readings: [
      { id: 'in', label: 'A', at: 27, halfWidth: 0.4 },
      { id: 'edge', label: 'B', at: 28.4, halfWidth: 0.6 },
    ],
  },
  ...bankQuestions()
    .filter(({ kind }) => kind === 'place')
    .flatMap((question) => [1, 2, 3, 4].map((seed) => sitting(question, seed).payload))
    .flatMap((payload) => (payload.kind === 'place' ? [payload.figure] : [])),
];

describe.each(figures.map((figure, at) => [`${figure.figure} ${at}`, figure] as const))(
  'the figure %s',
  (_, figure) => {
    const drawing = placeDrawing(figure, write);

    it('has a target for each place, in its order', () => {
      expect(drawing.targets.map(({ id }) => id)).toEqual(placesOf(figure));
    });

    it('stays within its frame', () => {
      for (const { x, y, width, height } of drawing.targets) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(x + width).toBeLessThanOrEqual(WIDTH);
        expect(y + height).toBeLessThanOrEqual(drawing.height);
      }
      for (const { x, y } of drawing.letters) {
        expect(x).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(WIDTH);
        expect(y).toBeGreaterThan(0);
        expect(y).toBeLessThan(drawing.height);
      }
    });

    it('draws with numbers alone', () => {
      for (const { path } of drawing.strokes) expect(path).toMatch(/^[MLHVhvz\d .-]+$/);
    });

    it('writes no two words in one place', () => {
      const places = drawing.letters
        .filter(({ text }) => text !== '')
        .map(({ x, y, anchor }) => `${x} ${y} ${anchor}`);
      expect(new Set(places).size).toBe(places.length);
    });

    it('has letters that can be told apart', () => {
      const labels = drawing.letters.filter(({ as }) => as === 'label');
      labels.forEach((one, at) => {
        for (const other of labels.slice(at + 1))
          expect(Math.abs(one.x - other.x) >= 12 || Math.abs(one.y - other.y) >= 12).toBe(true);
      });
    });
  },
);

describe('a ruler', () => {
  it('has its ends where the axis ends, and equal steps between', () => {
    const [ruler] = figures;
    if (ruler?.figure !== 'ruler') throw new Error('wish a ruler first');
    const { targets } = placeDrawing(ruler, write);
    const [first, last] = targets.map(({ x, width }) => x + width / 2);
    const middle = placeDrawing({ ...ruler, marks: [{ id: 'm', label: 'M', at: 10 }] }, write).targets[0];
    expect((middle?.x ?? 0) + (middle?.width ?? 0) / 2).toBeCloseTo(((first ?? 0) + (last ?? 0)) / 2, 6);
  });
});

describe('zones', () => {
  it('without a limit draw none', () => {
    const zones = figures.find((figure) => figure.figure === 'zones');
    if (zones?.figure !== 'zones') throw new Error('wish zones');
    const limits = (figure: Figure): number =>
      placeDrawing(figure, write).strokes.filter(({ as }) => as === 'limit').length;
    expect(limits(zones)).toBe(2);
    const { lower: _, ...open } = zones;
    expect(limits(open)).toBe(1);
  });
});

describe('a wave', () => {
  const waves = figures.filter((figure) => figure.figure === 'wave');

  it('has letters that touch neither the curve, nor the middle line, nor a marked height', () => {
    expect(waves.length).toBeGreaterThan(1);
    for (const figure of waves) {
      const { letters, strokes } = placeDrawing(figure, write);
      // corners of every stroke, and of a curve points between them, as the paths say
      const points = strokes.flatMap(({ path, as }) =>
        as === 'line'
          ? [...path.matchAll(/([\d.]+) ([\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const)
          : [],
      );
      const bars = strokes.flatMap(({ path, as }) => {
        const [, x, top, bottom] = /^M([\d.]+) ([\d.]+)V([\d.]+)/.exec(path) ?? [];
        return as === 'mark' ? [{ x: Number(x), top: Number(bottom), bottom: Number(top) }] : [];
      });
      expect(points.length).toBeGreaterThan(50);
      expect(bars).toHaveLength(figure.heights.length);
      for (const { x, y } of letters) {
        const isNear = (px: number, py: number): boolean =>
          px > x - 3 && px < x + 13 && py > y - 13 && py < y + 3;
        expect(points.filter(([px, py]) => isNear(px, py))).toEqual([]);
        expect(x < WIDTH - 24 && isNear(x, 90)).toBe(false); // the middle line ends there
        for (const bar of bars)
          expect(bar.x > x - 3 && bar.x < x + 13 && bar.bottom > y - 13 && bar.top < y + 3).toBe(false);
      }
    }
  });
});

describe('numbers at an axis', () => {
  it('are whole decibels, and limits have the decimals that they need', () => {
    const { drawing } = shown(sitting(bankQuestion('point-at-verdict'), 1));
    const ticks = (drawing?.letters ?? []).filter(({ as }) => as === 'tick').map(({ text }) => text);
    expect(ticks.slice(0, 2)).toEqual(['28.5', '31.5']);
    expect(ticks.slice(2)).toEqual(['26', '28', '30', '32', 'dBm']);
  });
});
