/** Mutants that no test of behaviour can kill, with the reason. */
export interface Survivor {
  readonly file: string;
  /** A snippet of the source, once in the file, inside which the mutants lie. */
  readonly within: string;
  /** What stands there instead, one mutant each. */
  readonly to: readonly string[];
  readonly reason: string;
}

export const survivors: readonly Survivor[] = [];
