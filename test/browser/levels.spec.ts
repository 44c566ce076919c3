import type { Locator, Page } from '@playwright/test';
import { attributeValues } from '../site/links.ts';
import { drag, middleOf, openAt, pull, search } from './reader.ts';
import { expect, pages, test } from './site.ts';

const LESSON = '/learn/decibels/levels-and-gains/';
const open = (page: Page, query = ''): Promise<void> => openAt(page, LESSON + query);
const line = (page: Page) => page.locator('#figure');
const two = (page: Page) => page.locator('#two');
const answer = (part: Locator, index = 0) => part.locator('.answers dt').nth(index);

const handle = (part: Locator, id: string) => part.locator(`[data-handle="${id}"]:visible`);

/** Pulls the first tile of the line to the place of the third. */
async function pullToThird(page: Page): Promise<void> {
  const [first, third] = [handle(line(page), 't0'), handle(line(page), 't2')];
  await first.scrollIntoViewIfNeeded();
  const [from, to] = [await middleOf(first), await middleOf(third)];
  await pull(first, { x: to.x - from.x, y: to.y - from.y });
}

test('a tile pulled to another place goes there, and the line means the same', async ({ page }) => {
  await open(page);
  await expect(answer(line(page))).toHaveText('1.0\u00a0dBm');
  await pullToThird(page);
  expect(await search(page), 'the address waits until the tile is let go').toBe('');
  await page.mouse.up();
  await expect(page.getByLabel('Tile 3: number')).toHaveValue('27.0');
  await expect(answer(line(page))).toHaveText('1.0\u00a0dBm');
  await expect.poll(() => search(page)).toContain('t3x=27');
});

test('a pointer that the browser takes away puts the tile back', async ({ page }) => {
  await open(page);
  await pullToThird(page);
  await expect(page.getByLabel('Tile 3: number')).toHaveValue('27.0');
  await line(page).locator('.band-place').dispatchEvent('pointercancel', { pointerId: 1 });
  await page.mouse.up();
  await expect(page.getByLabel('Tile 1: number')).toHaveValue('27.0');
  expect(await search(page)).toBe('');
});

test('tiles are moved, taken away and added by keys alone', async ({ page }) => {
  await open(page);
  await page.getByRole('button', { name: 'Later: tile 1' }).press('Enter');
  await expect(page.getByLabel('Tile 2: number')).toHaveValue('27.0');
  await page.getByRole('button', { name: 'Remove: tile 1' }).press('Space');
  await expect(answer(line(page))).toHaveText('21.0\u00a0dBm');
  await page.getByRole('button', { name: 'Add a level' }).press('Enter');
  await expect(answer(line(page))).toHaveText('This sum means nothing');
  await page.getByLabel('Tile 3: kind').selectOption('less');
  await expect(answer(line(page))).toHaveText('+4.0\u00a0dB');
  await page.getByLabel('Tile 3: drag its number').press('ArrowRight');
  await expect(page.getByLabel('Tile 3: number')).toHaveValue('17.1');
  await page.getByRole('button', { name: 'Back to the prepared line' }).click();
  await expect.poll(() => search(page)).toBe('');
});

test('a level typed where a gain belongs is told, and the other way round', async ({ page }) => {
  await open(page);
  await page.getByLabel('Tile 2: number').fill('3 dBm');
  await expect(page.getByLabel('Tile 2: number')).toHaveAccessibleDescription(/dBm is a level/);
  await page.getByLabel('Tile 1: number').fill('27 dB');
  await expect(page.getByLabel('Tile 1: number')).toHaveAccessibleDescription(/relative to what/);
  await page.getByLabel('Tile 1: number').fill('1 W');
  await expect(answer(line(page))).toHaveText('4.0\u00a0dBm');
});

test('a signal pulled along the rulers changes both sums', async ({ page }) => {
  await open(page);
  await expect(answer(two(page))).toHaveText('20.0\u00a0dBm, unrelated');
  await drag(handle(two(page), 'second'), { x: -140 });
  await expect(answer(two(page))).not.toHaveText('20.0\u00a0dBm, unrelated');
  await expect.poll(() => search(page)).toMatch(/^\?two\.b=[\d.]+&two\.v=1$/);
  expect(Number(await page.getByLabel('Second signal', { exact: true }).inputValue())).toBeLessThan(12);
});

test('the phase takes two equal signals from six decibels more to nothing', async ({ page }) => {
  await open(page);
  const phase = page.getByLabel('Phase between them, in degrees', { exact: true });
  await phase.fill('120');
  await expect(answer(two(page), 1)).toHaveText('17.0\u00a0dBm, one frequency');
  await page.getByLabel('Phase between them, in degrees: drag it').press('End');
  await expect(answer(two(page), 1)).toHaveText('Nothing, one frequency');
  await expect.poll(() => search(page)).toBe('?two.ph=180&two.v=1');
});

test('both figures keep their states in one address', async ({ page }) => {
  await open(page, '?t=2&t1x=17&t2x=17&v=1&two.ph=90&two.v=1');
  await expect(answer(line(page))).toHaveText('This sum means nothing');
  await expect(answer(two(page), 1)).toHaveText('20.0\u00a0dBm, one frequency');
  await expect(page.locator('main .ruler-widget .caution')).toHaveCount(0);
  await page.getByRole('button', { name: 'Back to the prepared line' }).click();
  await expect.poll(() => search(page)).toBe('?two.ph=90&two.v=1');
});

const links = attributeValues(pages.find(({ path }) => path === LESSON)?.html ?? '', ['href']).filter(
  (href) => /^\?.*#(figure|two)$/.test(href),
);

test('the lesson leads to states of its figures', () => expect(links.length).toBeGreaterThanOrEqual(12));

for (const href of new Set(links)) {
  test(`${href} opens without a complaint, on another state`, async ({ page }) => {
    await open(page);
    const at = href.slice(href.indexOf('#'));
    const said = await page.locator(`${at} .answers`).innerText();
    const tiles = await page.locator(`${at} .rungs`).innerText();
    await open(page, href);
    await expect(page.locator('main .ruler-widget .caution')).toHaveCount(0);
    const now = [
      await page.locator(`${at} .answers`).innerText(),
      await page.locator(`${at} .rungs`).innerText(),
    ];
    expect(now).not.toEqual([said, tiles]);
  });
}

test('on the wall one press changes the pad, another the phase', async ({ page }) => {
  await openAt(page, `/stage${LESSON}#line`);
  await page.getByRole('button', { name: 'Less by 1 decibel' }).click();
  await expect(page.locator('.stage-answer:visible')).toHaveText('0.0\u00a0dBm was 1.0\u00a0dBm');
  await page.keyboard.press('End');
  await openAt(page, `/stage${LESSON}#together`);
  await page.getByRole('button', { name: 'More by 30' }).click();
  await expect(page.getByLabel('Phase between them, in degrees')).toHaveValue('30');
});

test('tiles and signals are on paper, buttons are not', async ({ page }) => {
  await open(page);
  await page.emulateMedia({ media: 'print' });
  await expect(line(page).locator('.tile-outline:visible')).toHaveCount(3);
  await expect(two(page).locator('.ruler-point:visible')).toHaveCount(2);
  await expect(page.locator('.ruler-widget button:visible')).toHaveCount(0);
});
