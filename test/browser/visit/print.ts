import { expect, type Page } from '@playwright/test';
import { onPaper, type Visit } from './visit.ts';

/** The table of states of each island that has numbers to set, as one text an island; empty where there is none. */
export const tables = (page: Page): Promise<string[]> =>
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

/** That what can be set on the page is on paper as a table. */
export async function numbersOnPaper({ page }: Visit): Promise<void> {
  for (const table of await onPaper(page, () => tables(page)))
    expect.soft(table, 'numbers on paper').toMatch(/\d/);
}
