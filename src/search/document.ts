/** Kinds of things that can be found; each has its name in the line of a result. */
export type Kind = 'lesson' | 'example' | 'word' | 'formula' | 'question' | 'table' | 'checks' | 'page';

/** A part of something that can be found, with its own place on the page. */
export interface Part {
  /** Place on the page, the fragment of its address; empty for the page as a whole. */
  readonly at: string;
  readonly title: string;
  readonly text: string;
}

/** Something that can be found. Plain text throughout. */
export interface SearchDocument {
  /** Unique over all: its address without the base path, and more where several share one. */
  readonly id: string;
  readonly kind: Kind;
  readonly title: string;
  /** Root-relative address, without the base path, its fragment with it. */
  readonly path: string;
  /** Its other names, which count as its title does. */
  readonly names: readonly string[];
  /** Other names of what its text speaks of. */
  readonly also: string;
  readonly parts: readonly Part[];
}
