import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isBandFrame, measuresOf } from '../../src/figures/reading-band.frame.ts';
import { halfSpanFor, readingBandLayout } from '../../src/figures/reading-band.layout.ts';
import type { BandProps, BandRow } from '../../src/figures/reading-band.types.ts';
import { clubSheet } from '../../src/sheet/club.ts';
import { bandOf } from './demonstration.ts';

const frame = fc.constantFrom('wide' as const, 'narrow' as const, 'stage' as const);

/** Any rung: a strip about a middle, limits around it, a curve over it. */
const row = (centre: number): fc.Arbitrary<BandRow> =>
  fc
    .record({
      id: fc.string(),
      half: fc.double({ min: 1e-4, max: 6, noNaN: true }),
      limit: fc.double({ min: 1e-4, max: 9, noNaN: true }),
      open: fc.boolean(),
      handle: fc.boolean(),
    })
    .map(({ id, half, limit, open, handle }) => ({
      id,
      label: 'A part',
      detail: '',
      number: '',
      dominant: false,
      handle,
      strip: { lower: centre - half, upper: centre + half },
      limits: { lower: centre - limit, upper: centre + limit, open },
      curve: [-1, -0.5, 0, 0.5, 1].map((share) => ({
        x: centre + share * half,
        density: 1 - Math.abs(share),
      })),
    }));

const props: fc.Arbitrary<BandProps> = fc
  .tuple(frame, fc.double({ min: -30, max: 60, noNaN: true }), fc.double({ min: 0.1, max: 40, noNaN: true }))
  .chain(([place, centreDbm, halfSpanDb]) =>
    fc.record({
      frame: fc.constant(place),
      rows: fc.array(row(centreDbm), { minLength: 1, maxLength: 5 }),
      centreDbm: fc.constant(centreDbm),
      halfSpanDb: fc.constant(halfSpanDb),
    }),
  );

const onPaper = (value: number): number => Math.round(value * 100) / 100;

describe('coordinates of the reading band', () => {
  it('turn back into the level that is drawn there', () => {
    fc.assert(
      fc.property(props, (given) => {
        const { rows, scale } = readingBandLayout(given);
        const step =
          (2 * given.halfSpanDb) / (measuresOf(given.frame).axis[1] - measuresOf(given.frame).axis[0]);
        for (const { row: drawn, handleX } of rows) {
          if (handleX === undefined || !drawn.strip) continue;
          const end = Math.min(drawn.strip.upper, given.centreDbm + given.halfSpanDb);
          expect(Math.abs(scale.invert(handleX) - end)).toBeLessThan(0.02 * step);
        }
      }),
    );
  });

  it('put the middle of every strip on the middle of the axis, and its handle at its end', () => {
    fc.assert(
      fc.property(props, (given) => {
        const { rows, centreX } = readingBandLayout(given);
        for (const { bar, handleX, row: drawn } of rows) {
          if (!bar) throw new Error('wish a bar');
          expect(Math.abs(bar.x + bar.width / 2 - centreX)).toBeLessThan(0.03);
          expect(handleX).toEqual(drawn.handle ? onPaper(bar.x + bar.width) : undefined);
        }
      }),
    );
  });

  it('are rounded to a hundredth and stay on the axis', () => {
    fc.assert(
      fc.property(props, (given) => {
        const { rows, measures, levels, powers } = readingBandLayout(given);
        const [first, last] = measures.axis;
        for (const { bar, marks, y } of rows) {
          const xs = [bar?.x, bar && onPaper(bar.x + bar.width), marks?.lower, marks?.upper];
          for (const x of xs) if (x !== undefined) expect(x >= first && x <= last, String(x)).toBe(true);
          for (const value of [...xs, y]) if (value !== undefined) expect(value).toBe(onPaper(value));
        }
        for (const { x } of [...levels, ...powers]) {
          expect(x).toBe(onPaper(x));
          expect(x >= first - 0.01 && x <= last + 0.01).toBe(true);
        }
      }),
    );
  });

  it('leave room between the numbers of two ticks', () => {
    fc.assert(
      fc.property(props, (given) => {
        const { levels, powers, measures } = readingBandLayout(given);
        for (const axis of [levels, powers]) {
          const named = axis.filter((tick) => tick.named).map(({ x }) => x);
          named.slice(1).forEach((x, index) => {
            expect(x - (named[index] ?? 0)).toBeGreaterThanOrEqual(measures.tickRoom - 0.01);
          });
        }
      }),
    );
  });

  it('keep one row off the next by the same step', () => {
    const { rows, measures, axisTop, axisBottom, height } = readingBandLayout(bandOf(clubSheet()));
    rows.slice(1).forEach(({ y }, index) => {
      expect(y - (rows[index]?.y ?? 0)).toBe(measures.rowPitch);
    });
    expect(axisTop).toBeLessThan(rows[0]?.y ?? 0);
    expect(axisBottom).toBeGreaterThanOrEqual((rows.at(-1)?.y ?? 0) + measures.rowPitch);
    expect(axisBottom).toBeLessThan(height);
  });

  it('are refused for an axis without a width', () => {
    expect(() => readingBandLayout({ frame: 'wide', rows: [], centreDbm: 27, halfSpanDb: 0 })).toThrow(
      /linearScale: domain and range need a width, got 27, 27/,
    );
  });
});

