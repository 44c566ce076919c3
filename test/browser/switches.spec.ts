import type { Page } from '@playwright/test';
import { openAt, search } from './reader.ts';
import { expect, test } from './site.ts';

const padField = (page: Page) => page.getByRole('textbox', { name: '20 decibel pad: what it adds' });

test('the curves are fetched when they are wanted, one a rung and one at the socket', async ({ page }) => {
  await openAt(page, '/');
  await expect(page.locator('.band-curve')).toHaveCount(0);
  const fetched = page.waitForRequest(/\.js$/);
  await page.getByLabel('Show the whole distribution as a curve').check();
  await fetched;
  await expect(page.locator('.band-wide .band-curve')).toHaveCount(7);
  await expect.poll(() => search(page)).toBe('?cu=1&v=1');
  await page.getByLabel('Show the whole distribution as a curve').uncheck();
  await expect(page.locator('.band-curve')).toHaveCount(0);
  await expect.poll(() => search(page)).toBe('');
});

test('the end marks go and come with their switch, and with the words on them', async ({ page }) => {
  await openAt(page, '/');
  await expect(page.locator('.band-wide .band-mark').first()).toBeVisible();
  await page.getByLabel('Show the worst case as end marks').uncheck();
  await expect(page.locator('.band-wide .band-mark')).toHaveCount(0);
  await expect(page.getByText('End marks: the sum of all limits')).toHaveCount(0);
  await expect.poll(() => search(page)).toBe('?en=0&v=1');
});

test('back to the prepared values takes the state out of the address', async ({ page }) => {
  await openAt(page, '/?pa=0.1&v=1');
  await expect(padField(page)).toHaveValue('0.1');
  await page.getByRole('button', { name: 'Back to the prepared values' }).click();
  await expect(padField(page)).toHaveValue('0.5');
  await expect.poll(() => search(page)).toBe('');
});

test('what stands wrongly in a field gives way to a value set by the slider', async ({ page }) => {
  await openAt(page, '/');
  await padField(page).fill('abc');
  await expect(padField(page)).toHaveAttribute('aria-invalid', 'true');
  await page.getByRole('slider', { name: '20 decibel pad: drag what it adds' }).press('ArrowRight');
  await expect(padField(page)).toHaveValue('0.51');
  await expect(padField(page)).not.toHaveAttribute('aria-invalid');
});
