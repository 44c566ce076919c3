import { useLayoutEffect, useReducer, useRef } from 'preact/hooks';
import type { Tried } from '../../sheet/tried.ts';
import type { TryOrder } from '../../sheet/tries.ts';
import { whileOpening } from '../parts/opening.ts';
import type { TriesNews } from './messages.ts';
import { type RunState, reduceRun } from './run-state.ts';
import { strings } from './strings.ts';

/** Rest after the last change before a run begins. */
const REST_MS = 250;

const same = (a: TryOrder, b: TryOrder): boolean =>
  Object.entries(a).every(([name, value]) => b[name as keyof TryOrder] === value);

export interface TriesUse {
  readonly run: RunState;
  readonly stop: () => void;
}

/**
 * Runs of what is asked for, each in a worker of its own: the page never waits, and a change or a stop ends one at once. Until something
 * is changed, what was made beforehand.
 */
export function useTries(order: TryOrder, prepared: Tried): TriesUse {
  const [run, send] = useReducer(reduceRun, { kind: 'still', tried: prepared });
  const ended = useRef<() => void>(() => {});
  const isPrepared = same(order, prepared.order);
  const key = JSON.stringify(order);
  // In the turn of the drawing itself: between an address that was read and its run the page must not pass for opened.
  useLayoutEffect(() => {
    if (isPrepared) {
      send({ kind: 'prepared', tried: prepared });
      return;
    }
    let worker: Worker | undefined;
    let finish = (): void => {};
    const end = (): void => {
      clearTimeout(timer);
      worker?.terminate();
      worker = undefined;
      finish();
    };
    const fail = (): void => {
      send({ kind: 'failed', message: strings.run.noWorker });
      end();
    };
    const begin = (): void => {
      send({ kind: 'start' });
      try {
        worker = new Worker(new URL('./tries.worker.ts', import.meta.url), { type: 'module' });
        worker.onmessage = ({ data }: MessageEvent<TriesNews>) => {
          send(data);
          if (data.kind !== 'far') end();
        };
        worker.onerror = fail;
        worker.postMessage(order);
      } catch {
        fail();
      }
    };
    const timer = setTimeout(begin, REST_MS);
    // What an address asked for is not open before it has been tried.
    void whileOpening(() => new Promise<void>((resolve) => (finish = resolve)));
    ended.current = end;
    return end;
  }, [key, isPrepared, prepared]);
  const stop = (): void => {
    ended.current();
    send({ kind: 'stop' });
  };
  return { run, stop };
}