describe('a magnified copy', () => {
  it('is drawn of strips too thin to see, by a power of ten, and clear of the strip and the words', () => {
    fc.assert(
      fc.property(props, (given) => {
        const { rows, measures } = readingBandLayout(given);
        for (const { bar, magnifier } of rows) {
          if (!bar) throw new Error('wish a bar');
          if (!magnifier) {
            const room = 0.28 * (measures.axis[1] - measures.axis[0]);
            expect(bar.width >= 12 || bar.width <= 0 || bar.width * 10 > room).toBe(true);
            continue;
          }
          expect(bar.width).toBeLessThan(12);
          expect(Math.log10(magnifier.factor) % 1).toBe(0);
          expect(magnifier.factor).toBeGreaterThanOrEqual(10);
          expect(Math.abs(magnifier.width - bar.width * magnifier.factor)).toBeLessThan(0.01);
          expect(magnifier.x + magnifier.width).toBeLessThan(bar.x);
          expect(magnifier.x).toBeGreaterThan(measures.axis[0]);
        }
      }),
    );
  });
});

describe('end marks', () => {
  const drawn = (half: number, limit: number, open: boolean) => {
    const strip = { lower: 27 - half, upper: 27 + half };
    const limits = { lower: 27 - limit, upper: 27 + limit, open };
    const one = { id: 'a', label: '', detail: '', number: '', dominant: false, handle: false, strip, limits };
    return readingBandLayout({ frame: 'wide', rows: [one], centreDbm: 27, halfSpanDb: 2 }).rows[0]?.marks;
  };

  it('stand inside the strip where every part has a limit: the limits are a guarantee', () => {
    expect(drawn(1, 0.5, false)).toMatchObject({ open: false });
  });

  it('are left out inside the strip where a part has none: they would guarantee nothing', () => {
    expect(drawn(1, 0.5, true)).toBeUndefined();
    expect(drawn(1, 1, true)).toBeUndefined();
  });

  it('stand open beyond the strip where a part has none', () => {
    expect(drawn(0.5, 1, true)).toMatchObject({ open: true });
  });
});

describe('half of the axis', () => {
  const reach = fc.double({ min: 0.001, max: 300, noNaN: true });

  it('holds the reach with room to spare, and never shrinks when it grows', () => {
    fc.assert(
      fc.property(reach, reach, (a, b) => {
        expect(halfSpanFor(a)).toBeGreaterThan(a);
        if (a <= b) expect(halfSpanFor(a)).toBeLessThanOrEqual(halfSpanFor(b));
      }),
    );
  });

  it('is a round number of decibels', () => {
    expect([0.05, 0.5, 0.96, 3.9, 40, 60].map(halfSpanFor)).toEqual([0.1, 0.75, 1.5, 6, 48, 70]);
  });
});

describe('lines of a specification', () => {
  const lines = (lower: number, upper: number) =>
    readingBandLayout({
      frame: 'wide',
      rows: [],
      centreDbm: 27,
      halfSpanDb: 1,
      specification: { lower, upper },
    }).specification;

  it('are drawn where they fall on the axis and nowhere else', () => {
    expect(lines(26.5, 27.5)).toEqual({ lower: 407.5, upper: 642.5 });
    expect(lines(20, 27.5)).toEqual({ upper: 642.5 });
    expect(lines(26.5, Number.POSITIVE_INFINITY)).toEqual({ lower: 407.5 });
  });
});

describe('frames', () => {
  it('are known by name', () => {
    expect(['wide', 'narrow', 'stage'].every(isBandFrame)).toBe(true);
    expect(isBandFrame('toString')).toBe(false);
    expect(isBandFrame(undefined)).toBe(false);
  });
});
