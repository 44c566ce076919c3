import { openAt } from './reader.ts';
import { expect, pages, test } from './site.ts';

const LESSON = '/learn/traceability/the-chain-to-the-definition/';

test('a word opens its note by key, without leaving the place, and closes it by Escape', async ({ page }) => {
  await openAt(page, LESSON);
  const word = page.getByRole('button', { name: 'calibration hierarchy' });
  const note = page.locator('#word-calibration-hierarchy');
  await expect(note).toBeHidden();
  await word.focus();
  await page.keyboard.press('Enter');
  await expect(note).toBeVisible();
  await expect(note).toContainText('VIM (2012) 2.40');
  await page.keyboard.press('Escape');
  await expect(note).toBeHidden();
  await expect(word).toBeFocused();
});

test('a note leads to the entry of its word', async ({ page }) => {
  await openAt(page, LESSON);
  await page.getByRole('button', { name: 'calibration hierarchy' }).click();
  await page.locator('#word-calibration-hierarchy').getByRole('link').click();
  await page.waitForURL('**/reference/words/#calibration-hierarchy');
  await expect(page.locator('#calibration-hierarchy')).toBeInViewport();
});

test('a word opens its note without script', async ({ browser, baseURL }) => {
  const plain = await browser.newContext({ javaScriptEnabled: false });
  const page = await plain.newPage();
  await page.goto(new URL(LESSON, baseURL).href);
  await page.getByRole('button', { name: 'calibration hierarchy' }).click();
  await expect(page.locator('#word-calibration-hierarchy')).toBeVisible();
  await plain.close();
});

test('an open note lies on the screen of a telephone', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await openAt(page, LESSON);
  for (const word of await page.locator('.word').all()) {
    await word.click();
    const box = await page.locator('.word-note:popover-open').boundingBox();
    expect(box?.x).toBeGreaterThanOrEqual(0);
    expect((box?.x ?? 0) + (box?.width ?? 999)).toBeLessThanOrEqual(320);
    expect((box?.y ?? 0) + (box?.height ?? 999)).toBeLessThanOrEqual(640);
    await page.keyboard.press('Escape');
  }
});

test('on paper the words of a lesson stand in a list, and no note lies over the text', async ({ page }) => {
  await openAt(page, LESSON);
  await page.locator('.word').first().click();
  const open = page.locator('.word-note:popover-open');
  await expect(open, 'on the screen').toBeVisible();
  await page.emulateMedia({ media: 'print' });
  await expect(open).toBeHidden();
  expect((await page.locator('.lesson-words dd').last().boundingBox())?.height ?? 0).toBeGreaterThan(10);
});

test('the stage has words and no notes', () => {
  const stages = pages.filter(({ path }) => path.startsWith('/stage/'));
  expect(stages.length).toBeGreaterThan(0);
  expect(stages.filter(({ html }) => /popover|class="word"/.test(html)).map(({ path }) => path)).toEqual([]);
});
