import { runTries, type Tried } from '../../sheet/tried.ts';
import type { TriesNews, TriesOrder } from './messages.ts';

/** The worker's own side of the channel; the types of the whole project are a page's, not a worker's. */
interface WorkerSide {
  onmessage: ((event: MessageEvent<TriesOrder>) => void) | null;
  postMessage(news: TriesNews): void;
}

/** Between two stops, so that they can be watched. */
const PAUSE_MS = 350;

const side = globalThis as unknown as WorkerSide;
const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, PAUSE_MS));

side.onmessage = async ({ data }) => {
  try {
    let last: Tried | undefined;
    for (const tried of runTries(data)) {
      if (tried === undefined) continue;
      if (last) {
        side.postMessage({ kind: 'far', tried: last });
        await pause();
      }
      last = tried;
    }
    if (last) side.postMessage({ kind: 'done', tried: last });
  } catch (error) {
    side.postMessage({ kind: 'failed', message: error instanceof Error ? error.message : String(error) });
  }
};
