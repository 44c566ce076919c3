import type { Page } from '@playwright/test';
import { MOST_NUMBERS, numbersIn } from '../../src/stage/numbers.ts';
import { awake, settled } from './awake.ts';
import { allPages, expect, pages, test } from './site.ts';

const stage = '/stage/learn/traceability/the-chain-to-the-definition/';

const open = async (page: Page, fragment = '', path = stage): Promise<void> => {
  await page.goto(path + fragment);
  await awake(page);
};
const shown = (page: Page): Promise<string[]> =>
  page.locator('.slide:visible').evaluateAll((slides) => slides.map(({ id }) => id));
const amount = (page: Page) => page.getByLabel('20 decibel pad: what it adds');

test('a clicker moves on and back, one step at a time, and the address follows without history', async ({
  page,
}) => {
  await open(page);
  const before = await page.evaluate(() => history.length);
  expect(await shown(page)).toEqual(['guess']);
  await page.keyboard.press('PageDown');
  expect(await shown(page)).toEqual(['rungs']);
  expect(await page.evaluate(() => location.hash)).toBe('#rungs');
  await page.keyboard.press('PageUp');
  expect(await shown(page)).toEqual(['guess']);
  await page.keyboard.press('PageUp');
  expect(await shown(page), 'the first step has none before it').toEqual(['guess']);
  expect(await page.evaluate(() => history.length)).toBe(before);
});

test('a clicker moves even while the number field or a button has the focus, and the field’s own keys stay its own', async ({
  page,
}) => {
  await open(page, '#rungs');
  await amount(page).focus();
  await page.keyboard.press('ArrowRight');
  expect(await shown(page)).toEqual(['rungs']);
  await page.keyboard.press('PageDown');
  expect(await shown(page)).toEqual(['widening']);
  await page.keyboard.press('PageUp');
  await page.locator('[data-deck-does="on"]').click();
  await page.keyboard.press('ArrowRight');
  expect(await shown(page), 'a pressed button leaves the arrows to the deck').toEqual(['three-ways']);
});

test('a key that is held moves once', async ({ page }) => {
  await open(page);
  await page.keyboard.down('PageDown');
  for (let repeat = 0; repeat < 5; repeat += 1) await page.keyboard.down('PageDown');
  await page.keyboard.up('PageDown');
  expect(await shown(page)).toEqual(['rungs']);
});

test('b blanks the wall and brings it back, but not while somebody types', async ({ page }) => {
  await open(page, '#rungs');
  await page.keyboard.press('b');
  await expect(page.locator('main')).toBeHidden();
  await page.keyboard.press('b');
  await expect(page.locator('main')).toBeVisible();
  await amount(page).press('b');
  await expect(page.locator('main')).toBeVisible();
});

test('a blank wall is dark where the system’s own colours are light, too', async ({ page }) => {
  await page.emulateMedia({ forcedColors: 'active', colorScheme: 'light' });
  await open(page, '#rungs');
  const ground = (): Promise<string> => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
  expect(await ground()).not.toBe('rgb(0, 0, 0)');
  await page.keyboard.press('b');
  expect(await ground()).toBe('rgb(0, 0, 0)');
});

test('a clicker pressed on a blank wall shows it again, and passes no step unseen', async ({ page }) => {
  await open(page, '#rungs');
  await page.keyboard.press('b');
  await page.keyboard.press('PageDown');
  await expect(page.locator('main')).toBeVisible();
  expect(await shown(page)).toEqual(['rungs']);
  await page.keyboard.press('PageUp');
  expect(await shown(page)).not.toEqual(['rungs']);
});

test('plus and minus change the band in one press, the field to any value, and reset goes back', async ({
  page,
}) => {
  await open(page, '#rungs');
  const socket = page.locator('.band-stage .band-number').last();
  await expect(socket).toHaveText('±0.69\u00a0dB');
  await page.getByRole('button', { name: /^More by/ }).click();
  await expect(amount(page)).toHaveValue('0.6');
  await expect(socket).toHaveText('±0.79\u00a0dB');
  await page.getByRole('button', { name: /^Less by/ }).click();
  await page.getByRole('button', { name: /^Less by/ }).click();
  await expect(amount(page)).toHaveValue('0.4');
  await amount(page).fill('2 dB');
  await expect(socket).toHaveText('±2.3\u00a0dB');
  await page.getByRole('button', { name: 'Reset' }).click();
  await expect(socket).toHaveText('±0.69\u00a0dB');
});

