import type { SimulationNews, SimulationOrder } from './messages.ts';
import { runSimulation } from './run.ts';

/** The worker's own side of the channel; the types of the whole project are a page's, not a worker's. */
interface WorkerSide {
  onmessage: ((event: MessageEvent<SimulationOrder>) => void) | null;
  postMessage(news: SimulationNews): void;
}

/** Trials between two reports: a few a second, so that telling takes no time from trying. */
const REPORT_EVERY = 250_000;

const side = globalThis as unknown as WorkerSide;

side.onmessage = ({ data }) => {
  try {
    const steps = runSimulation(data);
    let reported = 0;
    for (;;) {
      const step = steps.next();
      if (step.done) {
        side.postMessage({ kind: 'done', result: step.value });
        return;
      }
      if (step.value.trials - reported < REPORT_EVERY) continue;
      reported = step.value.trials;
      side.postMessage(step.value);
    }
  } catch (error) {
    side.postMessage({ kind: 'failed', message: error instanceof Error ? error.message : String(error) });
  }
};
