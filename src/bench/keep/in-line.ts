/** Does work one thing after the other, in the order in which it was asked for. */
export interface InLine {
  /** Resolves when this work is done; rejects where it fails, which keeps nothing behind it from being done. */
  add(work: () => Promise<void>): Promise<void>;
  /** Resolves when all that was asked for so far is done, or has failed. */
  readonly done: () => Promise<void>;
  readonly busy: () => boolean;
}

/** @param onDone called after each work, when it is no longer counted as busy. */
export function inLine(onDone: () => void = () => undefined): InLine {
  let last: Promise<void> = Promise.resolve();
  let count = 0;
  return {
    add(work) {
      count += 1;
      const mine = last.then(work).finally(() => {
        count -= 1;
        onDone();
      });
      last = mine.catch(() => undefined);
      return mine;
    },
    done: () => last,
    busy: () => count > 0,
  };
}
