import type { Page } from '@playwright/test';
import { strings as bench } from '../../src/bench/strings.ts';
import { DECIMAL_KEY } from '../../src/store/decimal.ts';
import { textFormNames } from '../../src/text/summary/forms.ts';
import { strings as copy } from '../../src/widgets/copy-text/strings.ts';
import { decimalStrings } from '../../src/widgets/parts/decimal-strings.ts';
import { settled } from './awake.ts';
import { openAt, pull } from './reader.ts';
import { expect, test } from './site.ts';

/** What keeps its point: clauses of documents, and what shows a point to choose it. */
const KEEPS = /(?:GUM|JCGM)[^.]*(?:\.\d[^.]*)*|Point: 1\.5/g;

/** Texts that are to be seen on a page with a decimal point in them; `own` is what a reader typed. */
async function pointed(page: Page, own = ''): Promise<readonly string[]> {
  const seen = await page.locator('main').evaluate((main) => {
    const walker = document.createTreeWalker(main, NodeFilter.SHOW_TEXT);
    const texts: string[] = [];
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const { parentElement: around, textContent } = node;
      const isSeen = around?.checkVisibility() && !around.closest('.visually-hidden, title, desc, textarea');
      if (isSeen && textContent) texts.push(textContent);
    }
    return texts;
  });
  expect(seen.filter((text) => /\d,\d/.test(text)).length).toBeGreaterThan(5);
  return seen.filter((text) => /\d\.\d/.test((own ? text.replaceAll(own, '') : text).replaceAll(KEEPS, '')));
}

test('a decimal comma chosen once holds for what is shown, texts, fields and handles', async ({ page }) => {
  await openAt(page, '/examples/club-transmitter/');
  const text = page.getByLabel(copy.area);
  const comma = page.getByLabel(decimalStrings.signs.comma);
  await expect(text).toHaveValue(/27\.10 dBm \+\/-0\.69 dB/);
  const socket = page.locator('svg.band-wide .band-number').last();
  await expect(socket).toHaveText('±0.69\u00a0dB');
  await comma.check();
  // what is shown follows, also what is drawn anew; what is spoken keeps its point
  await expect(socket).toHaveText('±0,69\u00a0dB');
  await expect(page.locator('main')).toContainText(decimalStrings.signs.point);
  const pad = page.getByRole('slider', { name: /^20 decibel pad/ });
  await pad.press('ArrowRight');
  await expect(socket).toHaveText('±0,70\u00a0dB');
  await expect(pad).toHaveAttribute('aria-valuetext', /^0\.51 decibels$/);
  await pad.press('ArrowLeft');
  await expect(text).toHaveValue(/27,10 dBm \+\/-0,69 dB/);
  await page.getByLabel(textFormNames.markdown).check();
  await expect(text).toHaveValue(/\*\*.*27,10 dBm ±0,69 dB/);

  await openAt(page, '/bench/');
  const form = page.getByRole('region', { name: bench.form });
  const amount = (place: number) => form.locator('input[id$="amount"]').nth(place);
  await expect(form.getByLabel(decimalStrings.signs.comma)).toBeChecked();
  await expect(amount(0)).toHaveValue('0,02');
  await expect(amount(2)).toHaveValue('0,25');
  await amount(2).fill('0.30');
  await expect(amount(2)).toHaveValue('0.30');
  await expect(amount(0)).toHaveValue('0,02');
  await form.getByLabel(decimalStrings.signs.point).check();
  await expect(amount(0)).toHaveValue('0,02');
});

test('results on the bench’s pages have the comma, before and while they are worked with, and on paper', async ({
  page,
}) => {
  const own = 'Pad 1.5';
  await page.addInitScript((key) => localStorage.setItem(key, 'comma'), DECIMAL_KEY);
  await page.goto('/bench/');
  await expect(page.locator('.bench-result')).toContainText('27,10');
  expect(await pointed(page), 'as it was written').toEqual([]);
  await openAt(page, '/bench/');
  const form = page.getByRole('region', { name: bench.form });
  const pad = page.locator('.band-wide [data-handle="pad"]');
  await form.locator('input[id$="label"]').nth(4).fill(own);
  await expect(page.locator('.bench-result')).toContainText(own);
  expect(await pointed(page, own), 'drawn anew').toEqual([]);
  const { x, y } = await pull(pad, { x: 30 });
  expect(await pointed(page, own), 'while it is pulled').toEqual([]);
  await page.mouse.move(x + 3, y);
  await page.mouse.up();
  await settled(page);
  await page.emulateMedia({ media: 'print' });
  expect(await pointed(page, own), 'on paper').toEqual([]);
  await page.emulateMedia({ media: 'screen' });
  await form.getByLabel(decimalStrings.signs.point).check();
  await expect(page.locator('.bench-result')).toContainText('27.10\u00a0dBm');
  await expect(page.locator('.bench-result')).not.toContainText(/\d,\d+\sdB/);
  for (const path of ['/bench/borrow/', '/bench/compare/', '/bench/instruments/', '/reference/tables/']) {
    await openAt(page, path);
    expect(await pointed(page), path).toEqual([]);
  }
});

test('names that run from right to left leave the numbers beside them in their places', async ({ page }) => {
  const [title, pad] = ['\u05de\u05e9\u05d3\u05e8 7', '\u0645\u062e\u0641\u0641 20'];
  await openAt(page, '/bench/');
  const form = page.getByRole('region', { name: bench.form });
  await form.getByLabel(bench.labels.title, { exact: true }).fill(title);
  await form.locator('input[id$="label"]').nth(4).fill(pad);
  await expect(page.locator('#result')).toHaveText(title);
  await expect(page.locator('#result bdi')).toHaveCSS('direction', 'rtl');
  // the heading itself stays where headings stand
  await expect(page.locator('#result')).toHaveCSS('direction', 'ltr');
  // in the figure, in the budget and in the name of a button
  const row = page.locator('table').getByRole('row').filter({ hasText: pad }).first();
  await expect(row).toBeVisible();
  await expect(row.getByRole('rowheader')).toHaveText(`\u2068${pad}\u2069`);
  await expect(page.locator('svg.band-wide .band-label').filter({ hasText: pad })).toHaveText(
    `\u2068${pad}\u2069`,
  );
  await expect(form.getByRole('button', { name: `\u2068${pad}\u2069` }).first()).toBeVisible();
  // the sentence keeps its order: the name first, its number behind it, both from left to right
  const order = await row.evaluate((element) => {
    const cells = [...element.querySelectorAll('th, td')].map((cell) => cell.getBoundingClientRect().left);
    return cells.every((left, at) => at === 0 || left > (cells[at - 1] ?? 0));
  });
  expect(order).toBe(true);
});
