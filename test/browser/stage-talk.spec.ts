import type { Page } from '@playwright/test';
import { awake } from './awake.ts';
import { expect, test } from './site.ts';

const stage = '/stage/learn/traceability/the-chain-to-the-definition/';

const open = async (page: Page, rest = ''): Promise<void> => {
  await page.goto(stage + rest);
  await awake(page);
};
const now = (page: Page) => page.locator('.slide.now');
const told = (page: Page) => page.locator('[data-deck="told"]');
const amount = (page: Page) => page.getByLabel('20 decibel pad: what it adds');

test('from any step one key leads to the number, ready to be typed over, and back to where the speaker was', async ({
  page,
}) => {
  await open(page, '#watts');
  await page.keyboard.press('w');
  await expect(now(page)).toHaveId('rungs');
  await expect(amount(page)).toBeFocused();
  await page.keyboard.type('2,0');
  await expect(page.locator('.band-stage .band-number').last()).toHaveText('±2.3\u00a0dB');
  await expect(page.locator('.band-stage .band-ghost').first(), 'the answer before stays').toBeVisible();
  await page.keyboard.press('Escape');
  await expect(amount(page)).not.toBeFocused();
  await page.keyboard.press('w');
  await expect(now(page)).toHaveId('watts');
});

test('0 brings back what was prepared: the number, and the answer hidden', async ({ page }) => {
  await open(page, '#rungs');
  await amount(page).fill('2');
  await expect(page.locator('.band-stage .band-number').last()).toHaveText('±2.3\u00a0dB');
  await amount(page).press('Escape');
  await page.keyboard.press('0');
  await expect(amount(page)).toHaveValue('0.5');
  await page.keyboard.press('PageUp');
  await now(page).locator('summary').click();
  await now(page).locator('summary').blur();
  await page.keyboard.press('0');
  await expect(now(page).locator('.answer')).not.toHaveAttribute('open');
});

test('Escape loses nothing: it leaves the field with what was typed, and ends a blank wall', async ({
  page,
}) => {
  await open(page, '#rungs');
  await amount(page).fill('1');
  await page.keyboard.press('Escape');
  await expect(amount(page)).toHaveValue(/^1(\.0)?$/);
  await expect(now(page)).toHaveId('rungs');
  await expect(told(page), 'no key has done anything to the wall yet').toHaveText('');
  await page.keyboard.press('.');
  await expect(page.locator('main')).toBeHidden();
  await expect(page.getByRole('status').filter({ hasText: 'The wall is blank.' }), 'and heard').toHaveCount(
    1,
  );
  await page.keyboard.press('Escape');
  await expect(page.locator('main')).toBeVisible();
  await expect(told(page)).toHaveText('The wall shows the step again.');
});

test('the help tells the keys, closes by Escape, and switches those of one sign off for good', async ({
  page,
}) => {
  await open(page);
  await page.keyboard.press('?');
  await expect(page.getByRole('dialog', { name: 'Keys of the stage' })).toBeVisible();
  await page.getByLabel(/Keys of one letter/).uncheck();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toBeHidden();
  await page.reload();
  await awake(page);
  await page.keyboard.press('b');
  await expect(page.locator('main')).toBeVisible();
  await page.keyboard.press('ArrowRight');
  await expect(now(page)).toHaveId('rungs');
  await expect(told(page)).toHaveText(/^Step 2 of \d+: Every rung was compared with the one above$/);
  await page.getByRole('button', { name: 'Keys' }).click();
  await expect(page.getByLabel(/Keys of one letter/)).not.toBeChecked();
});

test('f takes the whole screen and gives it back', async ({ page }) => {
  await open(page);
  const full = (): Promise<boolean> => page.evaluate(() => document.fullscreenElement !== null);
  await page.keyboard.press('f');
  await expect.poll(full).toBe(true);
  await page.keyboard.press('f');
  await expect.poll(full).toBe(false);
});

test('hands are counted beside the options, shown against the answer, and survive a reload', async ({
  page,
}) => {
  await open(page);
  const fields = now(page).getByLabel(/^Hands for/);
  await fields.nth(0).fill('x');
  await expect(fields.nth(0)).toHaveAccessibleDescription('Hands are counted in whole numbers.');
  await fields.nth(0).fill('9');
  await expect(fields.nth(0)).toHaveAccessibleDescription('');
  await fields.nth(3).fill('3');
  await expect(now(page), 'nothing is told before').not.toContainText('of 12');
  await now(page).getByText('The answer').click();
  await expect(now(page).getByRole('listitem').nth(0)).toContainText('9 of 12');
  await expect(now(page).getByRole('listitem').nth(3)).toContainText('the answer');
  await expect(now(page).getByRole('listitem').nth(3)).toContainText('3 of 12');
  await page.reload();
  await awake(page);
  await expect(fields.nth(0)).toHaveValue('9');
});

