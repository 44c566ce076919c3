import { pageOfEachKind } from '../site/kinds.ts';
import { awake } from './awake.ts';
import { onColours, violations } from './axe.ts';
import { cutTexts, overflowing, smallTexts } from './laid-out.ts';
import { allPages, expect, otherEmbeds, pages, test } from './site.ts';
import { reachedByTab } from './visit/keyboard.ts';
import { fitsEveryWidth, passesAxe } from './visit/looks.ts';
import { sameWithoutScript, seen } from './visit/no-script.ts';
import { allOnPaper, numbersOnPaper } from './visit/print.ts';
import { hasIslands } from './visit/visit.ts';
import { noteWaking, wokeAsWritten } from './visit/waking.ts';

// pages are looked at here, and keep nothing: one after the other in the same window, which spares a new one for each
test.use({ reuseContext: true });

/** Pages on which the matrix has axe look at more, in the same colours. */
const inMatrix = new Set(pageOfEachKind(allPages).map(({ path }) => path));

// One visit for everything that can be tried on a page: opening it costs more than a look. The looks are soft: a visit tells all that
// is wrong with a page, and the test fails all the same. First what looks only, then what moves the focus, last what stops the script.
for (const built of pages) {
  test(`${built.path} wakes as written, fits, prints, passes axe, obeys Tab, and says the same without script`, async ({
    page,
  }) => {
    const visit = { page, built };
    await noteWaking(page);
    await page.goto(built.path);
    if (hasIslands(built)) await test.step('print, asleep', () => numbersOnPaper(visit));
    await awake(page);
    if (hasIslands(built)) await test.step('waking', () => wokeAsWritten(visit));
    await test.step('print', () => allOnPaper(visit));
    await test.step('looks', () => fitsEveryWidth(visit));
    if (!inMatrix.has(built.path)) await test.step('axe', () => passesAxe(visit));
    const withScript = await seen(page);
    await test.step('keyboard', () => reachedByTab(visit));
    await test.step('no-script', () => sameWithoutScript(visit, withScript));
  });
}

for (const { path } of otherEmbeds) {
  test(`${path} fits a frame as narrow as a phone, and passes axe`, async ({ page }) => {
    await page.setViewportSize({ width: 320, height: 640 });
    await page.goto(path);
    await awake(page);
    // soft, as above: one visit tells all that is wrong
    expect.soft(await overflowing(page), 'too wide').toEqual([]);
    expect.soft(await smallTexts(page, 12), 'texts of figures too small').toEqual([]);
    expect.soft(await cutTexts(page), 'texts of figures cut off').toEqual([]);
    expect.soft(await violations(page), 'rules of axe').toEqual([]);
  });
}

test('what axe should object to is objected to', async ({ page }) => {
  await page.goto('/about/');
  await page.evaluate(() => {
    const words = document.createElement('p');
    words.textContent = 'Words that are hardly to be seen';
    words.setAttribute('role', 'nothing-that-exists');
    Object.assign(words.style, { color: '#eee', background: '#fff' });
    document.querySelector('main')?.append(words);
  });
  const found = await violations(page);
  expect(found.map((each) => each.split(':')[0]).sort()).toEqual(['aria-roles', 'color-contrast']);
  expect(await violations(page, onColours)).toHaveLength(1);
});
