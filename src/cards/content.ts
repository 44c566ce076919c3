import type { BandProps } from '../figures/reading-band.types.ts';

/** What the picture shows that a board or a messenger puts beside a link to a page. Every number in it comes in as finished text. */
export interface CardContent {
  /** What tells it from other cards, in its address: small letters, digits and hyphens. */
  readonly key: string;
  readonly title: string;
  /** What is to be read at a glance. */
  readonly big: string;
  /** A line on what that is. */
  readonly small: string;
  readonly band?: Omit<BandProps, 'frame'>;
  /** The same for those who do not see it. */
  readonly alt: string;
}
