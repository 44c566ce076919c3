/** One answer under a figure: what is found, often a number with its unit, and what it is. */
export interface Answer {
  readonly figure: string;
  readonly words: string;
}

/** An answer that keeps its place when others come and go. */
export interface NamedAnswer extends Answer {
  readonly id: string;
}
