import { expect, type Page } from '@playwright/test';
import { figures } from '../laid-out.ts';
import { hasFigures, onPaper, paper, type Visit } from './visit.ts';

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

/** That what can be set on the page is on paper as a table, while its islands are asleep. */
export async function numbersOnPaper({ page }: Visit): Promise<void> {
  for (const table of await onPaper(page, () => tables(page)))
    expect.soft(table, 'numbers on paper').toMatch(/\d/);
}

/** That what can be set on the page is on paper as a table, and what the page shows has its figures there, and that they fit it. */
export async function allOnPaper({ page, built }: Visit): Promise<void> {
  await page.setViewportSize(paper);
  const onScreen = await figures(page);
  const [numbers, printed] = await onPaper(
    page,
    async () => [await tables(page), await figures(page)] as const,
  );
  for (const table of numbers) expect.soft(table, 'numbers on paper').toMatch(/\d/);
  if (hasFigures(built)) expect.soft(printed, 'figures on paper').not.toEqual([]);
  expect
    .soft(
      onScreen.filter((name) => !printed.includes(name)),
      'not on paper',
    )
    .toEqual([]);
  expect.soft(printed.filter((name) => name.endsWith('wider than the paper'))).toEqual([]);
}
