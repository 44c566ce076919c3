import type { Page } from '@playwright/test';
import { expect, test } from './site.ts';

const field = (page: Page) => page.getByRole('searchbox', { name: 'A word, a thing or a question' });
const results = (page: Page) => page.locator('.found li');
const told = (page: Page) => page.locator('.search-told');

test('a link on every page leads to the search, and typing finds a word by its other name', async ({
  page,
}) => {
  await page.goto('/about/');
  await page.getByRole('navigation', { name: 'Site' }).getByRole('link', { name: 'Search' }).click();
  await field(page).fill('attenuator');
  await expect(results(page).first()).toContainText('Word: pad');
  await expect(told(page)).toHaveText(/^\d+ results/);
  await expect(page).toHaveURL(/\/search\/\?q=attenuator$/);
  await results(page).first().getByRole('link').click();
  await expect(page).toHaveURL(/\/reference\/words\/#pad$/);
});

test('the keyboard alone gets from the field to what was found, and back to the same results', async ({
  page,
}) => {
  await page.goto('/search/');
  await field(page).focus();
  await page.keyboard.type('what is a guard band');
  await page.keyboard.press('Enter');
  await expect(results(page).first()).toContainText('Word: guard band');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await expect(results(page).first().getByRole('link')).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page).toHaveURL(/\/reference\/words\/#guard-band$/);
  await page.goBack();
  await expect(field(page)).toHaveValue('what is a guard band');
  await expect(results(page).first()).toContainText('Word: guard band');
});

test('an address carries a query, and each result says what it is and shows a line with the words', async ({
  page,
}) => {
  await page.goto('/search/?q=scope+bandwidth');
  await expect(field(page)).toHaveValue('scope bandwidth');
  const lesson = results(page)
    .filter({ hasText: /^Lesson:/ })
    .first();
  await expect(lesson.locator('mark').first()).toBeVisible();
  await lesson.getByRole('link').click();
  await expect(page).toHaveURL(/\/learn\/.*\/#[a-z-]+$/);
});

test('what can be found is fetched once, on first use and not before', async ({ page }) => {
  const fetched: string[] = [];
  page.on('request', (request) => {
    if (request.url().endsWith('/search/index.json')) fetched.push(request.url());
  });
  await page.goto('/search/');
  await page.evaluate(() => document.fonts.ready);
  expect(fetched).toEqual([]);
  await field(page).fill('pad');
  await expect(results(page)).not.toHaveCount(0);
  await field(page).fill('pads into a meter');
  await expect(told(page)).toHaveText(/^\d+ results?/);
  expect(fetched).toHaveLength(1);
});

test('no query breaks the page', async ({ page }) => {
  for (const query of [
    '<img src=x onerror=alert(1)>',
    '%',
    '__proto__',
    `"${'a'.repeat(5000)}`,
    '\u0000\u202e',
  ]) {
    await page.goto(`/search/?q=${encodeURIComponent(query)}`);
    await expect(told(page)).toHaveText(/result|Nothing|stand on every page/);
  }
  await field(page).fill('');
  await expect(results(page)).toHaveCount(0);
  await expect(told(page)).toHaveText('');
  await expect(page).toHaveURL(/\/search\/$/);
});

test('where the index is not to be had the page says so, and the same query can be asked again', async ({
  browser,
  baseURL,
}) => {
  // a context of its own: that one fetch fails is what is wanted here
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.route('**/search/index.json', (route) => route.abort());
  await page.goto(new URL('/search/?q=pad', baseURL).href);
  await expect(told(page)).toHaveText(/could not be fetched/);
  await field(page).fill('');
  await expect(told(page), 'nothing is asked, so nothing failed').toHaveText('');
  await expect(page).toHaveURL(/\/search\/$/);
  await field(page).fill('pad');
  await expect(told(page)).toHaveText(/could not be fetched/);
  await page.unroute('**/search/index.json');
  await page.getByRole('button', { name: 'Search' }).click();
  await expect(results(page).first()).toContainText('pad');
  await context.close();
});

test('without script the page says that it needs it, and where to look', async ({ browser, baseURL }) => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  await page.goto(new URL('/search/?q=pad', baseURL).href);
  await expect(page.getByText('The search needs script')).toBeVisible();
  await expect(field(page)).toBeHidden();
  await expect(page.getByRole('main').getByRole('link', { name: 'Words' })).toBeVisible();
  await context.close();
});
