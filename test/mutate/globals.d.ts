declare global {
  /** What the copies with switches and the collector of tests share with the step that runs them. */
  var mutation: {
    expect: typeof import('vitest').expect;
    tests: { name: string; file: string; run: () => unknown }[];
    /** The file of tests that is being loaded. */
    file: string;
    enter: (file: string) => void;
    leave: () => void;
  };
}

export {};
