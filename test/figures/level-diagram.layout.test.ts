import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isLevelFrame, type LevelFrame, levelMeasures } from '../../src/figures/level-diagram.frame.ts';
import {
  type LevelDiagramProps,
  type LevelRow,
  levelDiagramLayout,
  levelSpan,
} from '../../src/figures/level-diagram.layout.ts';

const frames: readonly LevelFrame[] = ['wide', 'narrow', 'stage'];
const gains = fc.array(fc.double({ min: -40, max: 30, noNaN: true }), { minLength: 1, maxLength: 6 });

/** A line of any gains from any start. */
const props: fc.Arbitrary<LevelDiagramProps> = fc
  .record({
    frame: fc.constantFrom(...frames),
    start: fc.double({ min: -20, max: 50, noNaN: true }),
    gains,
    limit: fc.double({ min: -40, max: 50, noNaN: true }),
  })
  .map(({ frame, start, gains: steps, limit }) => {
    let from = start;
    const rows = steps.map((gain, index): LevelRow => {
      const row = {
        id: `r${index}`,
        label: 'A part',
        detail: '',
        number: '',
        from,
        to: from + gain,
        limit,
        over: false,
        handle: true,
      };
      from = row.to;
      return row;
    });
    return { frame, rows, within: levelSpan(rows.flatMap((row) => [row.from, row.to])) };
  });

const pointsOf = (path: string) =>
  [...path.matchAll(/[ML]([\d.-]+) ([\d.-]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);

describe('coordinates of the level diagram', () => {
  it('turn back into the level behind each part, so that its knob stays under the pointer', () => {
    fc.assert(
      fc.property(props, (given) => {
        const { rows, scale } = levelDiagramLayout(given);
        const perUnit = (given.within.upper - given.within.lower) / 100;
        for (const { row, toX } of rows)
          expect(Math.abs(scale.invert(toX) - row.to)).toBeLessThan(0.01 * perUnit);
      }),
    );
  });

  it('make one staircase: across in each row, straight down between two', () => {
    fc.assert(
      fc.property(props, (given) => {
        const { stairs, rows } = levelDiagramLayout(given);
        const points = pointsOf(stairs);
        expect(points).toHaveLength(2 * rows.length);
        points.slice(1).forEach(([x, y], index) => {
          const [lastX, lastY] = points[index] ?? [0, 0];
          expect(x === lastX || y === lastY).toBe(true);
          expect(y).toBeGreaterThanOrEqual(lastY);
        });
      }),
    );
  });

  it('go to the left for a loss and to the right for a gain, and keep to the axis', () => {
    fc.assert(
      fc.property(props, (given) => {
        const { rows, measures } = levelDiagramLayout(given);
        const [left, right] = measures.axis;
        for (const { row, fromX, toX, limitX } of rows) {
          if (Math.abs(row.to - row.from) > 0.5)
            expect(Math.sign(toX - fromX)).toBe(Math.sign(row.to - row.from));
          for (const x of [fromX, toX, limitX ?? left])
            expect(x >= left - 0.01 && x <= right + 0.01).toBe(true);
          expect(limitX === undefined).toBe(
            (row.limit ?? 0) < given.within.lower || (row.limit ?? 0) > given.within.upper,
          );
        }
      }),
    );
  });

  it('name no tick so close to the edge or to another that its number would be cut or touched', () => {
    fc.assert(
      fc.property(props, (given) => {
        const { levels, powers, measures } = levelDiagramLayout(given);
        for (const axis of [levels, powers]) {
          const named = axis.filter((tick) => tick.named).map(({ x }) => x);
          expect(named.every((x) => x >= measures.tickRoom / 2 - 1)).toBe(true);
          expect(named.every((x) => x <= measures.width - measures.tickRoom / 2 + 1)).toBe(true);
          named.slice(1).forEach((x, index) => {
            expect(x - (named[index] ?? 0)).toBeGreaterThanOrEqual(measures.tickRoom - 0.01);
          });
        }
      }),
    );
  });

  it('draw another way down only where there is one, and skip what it does not pass', () => {
    const [one] = fc.sample(
      props.filter(({ rows }) => rows.length > 2),
      1,
    );
    if (!one) throw new Error('wish a sample');
    const plain = levelDiagramLayout(one);
    expect([plain.ghost, plain.left]).toEqual([undefined, undefined]);
    const left = one.rows.map((row, index) => (index === 1 ? undefined : row));
    expect(pointsOf(levelDiagramLayout({ ...one, left }).left ?? '')).toHaveLength(2 * (one.rows.length - 1));
  });
});

describe('the axis of levels', () => {
  it('ends on tens and holds every level with room to pull', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -90, max: 90, noNaN: true }), { minLength: 1 }), (levels) => {
        const { lower, upper } = levelSpan(levels);
        expect(lower).toBeLessThanOrEqual(Math.min(...levels) - 4);
        expect(upper).toBeGreaterThanOrEqual(Math.max(...levels) + 4);
        expect([Math.abs(lower % 10), Math.abs(upper % 10)]).toEqual([0, 0]);
      }),
    );
  });
});

describe('frames of the level diagram', () => {
  it('are known by name', () => {
    expect(frames.every(isLevelFrame)).toBe(true);
    expect([undefined, 'toString', 'page'].some((name) => isLevelFrame(name))).toBe(false);
    expect(levelMeasures('stage').showDetail).toBe(false);
  });
});
