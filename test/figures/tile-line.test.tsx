import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import type { BandFrame } from '../../src/figures/reading-band.frame.ts';
import { TileLine } from '../../src/figures/TileLine.tsx';
import { MOST_TILES, slotAt, tileLineLayout, tileMeasuresOf } from '../../src/figures/tile-line.layout.ts';
import type { TileValue } from '../../src/widgets/level-line/spec.ts';
import { lineOf } from '../../src/widgets/level-line/state.ts';
import { tilesOf } from '../../src/widgets/level-line/words.ts';

const frames: readonly BandFrame[] = ['wide', 'narrow', 'stage'];
const frame = fc.constantFrom(...frames);
const full = tilesOf(
  lineOf(Array.from({ length: MOST_TILES }, () => ({ kind: 'gain' as const, value: -20.5 }))).tiles,
);
const lines: Readonly<Record<string, readonly TileValue[]>> = {
  'transmitter and two pads': [
    { kind: 'level', value: 27 },
    { kind: 'gain', value: -20 },
    { kind: 'gain', value: -6 },
  ],
  'two levels': [
    { kind: 'level', value: 17 },
    { kind: 'level', value: 17 },
  ],
  'a level less a level': [
    { kind: 'level', value: 27 },
    { kind: 'less', value: 17 },
  ],
  'no tile': [],
};
const draw = (name: string, where: BandFrame = 'wide'): string =>
  render(
    <TileLine
      frame={where}
      tiles={tilesOf(lineOf(lines[name] ?? []).tiles)}
      nothing="nothing"
      name="The line"
      description="What it comes to"
    />,
  );

describe('the geometry of a line of tiles', () => {
  it('finds the place of each tile again from its middle', () => {
    for (const where of frames)
      tileLineLayout({ frame: where, tiles: full }).tiles.forEach(({ middle }, index) => {
        expect(slotAt({ x: middle, frame: where, count: full.length })).toBe(index);
      });
  });

  it('never answers with a place that the line does not have', () => {
    fc.assert(
      fc.property(
        frame,
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.integer({ min: 1, max: MOST_TILES }),
        (where, x, count) => {
          const slot = slotAt({ x, frame: where, count });
          expect(Number.isInteger(slot) && slot >= 0 && slot < count).toBe(true);
        },
      ),
    );
  });

  it('goes from left to right: further along the line is never an earlier place', () => {
    fc.assert(
      fc.property(
        frame,
        fc.double({ min: 0, max: 900, noNaN: true }),
        fc.double({ min: 0, max: 900, noNaN: true }),
        (where, a, b) => {
          const at = (x: number): number => slotAt({ x, frame: where, count: MOST_TILES });
          expect(at(Math.min(a, b))).toBeLessThanOrEqual(at(Math.max(a, b)));
        },
      ),
    );
  });

  it('has room for a full line, and lays no tile on another', () => {
    for (const where of frames) {
      const { tiles } = tileLineLayout({ frame: where, tiles: full });
      const { width, tileWidth } = tileMeasuresOf(where);
      for (const [index, { x }] of tiles.entries()) {
        const next = tiles[index + 1];
        if (next) expect(next.x).toBeGreaterThanOrEqual(x + tileWidth);
        else expect(x + tileWidth).toBeLessThanOrEqual(width);
      }
    }
  });

  it('is not asked for a place that is none', () => {
    expect(() => slotAt({ x: Number.NaN, frame: 'wide', count: 2 })).toThrow('slotAt: x must be finite');
    expect(() => slotAt({ x: 1, frame: 'wide', count: 0 })).toThrow('slotAt');
  });
});

describe('the line of tiles', () => {
  it.each(Object.keys(lines))('is drawn as it was before: %s', (name) => {
    expect(draw(name).replaceAll('><', '>\n<')).toMatchSnapshot();
  });

  it.each(Object.keys(lines))('draws finite numbers only, and asks for no style of its own: %s', (name) => {
    for (const where of frames) expect(draw(name, where)).not.toMatch(/NaN|Infinity|undefined| style=/);
  });

  it('says that a sum of two levels is nothing, and gives it no number', () => {
    expect(draw('two levels')).toContain('>nothing</text>');
    expect(draw('two levels')).not.toContain('34');
  });
});
