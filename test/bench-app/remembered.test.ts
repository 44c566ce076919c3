import { describe, expect, it, vi } from 'vitest';
import { levelDbm } from '#compute';
import { pointResult } from '../../src/bench/results/point-result.ts';
import { remembered } from '../../src/bench/results/remembered.ts';
import { inSlices } from '../../src/bench/slices.ts';
import type { Measurement, Point } from '../../src/sheet/measurement.ts';
import { typedMeasurement } from './typed-sheet.ts';

const three = (): Measurement =>
  typedMeasurement({ points: ['26 dBm', '27 dBm', '28 dBm'].map((readings) => ({ readings })), links: [{}] });
const withPoint = (measurement: Measurement, id: string, change: Partial<Point>): Measurement => ({
  ...measurement,
  points: measurement.points.map((point) => (point.id === id ? { ...point, ...change } : point)),
});
const read = (level: number) => ({
  columns: { readings: [levelDbm(level)], reflected: [], riseDc: [], volts: [], amperes: [] },
});
const estimateOf = (result: ReturnType<typeof pointResult>): number => {
  if (!result.inRange) throw new Error(`estimateOf: wish a number, got ${result.reason.code}`);
  return result.result.chain.result.estimate;
};

describe('a result that is remembered', () => {
  it('is the very same again where nothing that it hangs on is different', () => {
    const memory = remembered();
    expect(memory.known(three(), 'point1')).toBeUndefined();
    const result = memory.of(three(), 'point1');
    expect(estimateOf(result)).toBe(26);
    // another object that says the same, as undo brings it
    expect(memory.of(three(), 'point1')).toBe(result);
    expect(memory.known(three(), 'point1')).toBe(result);
  });

  it('is not thrown away for what is typed at another point, or into the record', () => {
    const memory = remembered();
    const result = memory.of(three(), 'point1');
    const elsewhere = withPoint(three(), 'point2', read(20));
    expect(memory.known(elsewhere, 'point1')).toBe(result);
    const noted = { ...three(), record: { ...three().record, remarks: 'warm evening' } };
    expect(memory.known(noted, 'point1')).toBe(result);
    expect(memory.known(elsewhere, 'point2')).toBeUndefined();
  });

  it.each<[string, (measurement: Measurement) => Measurement]>([
    ['reading', (measurement) => withPoint(measurement, 'point1', read(26.5))],
    ['specification', (measurement) => withPoint(measurement, 'point1', { specification: { upper: 20 } })],
    ['rule', (measurement) => ({ ...measurement, rule: { kind: 'simple' } })],
    ['chain', (measurement) => ({ ...measurement, links: [] })],
    ['title', (measurement) => ({ ...measurement, title: 'another' })],
  ])('is worked out anew with another %s, to what it is without any memory', (_what, change) => {
    const memory = remembered();
    const before = memory.of(three(), 'point1');
    const after = change(three());
    const result = memory.of(after, 'point1');
    expect(result).not.toBe(before);
    const fresh = pointResult(after, 'point1');
    expect(result.sheet).toEqual(fresh.sheet);
    expect(estimateOf(result)).toBe(estimateOf(fresh));
  });

  it('goes once two hundred others were asked for since, but not while it is asked for itself', () => {
    const memory = remembered();
    const at = (index: number) => withPoint(three(), 'point1', read(20 + index / 100));
    const [oldest, used] = [memory.of(at(0), 'point1'), memory.of(at(1), 'point1')];
    for (let index = 2; index <= 200; index++) {
      memory.of(at(index), 'point1');
      expect(memory.of(at(1), 'point1')).toBe(used);
    }
    expect(memory.known(at(0), 'point1')).toBeUndefined();
    expect(memory.known(at(2), 'point1')).toBeDefined();
    expect(memory.of(at(0), 'point1')).not.toBe(oldest);
  });

  it('is no other page’s: each memory begins empty', () => {
    remembered().of(three(), 'point1');
    expect(remembered().known(three(), 'point1')).toBeUndefined();
  });
});

describe('work in slices', () => {
  /** Steps that take so many ms each by a clock of their own. */
  const run = async ({
    costs,
    stopAfter = Number.POSITIVE_INFINITY,
  }: {
    costs: number[];
    stopAfter?: number;
  }) => {
    let clock = 0;
    let done = 0;
    const stop = new AbortController();
    const pause = vi.fn(() => Promise.resolve());
    const steps = costs.map((ms) => () => {
      clock += ms;
      done += 1;
      if (done === stopAfter) stop.abort();
    });
    const finished = await inSlices({ steps, signal: stop.signal, now: () => clock, pause });
    return { done, finished, pauses: pause.mock.calls.length };
  };

  it('lets the page answer before it begins, then after every six milliseconds of work', async () => {
    expect(await run({ costs: [] })).toEqual({ done: 0, finished: true, pauses: 1 });
    expect(await run({ costs: [1, 1, 1, 1, 1] })).toEqual({ done: 5, finished: true, pauses: 1 });
    expect(await run({ costs: [2, 2, 2, 2, 2, 2] })).toEqual({ done: 6, finished: true, pauses: 3 });
    expect(await run({ costs: [50, 50] })).toEqual({ done: 2, finished: true, pauses: 3 });
  });

  it('goes no step further once it is stopped, and says that it is not through', async () => {
    expect(await run({ costs: [1, 1, 1], stopAfter: 2 })).toMatchObject({ done: 2, finished: false });
    expect(await run({ costs: [1, 1, 1], stopAfter: 3 })).toMatchObject({ done: 3, finished: false });
  });

  it('does nothing at all where it was stopped before its first chance', async () => {
    const step = vi.fn();
    expect(await inSlices({ steps: [step], signal: AbortSignal.abort() })).toBe(false);
    expect(step).not.toHaveBeenCalled();
  });

  it('is through with the pauses of a real page as well, in order', async () => {
    const order: number[] = [];
    const steps = Array.from({ length: 20 }, (_, index) => () => {
      order.push(index);
    });
    expect(await inSlices({ steps, signal: new AbortController().signal })).toBe(true);
    expect(order).toEqual(Array.from({ length: 20 }, (_, index) => index));
  });

  it('takes its steps from a source that makes them as they are asked for, and asks for none in vain', async () => {
    const stop = new AbortController();
    let made = 0;
    function* endless() {
      for (;;) {
        made += 1;
        yield () => {
          if (made === 3) stop.abort();
        };
      }
    }
    expect(await inSlices({ steps: endless(), signal: stop.signal })).toBe(false);
    expect(made).toBeLessThanOrEqual(4);
  });
});
