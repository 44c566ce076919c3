import type { Page } from '@playwright/test';
import { middleOf, openAt, pull, search } from './reader.ts';
import { expect, test } from './site.ts';

const lesson = '/learn/decibels/volts-and-watts/';
const nb = '\u00a0';

const open = (page: Page, query = ''): Promise<void> => openAt(page, lesson + query);
const field = (page: Page) => page.getByRole('textbox', { name: 'Trough to crest' });
const answer = (page: Page, at: number) => page.locator('#figure .answers dt').nth(at);

const crest = (page: Page) => page.locator('#figure [data-handle="crest"]:visible');

test('the crest pulled down lowers every measure, stays under the pointer and leaves a ghost', async ({
  page,
}) => {
  await open(page);
  await expect(answer(page, 1)).toHaveText(`497${nb}mW, 26.96${nb}dBm`);
  const { y } = await pull(crest(page), { y: 40 });
  expect(Math.abs((await middleOf(crest(page))).y - y)).toBeLessThan(3);
  await expect(page.locator('#figure .plot-ghost:visible')).toHaveCount(1);
  expect(await search(page), 'the address waits until the handle is let go').toBe('');
  await page.mouse.up();
  await expect.poll(() => search(page)).toMatch(/^\?pp=\d+(\.\d)?&v=1$/);
  expect(Number(await field(page).inputValue())).toBeLessThan(13);
  await expect(answer(page, 1)).not.toHaveText(`497${nb}mW, 26.96${nb}dBm`);
  await page.getByRole('button', { name: 'Back to the prepared trace' }).click();
  await expect.poll(() => search(page)).toBe('');
});

test('a pointer that the browser takes away puts the trace back', async ({ page }) => {
  await open(page);
  await pull(crest(page), { y: 40 });
  await expect(field(page)).not.toHaveValue('14.1');
  await page.locator('#figure .plot-place').dispatchEvent('pointercancel', { pointerId: 1 });
  await page.mouse.up();
  await expect(field(page)).toHaveValue('14.1');
  expect(await search(page)).toBe('');
});

test('arrow keys move the height by its step and say it in words', async ({ page }) => {
  await open(page);
  const slider = page.getByRole('slider', { name: 'Trough to crest: drag' });
  await slider.press('ArrowRight');
  await expect(field(page)).toHaveValue('14.2');
  await expect(slider).toHaveAttribute('aria-valuetext', '14.2 volts peak to peak');
});

for (const [text, power] of [
  ['20', `1.00${nb}W, 30.00${nb}dBm`],
  ['44,7 V', `5.00${nb}W, 36.99${nb}dBm`],
  ['2000 mV', `10.0${nb}mW, 10.00${nb}dBm`],
] as const)
  test(`“${text}” typed as the height gives ${power}`, async ({ page }) => {
    await open(page);
    await field(page).fill(text);
    await expect(answer(page, 1)).toHaveText(power);
    await expect(field(page)).toHaveValue(text);
  });

test('a slip is chosen from the list, told in the answers and drawn', async ({ page }) => {
  await open(page);
  await page.getByRole('combobox', { name: 'Slip to look at' }).selectOption('wholeAsRms');
  await expect(answer(page, 2)).toHaveText(`3.98${nb}W by the slip`);
  await expect(page.locator('#figure .plot-wide .plot-slipped')).toHaveCount(1);
  await expect.poll(() => search(page)).toBe('?sl=pr&v=1');
});

test('an address opens its state, on paper too; a damaged one is told and the page goes on', async ({
  page,
}) => {
  await open(page, '?w=q&sl=sf&v=1');
  await expect(answer(page, 2)).toHaveText(`497${nb}mW by the slip`);
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('#figure .settings')).toContainText('Square');
  await expect(page.locator('#figure .looked-at')).toContainText('looked at');
  await page.emulateMedia({ media: 'screen' });
  await open(page, '?pp=zz&v=1');
  await expect(page.locator('#figure .caution')).toContainText('Trough to crest');
  await expect(field(page)).toHaveValue('14.1');
});

test('on the wall one press changes the height and the power, and reset goes back', async ({ page }) => {
  await openAt(page, '/stage/learn/decibels/volts-and-watts/#measures');
  const power = page.locator('.stage-answer:visible');
  await expect(power).toHaveText(`497${nb}mW, 26.96${nb}dBm`);
  await page.getByRole('button', { name: /^More by/ }).click();
  // 15.1²/400
  await expect(power).toHaveText(`570${nb}mW, 27.56${nb}dBm was 497${nb}mW, 26.96${nb}dBm`);
  await page.getByRole('button', { name: 'Reset' }).click();
  await expect(power).toHaveText(`497${nb}mW, 26.96${nb}dBm`);
});
