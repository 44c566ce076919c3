import type { Page } from '@playwright/test';
import { middleOf, openAt, pull, search } from './reader.ts';
import { expect, test } from './site.ts';

const lesson = '/learn/decibels/down-the-line/';
const nb = '\u00a0';

const open = (page: Page, query = ''): Promise<void> => openAt(page, lesson + query);
const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });
const answer = (page: Page, at: number) => page.locator('#figure .answers dt').nth(at);

const pad = (page: Page, id: string) => page.locator(`#figure [data-handle="${id}"]:visible`);

test('a pad pulled to the right takes less away, and every level below it moves along', async ({ page }) => {
  await open(page);
  await expect(answer(page, 0)).toHaveText(`\u221213.1${nb}dBm, 49.0${nb}µW`);
  const { x } = await pull(pad(page, 'first'), { x: 50 });
  expect(Math.abs((await middleOf(pad(page, 'first'))).x - x)).toBeLessThan(3);
  await expect(page.locator('#figure .plot-ghost:visible')).toHaveCount(1);
  expect(await search(page), 'the address waits until the handle is let go').toBe('');
  await page.mouse.up();
  await expect.poll(() => search(page)).toMatch(/^\?fp=\d+(\.\d)?&v=1$/);
  expect(Number(await field(page, 'First pad').inputValue())).toBeLessThan(19);
  await expect(answer(page, 0)).not.toHaveText(`\u221213.1${nb}dBm, 49.0${nb}µW`);
  await page.getByRole('button', { name: 'Back to the prepared line' }).click();
  await expect.poll(() => search(page)).toBe('');
});

test('a pointer that the browser takes away puts the line back', async ({ page }) => {
  await open(page);
  await pull(pad(page, 'second'), { x: 40 });
  await expect(field(page, 'Second pad')).not.toHaveValue('20.0');
  await page.locator('#figure .plot-place').dispatchEvent('pointercancel', { pointerId: 1 });
  await page.mouse.up();
  await expect(field(page, 'Second pad')).toHaveValue('20.0');
  expect(await search(page)).toBe('');
});

test('arrow keys move a loss by its step and say it in words', async ({ page }) => {
  await open(page);
  const slider = page.getByRole('slider', { name: 'First pad: drag' });
  await slider.press('ArrowLeft');
  await expect(field(page, 'First pad')).toHaveValue('19.9');
  await expect(slider).toHaveAttribute('aria-valuetext', '19.9 decibels');
});

test('a level may be typed in watts, a loss in decibels only', async ({ page }) => {
  await open(page);
  await field(page, 'Transmitter').fill('1 W');
  await expect(answer(page, 0)).toHaveText(`\u221210.1${nb}dBm, 97.7${nb}µW`); // 30 - 40.1
  await field(page, 'First pad').fill('10 dBm');
  await expect(field(page, 'First pad')).toHaveAttribute('aria-invalid', 'true');
  await expect(field(page, 'First pad')).toHaveAccessibleDescription(/A loss is expected, in decibels/);
});

test('an amplifier in front is told as too much, in words', async ({ page }) => {
  await open(page, '?am=10&v=1');
  await expect(page.locator('#figure svg:visible')).toContainText('TOO MUCH');
  await field(page, 'Amplifier').fill('0');
  await expect(page.locator('#figure svg:visible')).not.toContainText('TOO MUCH');
});

test('a part that is left out is drawn, reckoned and said to be a calculation, on paper too', async ({
  page,
}) => {
  await open(page, '?w=f&v=1');
  await expect(page.locator('#figure .answers')).toContainText('This is a calculation. Never try it.');
  await expect(page.locator('#figure .plot-slipped:visible')).toHaveCount(1);
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('#figure .settings')).toContainText('The first pad');
});

test('the end of the line changes what can be set, and the way to an antenna has its two powers', async ({
  page,
}) => {
  await open(page);
  await page.getByRole('combobox', { name: 'The line ends in' }).selectOption('antenna');
  await expect(field(page, 'First pad')).toHaveCount(0);
  await field(page, 'Antenna').fill('5');
  await expect(answer(page, 0)).toHaveText(`31.90${nb}dBm, 1.55${nb}W EIRP`); // 27 - 0.1 + 5
  await expect(answer(page, 1)).toHaveText(`29.75${nb}dBm, 944${nb}mW ERP`);
  await expect.poll(() => search(page)).toBe('?ag=5&e=a&v=1');
});

test('a damaged address is told and the page goes on', async ({ page }) => {
  await open(page, '?fp=much&v=1');
  await expect(page.locator('#figure .caution')).toContainText('First pad');
  await expect(field(page, 'First pad')).toHaveValue('20.0');
});

test('on the wall one press changes the first pad, and reset goes back', async ({ page }) => {
  await openAt(page, '/stage/learn/decibels/down-the-line/#staircase');
  const level = page.locator('.stage-answer:visible');
  await expect(level).toHaveText(`\u221213.1${nb}dBm, 49.0${nb}µW`);
  await page.getByRole('button', { name: /^Less by/ }).click();
  await expect(level).toHaveText(/^\u221212\.1\u00a0dBm/);
  await page.getByRole('button', { name: 'Reset' }).click();
  await expect(level).toHaveText(`\u221213.1${nb}dBm, 49.0${nb}µW`);
});
