import type { Page } from '@playwright/test';
import { stateAddresses } from './addresses.ts';
import { awake } from './awake.ts';
import { expect, pages, pagesWithFigures, pagesWithIslands, test } from './site.ts';

/** The width that A4 leaves between margins of a centimetre, in CSS pixels. */
const paper = { width: 718, height: 1000 };

test.use({ viewport: paper });

/**
 * Figures of the main part that are seen, as their names; one that is wider than the paper tells so. A figure may be drawn once for
 * wide and once for narrow places: it is the name that counts.
 */
const figures = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const textOf = (id: string): string => document.getElementById(id)?.textContent ?? '';
    const nameOf = (node: Element): string =>
      node.getAttribute('aria-label') ??
      (node.getAttribute('aria-labelledby') ?? '').split(' ').map(textOf).join(' ');
    return [...document.querySelectorAll('main svg:not(svg svg, [aria-hidden="true"])')]
      .filter((node) => node.checkVisibility() && node.getBoundingClientRect().width > 0)
      .map((node) => {
        const wide = node.getBoundingClientRect().right > innerWidth + 1;
        return wide ? `${nameOf(node)}: wider than the paper` : nameOf(node);
      });
  });

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

for (const { path } of pagesWithFigures) {
  test(`each figure of ${path} is on paper`, async ({ page }) => {
    await page.goto(path);
    await awake(page);
    const onScreen = await figures(page);
    await page.emulateMedia({ media: 'print' });
    const onPaper = await figures(page);
    expect(onPaper.length).toBeGreaterThan(0);
    expect(
      onScreen.filter((name) => !onPaper.includes(name)),
      'not on paper',
    ).toEqual([]);
    expect(onPaper.filter((name) => name.endsWith('wider than the paper'))).toEqual([]);
  });
}

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

for (const address of stateAddresses(pages)) {
  test(`the state of ${address} is what prints`, async ({ page }) => {
    const { pathname } = new URL(address, 'http://site.invalid');
    await page.goto(pathname);
    await awake(page);
    const usual = await page.locator('main').innerText();
    await page.goto('about:blank');
    await page.goto(address);
    await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null, undefined, {
      timeout: 30_000,
    });
    await awake(page);
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('main').innerText(), 'differs from the page without a state').not.toBe(usual);
    // A method that is out of range gives no number, and so no figure and no budget: then it says why.
    if ((await page.getByText('Out of range:').count()) > 0) return;
    expect(await figures(page), 'has a figure').not.toEqual([]);
    for (const table of await tables(page)) expect(table).toMatch(/\d/);
  });
}
