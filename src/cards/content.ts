import type { BandProps } from '../figures/reading-band.types.ts';
import type { Given } from './drawn.ts';
import type { FigureName } from './figure-names.ts';

/** The band along a chain. */
export interface CardBand extends Omit<BandProps, 'frame'> {
  readonly kind: 'band';
}

/** A figure of a lesson, with other numbers than it begins with where they are wanted. */
export interface CardFigure {
  readonly kind: 'figure';
  readonly name: FigureName;
  readonly given?: Given;
}

/** What the picture shows that a board or a messenger puts beside a link to a page. Every number in it comes in as finished text. */
export interface CardContent {
  /** What tells it from other cards, in its address: small letters, digits and hyphens. */
  readonly key: string;
  readonly title: string;
  /** What is to be read at a glance. */
  readonly big: string;
  /** A line on what that is. */
  readonly small: string;
  /** What is drawn below the words: the page's own figure. */
  readonly drawn: CardBand | CardFigure;
  /** The same for those who do not see it. */
  readonly alt: string;
}
