import { encode } from 'uqr';
import { describe, expect, it } from 'vitest';
import { qrDrawing } from '../../src/stage/qr.ts';

const address = 'https://example.org/learn/traceability/the-chain-to-the-definition/';
const drawing = qrDrawing(address);

/** The drawing filled in again, module by module. */
function filled({ size, path }: { size: number; path: string }): boolean[][] {
  const grid = Array.from({ length: size }, () => Array.from({ length: size }, () => false));
  for (const [, x = '', y = '', width = ''] of path.matchAll(/M(\d+) (\d+)h(\d+)v1H\d+z/g))
    for (let step = 0; step < Number(width); step += 1) {
      const row = grid[Number(y)];
      if (row) row[Number(x) + step] = true;
    }
  return grid;
}

describe('the code of an address', () => {
  it('is drawn module by module as it was encoded', () => {
    expect(filled(drawing)).toEqual(encode(address, { ecc: 'M', border: 4 }).data);
  });

  it('has three finders at its corners, a quiet zone of four around them, and a size of the standard', () => {
    // ISO/IEC 18004 (from memory): 17 + 4 modules a version; finders of 7 with a ring and a core
    expect((drawing.size - 8 - 17) % 4).toBe(0);
    const grid = filled(drawing);
    const far = drawing.size - 4 - 7;
    const finder = ['1111111', '1000001', '1011101', '1011101', '1011101', '1000001', '1111111'];
    for (const [x, y] of [
      [4, 4],
      [far, 4],
      [4, far],
    ] as const) {
      const rows = grid.slice(y, y + 7).map((row) =>
        row
          .slice(x, x + 7)
          .map(Number)
          .join(''),
      );
      expect(rows).toEqual(finder);
    }
    const quiet = [...grid.slice(0, 4), ...grid.slice(-4)].flat();
    expect(quiet).not.toContain(true);
  });

  it('is another one for another address', () => {
    expect(qrDrawing(`${address}x`).path).not.toBe(drawing.path);
  });
});
