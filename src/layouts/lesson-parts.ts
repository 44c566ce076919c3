/** A lesson before or after another one, as its foot names it. */
export interface Neighbour {
  /** `track/slug`. */
  readonly id: string;
  readonly data: { readonly title: string };
}

/** A figure that other pages can show: its name under `/embed/`, what it is called, and where it stands on this site. */
export interface OfferedFigure {
  readonly slug: string;
  readonly title: string;
  readonly path: string;
}
