import { describe, expect, it } from 'vitest';
import { placeDrawing, WIDTH } from '../../src/practice/place-drawing.ts';
import { type Figure, placesOf } from '../../src/questions/bank/figure.ts';
import { bankQuestions } from '../../src/questions/bank/index.ts';
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
