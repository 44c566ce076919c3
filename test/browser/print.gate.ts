import type { Page } from '@playwright/test';
import { stateAddresses } from './addresses.ts';
import { awake } from './awake.ts';
import { figures } from './laid-out.ts';
import { expect, pages, pagesWithIslands, test } from './site.ts';

/** The width that A4 leaves between margins of a centimetre, in CSS pixels. */
const paper = { width: 718, height: 1000 };

test.use({ viewport: paper });

/** The table of states of each island that has numbers to set, as one text an island; empty where there is none. */
const tables = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('astro-island')]
      .filter((island) =>
        island.querySelector('input[type="range"], input[inputmode="decimal"], [role="slider"]'),
      )
      .map((island) =>
        [...island.querySelectorAll('table')]
          .filter((table) => table.checkVisibility() && table.getBoundingClientRect().width > 0)
          .map((table) => table.innerText)
          .join('\n'),
      ),
  );

for (const { path } of pagesWithIslands) {
  test(`what can be set on ${path} is on paper as a table, even before an island wakes`, async ({ page }) => {
    await page.goto(path);
    await page.emulateMedia({ media: 'print' });
    for (const table of await tables(page)) expect(table).toMatch(/\d/);
    // on the screen, where a part that paper leaves out is seen and wakes as well
    await page.emulateMedia({ media: 'screen' });
    await awake(page);
    await page.emulateMedia({ media: 'print' });
    for (const table of await tables(page)) expect(table).toMatch(/\d/);
  });
}

/** Texts of pages without a state, each read once. */
const usualTexts = new Map<string, string>();

async function usualText(page: Page, path: string): Promise<string> {
  const kept = usualTexts.get(path);
  if (kept !== undefined) return kept;
  await page.goto(path);
  await awake(page);
  const text = await page.locator('main').innerText();
  usualTexts.set(path, text);
  await page.goto('about:blank');
  return text;
}

for (const address of stateAddresses(pages)) {
  test(`the state of ${address} is what prints`, async ({ page }) => {
    const { pathname } = new URL(address, 'http://site.invalid');
    const usual = await usualText(page, pathname);
    await page.goto(address);
    await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null, undefined, {
      timeout: 30_000,
    });
    await awake(page);
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('main').innerText(), 'differs from the page without a state').not.toBe(usual);
    // A method that is out of range gives no number, and so no figure and no budget: then it says why.
    if ((await page.getByText('Out of range:').count()) > 0) return;
    const found = await figures(page);
    // A sheet that was never usable has none either: then it says what it lacks.
    if (found.length === 0 && (await page.locator('.bench-problems').isVisible())) return;
    expect(found, 'has a figure').not.toEqual([]);
    for (const table of await tables(page)) expect(table).toMatch(/\d/);
  });
}
