import type { Page } from '@playwright/test';
import { resultStrings } from '../../src/borrow/result-strings.ts';
import { stateAddresses } from './addresses.ts';
import { awake } from './awake.ts';
import { figures } from './laid-out.ts';
import { expect, pages, test } from './site.ts';
import { tables } from './visit/print.ts';
import { paper } from './visit/visit.ts';

test.use({ viewport: paper });

/** The addresses with a state of each page. */
const statesOf = Map.groupBy(
  stateAddresses(pages),
  (address) => new URL(address, 'http://site.invalid').pathname,
);

/** What prints at an address that carries a state, against what is on the page without one. */
async function expectPrinted(page: Page, address: string, usual: string): Promise<void> {
  await page.goto('about:blank');
  await page.emulateMedia({ media: 'screen' });
  await page.goto(address);
  await page.waitForFunction(() => document.querySelector('astro-island[ssr]') === null, undefined, {
    timeout: 30_000,
  });
  await awake(page);
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('main').innerText(), `${address} differs from the page without a state`).not.toBe(
    usual,
  );
  // A method that is out of range gives no number, and so no figure and no budget: then it says why.
  if ((await page.getByText('Out of range:').count()) > 0) return;
  const found = await figures(page);
  // A sheet that was never usable has none either: then it says what it lacks.
  if (found.length === 0 && (await page.locator('.bench-problems').isVisible())) return;
  // A part that was measured by itself is told by its budget alone.
  if (
    found.length === 0 &&
    (await page.getByRole('table', { name: resultStrings.budget.caption }).isVisible())
  )
    return;
  expect(found, `${address} has a figure`).not.toEqual([]);
  for (const table of await tables(page)) expect(table, address).toMatch(/\d/);
}

/** So many addresses in one test, each within its time. */
const IN_A_TEST = 12;

for (const [path, addresses] of statesOf)
  for (let from = 0; from < addresses.length; from += IN_A_TEST)
    test(`the states of ${path} that are given out are what prints, from the ${from + 1}th on`, async ({
      page,
    }) => {
      await page.goto(path);
      await awake(page);
      const usual = await page.locator('main').innerText();
      for (const address of addresses.slice(from, from + IN_A_TEST))
        await expectPrinted(page, address, usual);
    });
