import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dragged, percentile, percentWithin, type TraceEvent } from './frames.ts';

/** By the thread's clock everything begins a second later and takes half as long. */
const timed = (ms: number, dur: number) => ({
  ts: 1000 * ms,
  dur: 1000 * dur,
  tts: 500 * ms + 1e6,
  tdur: 500 * dur,
});
const move = (ms: number): TraceEvent => ({
  name: 'EventDispatch',
  ...timed(ms, 3),
  tid: 1,
  args: { data: { type: 'pointermove' } },
});
const paint = (ms: number, dur = 1, tid = 1): TraceEvent => ({ name: 'Paint', ...timed(ms, dur), tid });
const commit = (ms: number, tid = 1): TraceEvent => ({ name: 'Commit', ...timed(ms, 1), tid });
const shown = (ms: number): TraceEvent => ({ name: 'AnimationFrame::Presentation', ts: 1000 * ms, tid: 1 });

describe('a drag in a trace', () => {
  it('takes from a movement to the end of the last painting before the next, by both clocks', () => {
    const { workMs, threadMs } = dragged([move(0), paint(4), paint(6), move(16), paint(20, 2)]);
    expect(workMs).toEqual([7, 6]);
    expect(threadMs).toEqual([3.5, 3]);
  });

  it('counts a movement that painted nothing into the frame that follows, and not what other threads painted', () => {
    expect(dragged([move(0), move(5), paint(8), paint(12, 1, 9), move(16)]).workMs).toEqual([9]);
    expect(dragged([paint(0), move(5), paint(8), move(16), move(17), paint(20)]).workMs).toEqual([4, 5]);
  });

  it('leaves out a movement of a frame that was handed over without a painting', () => {
    expect(dragged([move(0), commit(2), move(16), paint(20), commit(22), move(33)]).workMs).toEqual([5]);
    expect(dragged([move(0), commit(2, 9), move(16), paint(20), commit(22)]).workMs).toEqual([21]);
  });

  it('has the time from each shown frame to the next, as long as it lasts', () => {
    const { gapsMs } = dragged([shown(-10), move(0), shown(5), shown(21), move(40), shown(54)]);
    expect(gapsMs).toEqual([16]);
  });

  it('without a movement is none', () => {
    expect(() => dragged([paint(1), shown(2)])).toThrow('wish movements');
  });
});

describe('shares and ranks', () => {
  it('count what is exactly at the limit', () => {
    expect(percentWithin([1, 2, 3, 4], 3)).toBe(75);
    expect(percentile([4, 1, 3, 2], 50)).toBe(2);
    expect(percentile([4, 1, 3, 2], 95)).toBe(4);
    expect(percentWithin([], 3)).toBeNaN();
    expect(percentile([], 95)).toBeNaN();
  });

  it('agree: at least so many percent are within the time of that rank', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 1 }),
        fc.integer({ min: 1, max: 100 }),
        (times, percent) => {
          expect(percentWithin(times, percentile(times, percent))).toBeGreaterThanOrEqual(percent - 1e-9);
        },
      ),
    );
  });
});
