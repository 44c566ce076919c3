import type { Page } from '@playwright/test';
import type { BuiltPage } from '../../site/pages.ts';

/** A page as it was built, and as it stands open in the browser. */
export interface Visit {
  readonly page: Page;
  readonly built: BuiltPage;
}

/** The width that A4 leaves between margins of a centimetre, in CSS pixels. */
export const paper = { width: 718, height: 1000 };
/** An old projector, at which a page is opened. */
export const projector = { width: 1024, height: 768 };

export const hasIslands = ({ html }: BuiltPage): boolean => html.includes('<astro-island');
/** A figure says that it is one; the strokes of a typeset root or brace are part of a formula. */
export const hasFigures = ({ html }: BuiltPage): boolean => /<svg\b[^>]*role="img"/.test(html);

/** Puts the page on paper, looks, and puts it back on the screen, where it has answered to the size before anything else is looked at. */
export async function onPaper<Found>(page: Page, look: () => Promise<Found>): Promise<Found> {
  await page.setViewportSize(paper);
  await page.emulateMedia({ media: 'print' });
  const found = await look();
  await page.emulateMedia({ media: 'screen' });
  await page.setViewportSize(projector);
  await page.evaluate(async () => {
    await new Promise(requestAnimationFrame);
    await new Promise(requestAnimationFrame);
  });
  return found;
}
