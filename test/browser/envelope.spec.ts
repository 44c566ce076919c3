import type { Page } from '@playwright/test';
import { middleOf, openAt, pull, search } from './reader.ts';
import { expect, test } from './site.ts';

const lesson = '/learn/decibels/which-power/';
const nb = '\u00a0';

const open = (page: Page, query = ''): Promise<void> => openAt(page, lesson + query);
const field = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });
const answer = (page: Page, at: number) => page.locator('#figure .answers dt').nth(at);

const peak = (page: Page) => page.locator('#figure [data-handle="peak"]:visible');

test('the peak pulled down takes the mean along, stays under the pointer and leaves a ghost', async ({
  page,
}) => {
  await open(page);
  await expect(answer(page, 0)).toHaveText(`220${nb}mW`);
  const { y } = await pull(peak(page), { y: 60 });
  expect(Math.abs((await middleOf(peak(page))).y - y)).toBeLessThan(4);
  await expect(page.locator('#figure .plot-wide .plot-ghost')).toHaveCount(1);
  expect(await search(page), 'the address waits until the handle is let go').toBe('');
  await page.mouse.up();
  await expect.poll(() => search(page)).toMatch(/^\?p=0\.\d+&v=1$/);
  await expect(answer(page, 0)).not.toHaveText(`220${nb}mW`);
  await page.getByRole('button', { name: 'Back to the prepared transmitter' }).click();
  await expect.poll(() => search(page)).toBe('');
});

test('a pointer that the browser takes away puts the peak back', async ({ page }) => {
  await open(page);
  await pull(peak(page), { y: 50 });
  await expect(field(page, 'Peak envelope power')).not.toHaveValue('0.50');
  await page.locator('#figure .plot-place').dispatchEvent('pointercancel', { pointerId: 1 });
  await page.mouse.up();
  await expect(field(page, 'Peak envelope power')).toHaveValue('0.50');
  expect(await search(page)).toBe('');
});

test('arrow keys move the peak by its step and say it in words', async ({ page }) => {
  await open(page);
  const slider = page.getByRole('slider', { name: 'Peak envelope power: drag' });
  await slider.press('ArrowRight');
  await expect(field(page, 'Peak envelope power')).toHaveValue('0.51');
  await expect(slider).toHaveAttribute('aria-valuetext', '0.51 watts');
});

for (const [text, mean] of [
  ['2', `880${nb}mW`],
  ['500 mW', `220${nb}mW`],
  ['30 dBm', `440${nb}mW`],
] as const)
  test(`“${text}” typed as the peak makes a mean of ${mean}`, async ({ page }) => {
    await open(page);
    await field(page, 'Peak envelope power').fill(text);
    await expect(answer(page, 0)).toHaveText(mean);
  });

test('keying, average, wave and place together make the sentence that says what is meant', async ({
  page,
}) => {
  await open(page);
  const choose = (name: string, code: string) => page.getByRole('combobox', { name }).selectOption(code);
  await choose('Keyed with', 'twoEqualTones');
  await choose('Power that is meant', 'peakEnvelope');
  await choose('Which wave', 'delivered');
  await choose('Where', 'load');
  await expect(page.locator('#figure .answers dd').first()).toHaveText(
    'peak envelope power delivered, at the load behind the coax, driven by two equal tones',
  );
  await expect(answer(page, 2)).toHaveText('Efficiency not known');
  await expect.poll(() => search(page)).toBe('?k=t&m=p&pl=l&de=d&v=1');
});

test('an address opens its state, on paper too; a damaged one is told and the page goes on', async ({
  page,
}) => {
  await open(page, '?sl=mp&v=1');
  await expect(answer(page, 3)).toHaveText(`220${nb}mW stated`);
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('#figure .settings')).toContainText('A mean reading stated as PEP');
  await page.emulateMedia({ media: 'screen' });
  await open(page, '?p=lots&v=1');
  await expect(page.locator('#figure .caution')).toContainText('Peak envelope power');
  await expect(field(page, 'Peak envelope power')).toHaveValue('0.50');
});

test('on the wall one press changes the peak and the mean, and reset goes back', async ({ page }) => {
  await openAt(page, '/stage/learn/decibels/which-power/#envelope');
  const mean = page.locator('.stage-answer:visible');
  await expect(mean).toHaveText(`220${nb}mW on a meter that averages`);
  await page.getByRole('button', { name: /^More by/ }).click();
  // 0.44 x 0.6 W
  await expect(mean).toHaveText(`264${nb}mW on a meter that averages was 220${nb}mW`);
  await page.getByRole('button', { name: 'Reset' }).click();
  await expect(mean).toHaveText(`220${nb}mW on a meter that averages`);
});
