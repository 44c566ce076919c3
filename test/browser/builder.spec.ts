import { awake } from './awake.ts';
import { openAt, search } from './reader.ts';
import { expect, test } from './site.ts';

const LESSON = '/learn/traceability/the-chain-to-the-definition/';

test('a reader takes a rung out, adds one and names it; figure, table and address follow', async ({
  page,
}) => {
  await openAt(page, LESSON);
  const figure = page.locator('.band-wide');
  const rung = (name: string) => figure.locator('.band-label', { hasText: name });
  await page.getByRole('button', { name: 'Build a chain of your own' }).click();
  await expect(page.locator('.builder')).toBeFocused();
  await page.getByRole('button', { name: 'Take out 20 decibel pad' }).click();
  await expect(rung('20 dB pad')).toHaveCount(0);
  await expect.poll(() => search(page)).toBe('?o=pa&v=1');
  await page.getByRole('button', { name: 'Add a rung with limits' }).click();
  await page.getByLabel('Name of your rung 1').fill('My own pad');
  await expect(rung('My own pad')).toBeVisible();
  await page.getByRole('textbox', { name: 'My own pad: what it adds' }).fill('0.4');
  await expect.poll(() => search(page)).toBe('?r=1&r1n=My-own-pad&r1a=0.4&o=pa&v=1');
  const band = await figure.locator('.band-number').last().textContent();
  await page.reload();
  await awake(page);
  await expect(rung('My own pad')).toBeVisible();
  await expect(figure.locator('.band-number').last()).toHaveText(band ?? '');
  await page.getByRole('button', { name: 'Back to the prepared values' }).click();
  await expect(rung('20 dB pad')).toBeVisible();
  await expect.poll(() => search(page)).toBe('');
});

test('a reader who asks for it without a network is told so, and may ask again', async ({
  browser,
  baseURL,
}) => {
  // a context of its own: that one fetch fails is what is wanted here
  const context = await browser.newContext();
  const page = await context.newPage();
  await openAt(page, new URL(LESSON, baseURL).href);
  await context.setOffline(true);
  const build = page.getByRole('button', { name: 'Build a chain of your own' });
  await build.click();
  await expect(page.getByText('Not fetched. Press again.')).toBeVisible();
  await context.setOffline(false);
  await build.click();
  await expect(page.locator('.builder')).toBeFocused();
  await context.close();
});
