import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BandFrame } from '../../src/figures/reading-band.frame.ts';
import { rulersMeasuresOf } from '../../src/figures/rulers.frame.ts';
import { rulersLayout } from '../../src/figures/rulers.layout.ts';
import type { Ruler, RulersProps } from '../../src/figures/rulers.types.ts';

const frames: readonly BandFrame[] = ['wide', 'narrow', 'stage'];
const frame = fc.constantFrom(...frames);
const domain = fc
  .tuple(fc.double({ min: -100, max: 100, noNaN: true }), fc.double({ min: 0.1, max: 200, noNaN: true }))
  .map(([lower, width]) => ({ lower, upper: lower + width }));
const ruler = (id: string, own: { lower: number; upper: number }, more: Partial<Ruler> = {}): Ruler => ({
  id,
  title: id,
  reading: '',
  domain: own,
  ticks: [],
  ...more,
});
const props = (more: Partial<RulersProps>): RulersProps => ({
  frame: 'wide',
  lanes: [],
  rulers: [],
  needles: [],
  ...more,
});

describe('the geometry of rulers', () => {
  it('puts a value where a pointer finds it again, on every ruler', () => {
    fc.assert(
      fc.property(frame, domain, fc.double({ min: 0, max: 1, noNaN: true }), (where, own, share) => {
        const value = own.lower + share * (own.upper - own.lower);
        const [drawn] = rulersLayout(props({ frame: where, rulers: [ruler('a', own)] })).rulers;
        expect(drawn?.scale.invert(drawn.scale(value))).toBeCloseTo(value, 8);
      }),
    );
  });

  it('keeps everything between the ends of the rulers, however far out it is asked for', () => {
    fc.assert(
      fc.property(
        frame,
        domain,
        fc.array(fc.double({ noNaN: true, noDefaultInfinity: true })),
        (where, own, values) => {
          const [low = 0, high = 1] = [Math.min(...values, 0), Math.max(...values, 1)];
          const band = { lower: low, upper: high };
          const { rulers, lanes, needles, width } = rulersLayout(
            props({
              frame: where,
              rulers: [ruler('a', own, { strip: band, ghost: band, middle: low })],
              lanes: [{ id: 'l', label: 'words', stops: [low, high] }],
              needles: values.map((at) => ({ at })),
            }),
          );
          const [left, right] = rulersMeasuresOf(where).axis;
          const xs = [
            ...needles.map(({ x }) => x),
            ...(lanes[0]?.xs ?? []),
            rulers[0]?.strip?.x ?? left,
            (rulers[0]?.strip?.x ?? left) + (rulers[0]?.strip?.width ?? 0),
            rulers[0]?.middleX ?? left,
          ];
          for (const x of xs) {
            expect(x).toBeGreaterThanOrEqual(left - 0.01);
            expect(x).toBeLessThanOrEqual(right + 0.01);
          }
          expect(right).toBeLessThan(width);
        },
      ),
    );
  });

  it('lays lanes and rulers below each other without overlap', () => {
    fc.assert(
      fc.property(
        frame,
        fc.integer({ min: 0, max: 6 }),
        fc.integer({ min: 1, max: 4 }),
        (where, above, count) => {
          const own = { lower: 0, upper: 1 };
          const { lanes, rulers, height, needleBottom, needleTop } = rulersLayout(
            props({
              frame: where,
              lanes: Array.from({ length: above }, (_, index) => ({ id: `${index}`, label: '', stops: [0] })),
              rulers: Array.from({ length: count }, (_, index) => ruler(`${index}`, own)),
              needles: [{ at: 0, handle: 'a' }],
            }),
          );
          const ys = [...lanes.map(({ y }) => y), ...rulers.map(({ y }) => y)];
          expect(ys).toEqual([...ys].sort((a, b) => a - b));
          expect(new Set(ys).size).toBe(ys.length);
          expect(needleTop).toBeLessThan(needleBottom);
          expect(needleBottom + rulersMeasuresOf(where).knobRadius * 2).toBeLessThan(height);
        },
      ),
    );
  });

  it('names landmarks before other divisions, and no two numbers into each other', () => {
    const ticks = Array.from({ length: 61 }, (_, index) => ({
      at: index,
      text: String(100 + index),
      rank: index % 10 === 0 ? 0 : 1,
    }));
    for (const where of frames) {
      const own = { lower: 0, upper: 60 };
      const [drawn] = rulersLayout(props({ frame: where, rulers: [ruler('a', own, { ticks })] })).rulers;
      const named = drawn?.ticks.filter((tick) => tick.named) ?? [];
      const { fontSize, width } = rulersMeasuresOf(where);
      for (const [index, { x }] of named.entries()) {
        const next = named[index + 1];
        if (next) expect(next.x - x).toBeGreaterThan(3 * 0.58 * fontSize);
        expect(x - 1.5 * 0.58 * fontSize).toBeGreaterThanOrEqual(0);
        expect(x + 1.5 * 0.58 * fontSize).toBeLessThanOrEqual(width);
      }
      expect(named.map(({ at }) => at)).toEqual(expect.arrayContaining([20, 40]));
    }
  });

  it('leaves out divisions beyond the ends, and never names one without a text', () => {
    const ticks = [-1, 0, 0.5, 1, 2].map((at) => ({ at, text: at === 0.5 ? '' : String(at), rank: 0 }));
    const [drawn] = rulersLayout(props({ rulers: [ruler('a', { lower: 0, upper: 1 }, { ticks })] })).rulers;
    expect(drawn?.ticks.map(({ at, named }) => [at, named])).toEqual([
      [0, true],
      [0.5, false],
      [1, true],
    ]);
  });

  it('writes the words of a lane where they are not cut off', () => {
    fc.assert(
      fc.property(
        frame,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.integer({ min: 0, max: 20 }),
        (where, from, to, letters) => {
          const { lanes, width } = rulersLayout(
            props({
              frame: where,
              rulers: [ruler('a', { lower: 0, upper: 1 })],
              lanes: [{ id: 'l', label: 'x'.repeat(letters), stops: [from, to] }],
            }),
          );
          const text = lanes[0]?.text ?? { x: -1, anchor: 'start' };
          const wide = letters * 0.58 * rulersMeasuresOf(where).fontSize;
          const [left, right] = text.anchor === 'start' ? [text.x, text.x + wide] : [text.x - wide, text.x];
          expect(left).toBeGreaterThanOrEqual(-0.02);
          if (wide <= width) expect(right).toBeLessThanOrEqual(width + 0.02);
        },
      ),
    );
  });

  it('is refused without a ruler, or for one without a width', () => {
    expect(() => rulersLayout(props({}))).toThrow('rulersLayout: rulers must hold at least one');
    expect(() => rulersLayout(props({ rulers: [ruler('a', { lower: 1, upper: 1 })] }))).toThrow(
      'linearScale',
    );
  });
});

describe('the foot of the rulers', () => {
  it('has room for a knob only where one hangs there', () => {
    const own = { lower: 0, upper: 1 };
    const heightWith = (needles: RulersProps['needles']): number =>
      rulersLayout(props({ rulers: [ruler('a', own)], needles })).height;
    expect(heightWith([{ at: 0 }])).toBe(heightWith([]));
    expect(heightWith([{ at: 0, handle: 'a' }])).toBeGreaterThan(heightWith([]) + 20);
  });
});
