import type { LookId } from './looks.ts';

/** Under what a page is looked at: what a reader has set, and what they read on. */
export interface Condition {
  readonly id: string;
  /** As the statement says it. */
  readonly words: string;
  /** The window, in CSS pixels. */
  readonly width: number;
  readonly height: number;
  /** Pixels of the screen to one of these; more than 1 is how a browser zooms. */
  readonly zoom?: number;
  readonly scheme?: 'light' | 'dark';
  readonly media?: 'screen' | 'print';
  readonly forcedColours?: boolean;
  /** How many times as large as usual the browser's own letters are set. */
  readonly letters?: number;
  /** Rules of the reader's own, which win over the site's. */
  readonly ownStyle?: string;
  readonly looks: readonly LookId[];
}

const projector = { width: 1024, height: 768 };
const telephone = { width: 320, height: 640 };
/** What A4 leaves between margins of a centimetre. */
const paper = { width: 718, height: 1000 };

/** The distances that WCAG 2.2 names in criterion 1.4.12. */
export const SPACED =
  '*{line-height:1.5!important;letter-spacing:.12em!important;word-spacing:.16em!important}p{margin-bottom:2em!important}';

const colours = ['colours', 'figures', 'edges'] as const;

/** What each kind of page is looked at under, with everything unfolded that can be; in an order that changes little at a time. */
export const conditions: readonly Condition[] = [
  {
    id: 'light',
    words: 'Light colours',
    ...projector,
    scheme: 'light',
    looks: ['rules', 'figures', 'edges', 'uncovered', 'still'],
  },
  {
    id: 'dark',
    words: 'Dark colours',
    ...projector,
    scheme: 'dark',
    looks: colours,
  },
  {
    id: 'forced-light',
    words: 'The system’s own colours in place of ours (forced colours), dark on light',
    ...projector,
    scheme: 'light',
    forcedColours: true,
    looks: colours,
  },
  {
    id: 'forced-dark',
    words: 'The same, light on dark',
    ...projector,
    scheme: 'dark',
    forcedColours: true,
    looks: colours,
  },
  {
    id: 'print',
    words: 'Print, on A4',
    ...paper,
    scheme: 'light',
    media: 'print',
    looks: ['colours', 'figures', 'fits'],
  },
  {
    id: 'print-dark',
    words: 'Print, when the screen is set to dark',
    ...paper,
    scheme: 'dark',
    media: 'print',
    looks: ['white', 'figures'],
  },
  {
    id: 'narrow',
    words: '320 pixels wide, as on a small telephone',
    ...telephone,
    scheme: 'light',
    looks: ['rules', 'fits', 'letters', 'apart', 'uncovered'],
  },
  {
    id: 'spaced-narrow',
    words: 'Wider text spacing (criterion 1.4.12), 320 pixels wide',
    ...telephone,
    ownStyle: SPACED,
    looks: ['fits', 'letters', 'apart', 'uncut'],
  },
  {
    id: 'spaced',
    words: 'The same, 1024 pixels wide',
    ...projector,
    ownStyle: SPACED,
    looks: ['fits', 'letters', 'apart', 'uncut'],
  },
  {
    id: 'large',
    words: 'Letters set twice as large in the browser, the window as it is',
    ...projector,
    letters: 2,
    looks: ['fits', 'apart', 'uncut'],
  },
  {
    id: 'zoomed',
    words: 'A window of 1280 by 1024 pixels, zoomed to 400 %',
    width: 320,
    height: 256,
    zoom: 4,
    looks: ['fits', 'letters', 'uncovered'],
  },
];
