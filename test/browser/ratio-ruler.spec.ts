import type { Page } from '@playwright/test';
import { attributeValues } from '../site/links.ts';
import { middleOf, openAt, pull, search } from './reader.ts';
import { expect, pages, test } from './site.ts';

const LESSON = '/learn/decibels/ratios-that-add/';
const open = (page: Page, query = ''): Promise<void> => openAt(page, LESSON + query);
const figure = (page: Page) => page.locator('#figure');
const answer = (page: Page, index: number) => figure(page).locator('.answers dt').nth(index);
const decibels = (page: Page) => page.getByLabel('Ratio in decibels');
const power = (page: Page) => page.getByLabel('Power ratio', { exact: true });
const volts = (page: Page) => page.getByLabel('Voltage ratio', { exact: true });
const slider = (page: Page) => page.getByLabel('Ratio: drag the decibels');

const handle = (page: Page) => figure(page).locator('[data-handle="ratio"]:visible');

test('the line pulled to the right makes the ratio larger, and the address follows when it is let go', async ({
  page,
}) => {
  await open(page);
  await expect(answer(page, 0)).toHaveText('−26.0\u00a0dB');
  const { x } = await pull(handle(page), { x: 200 });
  await expect(answer(page, 0)).not.toHaveText('−26.0\u00a0dB');
  expect(await search(page)).toBe('');
  await page.mouse.up();
  await expect.poll(() => search(page)).toMatch(/^\?db=-?[\d.]+&v=1$/);
  expect(Number(await decibels(page).inputValue())).toBeGreaterThan(-20);
  expect(Math.abs((await middleOf(handle(page))).x - x), 'the line stays under the pointer').toBeLessThan(3);
});

test('a pointer that the browser takes away puts the ratio back', async ({ page }) => {
  await open(page);
  await pull(handle(page), { x: 120 });
  await figure(page).locator('.band-place').dispatchEvent('pointercancel', { pointerId: 1 });
  await page.mouse.up();
  await expect(answer(page, 0)).toHaveText('−26.0\u00a0dB');
  expect(await search(page)).toBe('');
});

test('arrow keys move the ratio by a tenth of a decibel and say it', async ({ page }) => {
  await open(page);
  await slider(page).focus();
  await page.keyboard.press('ArrowRight');
  await expect(decibels(page)).toHaveValue('-25.9');
  await expect(slider(page)).toHaveAttribute('aria-valuetext', 'minus 25.9 decibels');
  await page.keyboard.press('Home');
  await expect(answer(page, 1)).toHaveText('÷1000 in power');
  await page.keyboard.press('End');
  await expect(answer(page, 1)).toHaveText('×1000 in power');
  await expect.poll(() => search(page)).toBe('?db=30&v=1');
});

test('a ratio can be typed in any of its forms', async ({ page }) => {
  await open(page);
  await power(page).fill('2');
  await expect(answer(page, 0)).toHaveText('+3.01\u00a0dB');
  await expect(power(page)).toHaveValue('2');
  await volts(page).fill('10');
  await expect(answer(page, 0)).toHaveText('+20.0\u00a0dB');
  await expect(answer(page, 1)).toHaveText('×100 in power');
  await decibels(page).fill('7 dB');
  await expect(answer(page, 3)).toHaveText('≈\u00a0×5.00 by steps');
  await expect.poll(() => search(page)).toBe('?db=7&v=1');
});

for (const [field, text] of [
  [power, '0'],
  [power, '-3'],
  [volts, 'twice'],
  [decibels, '27 dBm'],
  [decibels, '99'],
] as const) {
  test(`“${text}” is told beside its field and changes nothing`, async ({ page }) => {
    await open(page);
    await field(page).fill(text);
    await expect(field(page)).toHaveAttribute('aria-invalid', 'true');
    await expect(field(page)).toHaveAccessibleDescription(/\S.*\.$/);
    await expect(answer(page, 0)).toHaveText('−26.0\u00a0dB');
  });
}

test('a mistake is shown beside the ratio, by the select and by its address', async ({ page }) => {
  await open(page);
  await expect(page.locator('.ruler-compared')).toHaveCount(0);
  await page.getByLabel('Show beside it what comes out with').selectOption('tenForVolts');
  await expect(figure(page).locator('.ruler-slip')).toContainText('−13.0\u00a0dB (dashed)');
  await expect(page.locator('.band-wide .ruler-compared')).toHaveCount(1);
  await expect.poll(() => search(page)).toBe('?sl=10&v=1');
  await page.getByRole('button', { name: 'Back to the prepared ratio' }).click();
  await expect.poll(() => search(page)).toBe('');
});

const states = attributeValues(pages.find(({ path }) => path === LESSON)?.html ?? '', ['href'])
  .filter((href) => href.startsWith('?') && href.endsWith('#figure'))
  .map((href) => href.slice(0, -'#figure'.length));

test('the lesson leads to states of its figure', () => expect(states.length).toBeGreaterThanOrEqual(7));

for (const state of new Set(states)) {
  test(`${state} opens the figure in that state`, async ({ page }) => {
    await open(page, state);
    await expect(page.locator('#figure .caution')).toHaveCount(0);
    await expect(decibels(page)).toHaveValue(
      new RegExp(`^${Number(new URLSearchParams(state).get('db')).toString().replace('.', '\\.')}(\\.0)?$`),
    );
  });
}

test('a damaged address is told, and the page goes on', async ({ page }) => {
  await open(page, '?db=lots&v=1');
  await expect(page.locator('#figure .caution')).toContainText('Ratio');
  await expect(answer(page, 0)).toHaveText('−26.0\u00a0dB');
});

test('on the wall one press changes the decibels', async ({ page }) => {
  await openAt(page, `/stage${LESSON}#rulers`);
  await page.getByRole('button', { name: 'More by 1 decibel' }).click();
  await expect(page.getByLabel('Ratio in decibels')).toHaveValue('-25.0');
  await page.getByRole('button', { name: 'Reset' }).click();
  await expect(page.getByLabel('Ratio in decibels')).toHaveValue('-26.0');
});
