import { describe, expect, it } from 'vitest';
import { inLine } from '../../../src/bench/keep/in-line.ts';

describe('work in line', () => {
  it('is done one after the other, in the order in which it was asked for', async () => {
    const done: string[] = [];
    const line = inLine();
    const slow = line.add(async () => {
      await new Promise((resolve) => setTimeout(resolve, 1));
      done.push('first');
    });
    void line.add(async () => void done.push('second'));
    expect(line.busy()).toBe(true);
    await slow;
    await line.done();
    expect(done).toEqual(['first', 'second']);
    expect(line.busy()).toBe(false);
  });

  it('goes on behind what failed, which whoever asked for it hears of', async () => {
    const told: boolean[] = [];
    const line = inLine(() => told.push(line.busy()));
    const failing = line.add(() => Promise.reject(new Error('a slip')));
    const next = line.add(async () => undefined);
    await expect(failing).rejects.toThrow('a slip');
    await expect(next).resolves.toBeUndefined();
    await expect(line.done()).resolves.toBeUndefined();
    expect(told).toEqual([true, false]);
  });
});
