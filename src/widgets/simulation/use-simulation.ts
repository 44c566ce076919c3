import { useEffect, useReducer, useRef } from 'preact/hooks';
import type { SimulationNews, SimulationOrder } from './messages.ts';
import { idle, reduceSimulation, type SimulationState } from './state.ts';
import { strings } from './strings.ts';

export interface SimulationControl {
  readonly state: SimulationState;
  readonly start: (order: SimulationOrder) => void;
  readonly cancel: () => void;
}

/** A simulation in a worker of its own: the page never waits for it, and stopping ends it at once. */
export function useSimulation(): SimulationControl {
  const [state, send] = useReducer(reduceSimulation, idle);
  const worker = useRef<Worker | undefined>(undefined);
  const end = (): void => {
    worker.current?.terminate();
    worker.current = undefined;
  };
  useEffect(() => end, []);
  const start = (order: SimulationOrder): void => {
    end();
    send({ kind: 'start' });
    try {
      const next = new Worker(new URL('./simulation.worker.ts', import.meta.url), { type: 'module' });
      next.onmessage = ({ data }: MessageEvent<SimulationNews>) => {
        send(data);
        if (data.kind !== 'progress') end();
      };
      next.onerror = () => send({ kind: 'failed', message: strings.noWorker });
      next.postMessage(order);
      worker.current = next;
    } catch {
      send({ kind: 'failed', message: strings.noWorker });
    }
  };
  const cancel = (): void => {
    end();
    send({ kind: 'cancel' });
  };
  return { state, start, cancel };
}
