import { afterEach, describe, expect, it, vi } from 'vitest';
import { afterPaint } from '../../src/bench/slices.ts';

afterEach(() => vi.unstubAllGlobals());

/** A page whose frames come when the test says so; undefined for one that is not seen and paints none. */
function page(seen: boolean) {
  const waiting = new Map<number, () => void>();
  vi.stubGlobal('requestAnimationFrame', (go: () => void) => {
    waiting.set(waiting.size + 1, go);
    return waiting.size;
  });
  vi.stubGlobal('cancelAnimationFrame', (id: number) => waiting.delete(id));
  return {
    waiting,
    frame: () => {
      if (seen) for (const go of waiting.values()) go();
    },
  };
}

describe('waiting until a page has painted', () => {
  it('ends after the next frame, and not before it', async () => {
    const { frame } = page(true);
    let painted = false;
    const done = afterPaint().then(() => {
      painted = true;
    });
    await Promise.resolve();
    expect(painted).toBe(false);
    frame();
    await done;
    expect(painted).toBe(true);
  });

  it('ends all the same where no frame ever comes, and leaves none behind', async () => {
    const { waiting } = page(false);
    await afterPaint();
    expect(waiting.size).toBe(0);
  });
});