test('an answer that was opened before the page was awake is marked all the same', async ({ page }) => {
  await page.route('**/StageGuess*.js', async (route) => {
    await page.locator('.slide.now summary').click();
    await route.continue();
  });
  await open(page);
  await expect(now(page).getByRole('listitem').nth(3)).toContainText('the answer');
});

test('notes open in a second window, move with the wall and move it, show the next step, a clock and each changed number', async ({
  page,
  context,
}) => {
  await open(page, '#rungs');
  await amount(page).fill('2');
  await amount(page).press('Escape');
  const opened = context.waitForEvent('page');
  await page.keyboard.press('n');
  const notes = await opened;
  await awake(notes);
  await expect(now(notes)).toHaveId('rungs');
  await expect(now(notes)).toContainText('Read the figure from the top.');
  await expect(page.locator('.slide-notes').first(), 'not for the wall').toBeHidden();
  await expect(notes.getByText('A band can only widen on its way down')).toBeVisible();
  await expect(amount(notes), 'changed before the notes were there').toHaveValue(/^2/);
  await page.getByRole('button', { name: /^More by/ }).click();
  await expect(amount(notes)).toHaveValue('2.1');
  await expect(notes.locator('.now .band-number').last()).toHaveText('±2.5\u00a0dB');
  await notes.getByRole('button', { name: 'Reset' }).click();
  await expect(amount(page), 'and back').toHaveValue('0.5');
  await expect(notes.locator('[data-deck="clock"]')).toHaveText(/^\d\d:\d\d$/);
  await page.locator('.slide.now .band-handle').last().hover();
  await page.mouse.down();
  const { x, y } = (await page.locator('.slide.now .band-handle').last().boundingBox()) ?? { x: 0, y: 0 };
  await page.mouse.move(x + 60, y, { steps: 3 });
  await page.mouse.up();
  const socket = (window: Page) => window.locator('.now .band-number').last();
  await expect(socket(page), 'a rung is pulled').not.toHaveText('±0.69\u00a0dB');
  await expect(socket(notes), 'there as well').toHaveText((await socket(page).textContent()) ?? '');
  await page.keyboard.press('PageUp');
  await notes.locator('.slide.now').getByText('The answer').click();
  await expect(now(page).locator('.answer'), 'an answer that is opened').toHaveAttribute('open');
  await page.keyboard.press('PageDown');
  await page.keyboard.press('PageDown');
  await expect(now(notes)).toHaveId('widening');
  await notes.keyboard.press('PageDown');
  await expect(now(page)).toHaveId('three-ways');
  await notes.keyboard.press('b');
  await expect(page.locator('main')).toBeHidden();
  await expect(notes.locator('main'), 'the speaker goes on reading').toBeVisible();
  await expect(told(notes), 'spoken in the window where it was done').toHaveText('The wall is blank.');
  await expect(told(page)).not.toHaveText('The wall is blank.');
});

test('the last step has the address, large, and a code for it', async ({ page }) => {
  await open(page);
  await page.keyboard.press('End');
  await expect(now(page)).toHaveId('address');
  await expect(now(page).getByRole('img', { name: /Code for a telephone/ })).toBeVisible();
  const size = await now(page)
    .locator('.key-number')
    .evaluate((node) => Number.parseFloat(getComputedStyle(node).fontSize));
  expect(size).toBeGreaterThanOrEqual(768 / 15);
});

test('on paper each step is a small copy of its slide with its notes and room to write, and no buttons', async ({
  page,
}) => {
  await open(page);
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByText('Read the figure from the top.')).toBeVisible();
  await expect(page.getByText('What to remember')).toBeVisible();
  await expect(page.getByRole('navigation')).toBeHidden();
  const room = await page
    .locator('#rungs')
    .evaluate((slide) => Number.parseFloat(getComputedStyle(slide, '::after').height));
  expect(room).toBeGreaterThan(50);
  // from the notes the same prints: every step, as the wall has it, and nothing of the speaker’s window
  await open(page, '?notes#rungs');
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.slide-notes:visible')).toHaveCount(await page.locator('.slide-notes').count());
  const sizes = await page.locator('#widening .slide-body').evaluate((body) => {
    const { width, height } = body.getBoundingClientRect();
    const number = Number.parseFloat(getComputedStyle(body.querySelector('.key-number') ?? body).fontSize);
    return { shape: width / height, number: number / height };
  });
  expect(sizes.shape).toBeCloseTo(4 / 3, 1);
  expect(sizes.number).toBeGreaterThan(1 / 16);
});
