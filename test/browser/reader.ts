import type { Locator, Page } from '@playwright/test';
import { awake } from './awake.ts';

/** A place on the screen, in CSS pixels. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** Opens an address and waits until everything on its page listens. */
export async function openAt(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await awake(page);
}

/** What stands in the address behind the question mark, with it. */
export const search = (page: Page): Promise<string> => page.evaluate(() => location.search);

/** What is told of an address that could not be read in full: in a figure, on the bench and beside it. */
export const addressTold = (page: Page): Locator => page.locator('main .caution[role="status"]');

/** The middle of something that is on the screen. */
export async function middleOf(thing: Locator): Promise<Place> {
  const box = await thing.boundingBox();
  if (!box) throw new Error(`middleOf: wish it on the screen, got ${thing}`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** Takes hold of a handle and moves it by so many pixels, in steps; answers where the pointer is then, its button still down. */
export async function pull(handle: Locator, { x = 0, y = 0 }: Partial<Place>): Promise<Place> {
  const { mouse } = handle.page();
  await handle.scrollIntoViewIfNeeded();
  const from = await middleOf(handle);
  const to = { x: from.x + x, y: from.y + y };
  await mouse.move(from.x, from.y);
  await mouse.down();
  await mouse.move(to.x, to.y, { steps: 6 });
  return to;
}

/** Pulls a handle and lets it go. */
export async function drag(handle: Locator, by: Partial<Place>): Promise<void> {
  await pull(handle, by);
  await handle.page().mouse.up();
}

/** Has the browser refuse to keep anything for the site in `localStorage`; for pages that are opened afterwards. */
export const refuseStorage = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    Object.defineProperty(window, 'localStorage', {
      get: () => {
        throw new DOMException('refused', 'SecurityError');
      },
    });
  });
