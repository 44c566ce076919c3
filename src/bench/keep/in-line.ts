/** Does work one thing after the other, in the order in which it was asked for. */
export interface InLine {
  /** Resolves when this work is done. */
  add(work: () => Promise<void>): Promise<void>;
  /** Resolves when all that was asked for so far is done. */
  readonly done: () => Promise<void>;
  readonly busy: () => boolean;
}

/** @param onDone called after each work, when it is no longer counted as busy. */
export function inLine(onDone: () => void): InLine {
  let last = Promise.resolve();
  let count = 0;
  return {
    add(work) {
      count += 1;
      last = last.then(work).finally(() => {
        count -= 1;
        onDone();
      });
      return last;
    },
    done: () => last,
    busy: () => count > 0,
  };
}
