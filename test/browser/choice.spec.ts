import type { Page } from '@playwright/test';
import { awake } from './awake.ts';
import { openAt, refuseStorage } from './reader.ts';
import { expect, test } from './site.ts';

const open = (page: Page): Promise<void> => openAt(page, '/learn/traceability/the-chain-to-the-definition/');
const guess = (page: Page) => page.locator('.choice').first();
/** The first of the questions at the end. */
const check = (page: Page) => page.locator('.choice').nth(1);

test('a guess is kept over a reload and compared when the answer is opened', async ({ page }) => {
  await open(page);
  await guess(page).getByLabel('The lent power meter.').check();
  await guess(page).getByRole('button', { name: 'Keep my guess' }).click();
  await expect(guess(page).getByRole('status')).toContainText('The lent power meter.');
  await page.reload();
  await awake(page);
  await expect(guess(page).getByLabel('The lent power meter.')).toBeChecked();
  await guess(page).locator('.answer summary').click();
  await expect(guess(page).locator('.answer')).toContainText('Your guess was another.');
  await expect(guess(page).locator('.answer')).toContainText('18\u00a0% of the variance');
  await guess(page).getByRole('button', { name: 'Choose again' }).click();
  await expect(guess(page).getByLabel('The lent power meter.')).not.toBeChecked();
});

test('a right guess is called right only when the answer is opened', async ({ page }) => {
  await open(page);
  await guess(page).getByLabel('The 20 dB pad, by its data sheet.').check();
  await guess(page).getByRole('button', { name: 'Keep my guess' }).click();
  await expect(guess(page).getByRole('status')).not.toContainText('right');
  await guess(page).locator('.answer summary').click();
  await expect(guess(page).locator('.answer')).toContainText('That was your guess, and it is right.');
});

test('where the browser keeps nothing, a guess works until the page is left', async ({ page }) => {
  await refuseStorage(page);
  await open(page);
  await guess(page).getByLabel('The lent power meter.').check();
  await guess(page).getByRole('button', { name: 'Keep my guess' }).click();
  await expect(guess(page).getByRole('status')).toContainText('The lent power meter.');
});

test('a guess kept for an option that is gone is no guess', async ({ page }) => {
  await page.addInitScript(() => localStorage.setItem('guess:chain-weakest-rung', 'zz'));
  await open(page);
  await expect(guess(page).getByRole('radio', { checked: true })).toHaveCount(0);
  await expect(guess(page).getByRole('button', { name: 'Keep my guess' })).toBeVisible();
});

test('a wrong answer to the check gets the reply to its own mistake, and another try', async ({ page }) => {
  await open(page);
  await check(page).getByRole('radio').first().check();
  await check(page).getByRole('button', { name: 'Check my answer' }).click();
  await expect(check(page).getByRole('status')).toContainText('Not this one. That adds the laboratory');
  await check(page).getByRole('button', { name: 'Choose again' }).click();
  await check(page).getByRole('radio').nth(1).check();
  await check(page).getByRole('button', { name: 'Check my answer' }).click();
  await expect(check(page).getByRole('status')).toContainText('Right. One certificate');
});

test('on paper both questions carry their worked answers', async ({ page }) => {
  await open(page);
  await page.emulateMedia({ media: 'print' });
  for (const choice of [guess(page), check(page)])
    expect((await choice.locator('.answer > p').last().boundingBox())?.height ?? 0).toBeGreaterThan(10);
});