/**
 * What of the step in sight the room could not use: texts smaller than a 25th of the height, numbers it is about smaller than a 15th,
 * lines thinner than 3 px on a wall of 768, and whatever reaches into the outer twentieth or under the bar at the foot.
 */
const unfit = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const told: string[] = [];
    const slide = document.querySelector('.slide:not([hidden])');
    const scaleOf = (node: Element): number =>
      node instanceof SVGGraphicsElement ? (node.getScreenCTM()?.d ?? 1) : 1;
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const parent = node.parentElement;
      if (!parent || !node.textContent?.trim() || !parent.checkVisibility()) continue;
      if (parent.closest('.visually-hidden, title, desc, script')) continue;
      const px = Number.parseFloat(getComputedStyle(parent).fontSize) * scaleOf(parent);
      const isKey =
        parent.closest(
          '.slide:not(:has(.stage-guess)) .key-number, .slide:not(.slide-figure, .slide-guess, .slide-guess-few) .nowrap, .stage-answer',
        ) !== null && parent.closest('.stage-ghost') === null;
      if (px < innerHeight / (isKey ? 15 : 25)) told.push(`small: ${node.textContent.trim()}: ${px}`);
    }
    for (const field of slide?.querySelectorAll('.stage-what-if input') ?? [])
      if (Number.parseFloat(getComputedStyle(field).fontSize) < innerHeight / 15) told.push('small: field');
    for (const node of slide?.querySelectorAll<SVGGraphicsElement>('svg[role="img"] *') ?? []) {
      const { stroke, strokeWidth, vectorEffect } = getComputedStyle(node);
      if (stroke === 'none' || !(node instanceof SVGGeometryElement) || !node.checkVisibility()) continue;
      if (node.closest('.band-handle, .pull, defs, pattern')) continue;
      const scale = vectorEffect === 'non-scaling-stroke' ? 1 : scaleOf(node);
      const px = (Number.parseFloat(strokeWidth) * scale * 768) / innerHeight;
      if (px < 2.9) told.push(`thin: ${node.tagName} ${node.getAttribute('class')}: ${px.toFixed(2)}`);
    }
    const bar = document.querySelector('.stage-bar')?.getBoundingClientRect();
    const [x, y] = [innerWidth / 20 - 1, innerHeight / 20 - 1];
    if (bar && (bar.left < x || bar.right > innerWidth - x || bar.bottom > innerHeight - y))
      told.push('outside: the bar');
    for (const node of slide?.querySelectorAll('.slide-body *') ?? []) {
      const { left, right, top, bottom, width, height } = node.getBoundingClientRect();
      const clipped = node.closest('.visually-hidden, .band-handle') !== null;
      if (clipped || width === 0 || height === 0 || !node.checkVisibility()) continue;
      const under = bar !== undefined && bottom > bar.top + 1 && right > bar.left;
      if (left < x || right > innerWidth - x || top < y || bottom > innerHeight - y || under)
        told.push(`outside: ${node.tagName} ${node.textContent?.slice(0, 40)}`);
    }
    return [...new Set(told)];
  });

/**
 * What of the step in sight is counted as numbers. Not counted: its title; what a figure has on its axes; the options of a question and
 * its answer, which are asked for; the sum behind an outcome, which is one line to follow. A value that the page marks as one, with its
 * band or both its ends, is one.
 */
const told = (page: Page): Promise<{ text: string; values: readonly string[] }> =>
  page.evaluate(() => {
    const body = document.querySelector('.slide:not([hidden]) .slide-body')?.cloneNode(true) as Element;
    const fields = [
      ...document.querySelectorAll<HTMLInputElement>('.slide:not([hidden]) .stage-what-if input'),
    ];
    const out =
      'h2, script, svg, table, button, .stage-guess ul, details, .sum, .katex, .visually-hidden, [aria-live], style';
    for (const node of body.querySelectorAll(out)) node.remove();
    const values = [...body.querySelectorAll('.nowrap')].map((node) => node.textContent ?? '');
    for (const node of body.querySelectorAll('p, li, fieldset')) node.append('\n');
    return { text: [body.textContent, ...fields.map(({ value }) => value)].join('\n'), values };
  });

