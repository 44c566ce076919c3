import { openBroadcast } from './broadcast.ts';
import type { StoreName } from './database.ts';

/** Something was kept, or removed where there is no revision. */
export interface KeptChange {
  readonly id: string;
  readonly revision: number | undefined;
}

/** Tells the other tabs of this site of changes, and hears of theirs; its own it does not hear. */
export interface Channel {
  tell(change: KeptChange): void;
  listen(onChange: (change: KeptChange) => void): () => void;
  close(): void;
}

function isChange(data: unknown): data is KeptChange {
  if (typeof data !== 'object' || data === null) return false;
  const { id, revision } = data as Partial<Record<keyof KeptChange, unknown>>;
  return typeof id === 'string' && (revision === undefined || typeof revision === 'number');
}

/** A channel for one kind of thing. Where the browser gives none, nobody is told: the revision still guards what is kept. */
export function channelOf(store: StoreName): Channel {
  let line: BroadcastChannel | undefined;
  const opened = (): BroadcastChannel | undefined => {
    line ??= openBroadcast(`how-sure-is-a-watt:${store}`);
    return line;
  };
  return {
    tell: (change) => opened()?.postMessage(change),
    listen(onChange) {
      const hear = ({ data }: MessageEvent<unknown>): void => {
        if (isChange(data)) onChange(data);
      };
      const on = opened();
      on?.addEventListener('message', hear);
      return () => on?.removeEventListener('message', hear);
    },
    close() {
      line?.close();
      line = undefined;
    },
  };
}
