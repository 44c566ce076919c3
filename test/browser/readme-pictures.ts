import type { BrowserContextOptions } from '@playwright/test';

/** A picture of the README: a part of a page as a reader meets it. */
export interface ReadmePicture {
  /** File in `src/assets/readme/`, without its ending. */
  readonly name: string;
  readonly path: string;
  readonly viewport: NonNullable<BrowserContextOptions['viewport']>;
  /** What stands at the top of the picture; the top of the page unless given. */
  readonly from?: string;
}

export const PICTURES = 'src/assets/readme';

export const readmePictures: readonly ReadmePicture[] = [
  { name: 'first-page', path: '/', viewport: { width: 1100, height: 960 } },
  { name: 'bench', path: '/bench/', viewport: { width: 1100, height: 900 }, from: '.answers' },
  {
    name: 'wall',
    path: '/stage/learn/decibels/down-the-line/#staircase',
    viewport: { width: 1024, height: 768 },
  },
];