/** How many numbers that is: a marked value with several figures counts once. */
function countOf({ text, values }: { text: string; values: readonly string[] }): number {
  const several = values.filter((value) => numbersIn(value) > 1);
  return numbersIn(several.reduce((all, value) => all.replace(value, '1'), text));
}

/** Presses until an answer moves at most, up or else down: a verdict takes several. */
const MOST_PRESSES = 8;

/**
 * Presses plus on the step in sight until its answer moves, and says whether there was a number to change at all. The answer before
 * has to stay to be seen, as it was.
 */
async function changed(page: Page): Promise<boolean> {
  const slide = page.locator('.slide:visible');
  const [more, less] = [/^More by/, /^Less by/].map((name) => slide.getByRole('button', { name }));
  // what is unfolded on the wall is a figure without an answer
  if (!more || !less || (await more.count()) === 0 || (await slide.locator('.tree-box').count()) > 0)
    return false;
  const textOf = async (): Promise<string> => (await slide.locator('.stage-band').textContent()) ?? '';
  const ghost = slide.locator('.stage-ghost');
  let was = '';
  for (let press = 0; press < 3 * MOST_PRESSES && (await ghost.count()) === 0; press += 1) {
    was += await textOf();
    await (press < MOST_PRESSES ? more : less).click();
    // what computes the answer may be fetched first, and trials are run: a press more would begin them anew
    await settled(page);
    const said = (await ghost.count()) > 0 ? await ghost.textContent() : '';
    const before = /^was (.*)/.exec(said ?? '')?.[1];
    // soft: a wrong ghost on one step hides nothing of the next, and the test fails all the same
    for (const word of before?.split(' ') ?? [])
      expect.soft(was, 'the ghost is of an answer before').toContain(word);
    expect.soft(before ?? '', 'and of one that was worked out').not.toMatch(/^(Too few|Not worked out)/);
  }
  await expect.soft(ghost, 'the answer before stays').toBeVisible();
  return true;
}

const walls = [
  { width: 1024, height: 768 },
  { width: 1280, height: 720 },
  { width: 1920, height: 1080 },
];

for (const { path } of allPages.filter((one) => /^\/stage\/(learn|examples)\//.test(one.path)))
  test(`every step of ${path} fits each wall, can be read from the back row, and has three numbers at most, and one of them can be changed`, async ({
    page,
  }) => {
    await open(page, '', path);
    const steps = await page.locator('.slide').count();
    expect(steps).toBeGreaterThan(3);
    let canChange = false;
    for (let step = 0; step < steps; step += 1) {
      const [id] = await shown(page);
      const numbers = await told(page);
      if (id !== 'address')
        expect.soft(countOf(numbers), `numbers of ${id}: ${numbers.text}`).toBeLessThanOrEqual(MOST_NUMBERS);
      // soft: one visit tells of every step and wall, and the test fails all the same
      for (const wall of walls) {
        await page.setViewportSize(wall);
        expect.soft(await unfit(page), `${id} at ${wall.width}`).toEqual([]);
      }
      if (await changed(page)) {
        canChange = true;
        for (const wall of walls) {
          await page.setViewportSize(wall);
          expect.soft(await unfit(page), `${id} with its ghost at ${wall.width}`).toEqual([]);
        }
      }
      await page.keyboard.press('PageDown');
    }
    expect(canChange, 'a number to be changed').toBe(true);
  });

for (const { path } of pages.filter((one) => one.path.startsWith('/stage/learn/')))
  test(`the answer on ${path} fits each wall beside its question and the room’s hands`, async ({ page }) => {
    await open(page, '', path);
    await page
      .getByLabel(/^Hands for/)
      .first()
      .fill('12');
    await page.locator('.slide:visible .answer summary').click();
    await expect(page.locator('.slide:visible')).toContainText('12 of 12');
    for (const wall of walls) {
      await page.setViewportSize(wall);
      expect.soft(await unfit(page), `at ${wall.width}`).toEqual([]);
    }
  });

test('on paper the numbers of the figure stand in a table, and its buttons do not', async ({ page }) => {
  await open(page);
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('row', { name: /^20 dB pad/ })).toContainText('±0.5\u00a0dB, limits');
  await expect(page.locator('.stage-what-if')).toBeHidden();
});

test('on paper all steps stand one below the other', async ({ page }) => {
  await open(page);
  await page.emulateMedia({ media: 'print' });
  expect((await shown(page)).length).toBe(await page.locator('.slide').count());
});
