import type { Page } from '@playwright/test';
import { awake } from './awake.ts';
import { onColours, typeset, violations } from './axe.ts';
import { cutTexts, figures, overflowing, smallTexts } from './laid-out.ts';
import { expect, otherEmbeds, pages, test } from './site.ts';

/** The width that A4 leaves between margins of a centimetre, in CSS pixels. */
const paper = { width: 718, height: 1000 };
const sizes = [
  { width: 320, height: 640 },
  { width: 1440, height: 900 },
  { width: 1024, height: 768 },
];

/** Formulas in a colour of their own. */
const coloured = (page: Page): Promise<string[]> =>
  page.evaluate(
    (drawn) =>
      [...document.querySelectorAll(drawn)]
        .filter((formula) => {
          const around = formula.closest('.katex')?.parentElement;
          const { color } = getComputedStyle(around ?? formula);
          return (
            around === null ||
            [formula, ...formula.querySelectorAll('*')].some((part) => getComputedStyle(part).color !== color)
          );
        })
        .map((formula) => formula.textContent ?? ''),
    typeset,
  );

const hasFigures = (html: string): boolean => /<svg\b[^>]*role="img"/.test(html);

// One visit for everything that can be seen of a page: a visit costs more than a look. Soft: it tells all that is wrong, then fails.
for (const { path, html } of pages) {
  test(`${path} fits every width, passes axe in both schemes, and has its figures on paper`, async ({
    page,
  }) => {
    await page.setViewportSize({ width: 320, height: 640 });
    await page.goto(path);
    await awake(page);
    for (const size of sizes) {
      await page.setViewportSize(size);
      // soft here and below: one visit tells all that is wrong with a page, and the test fails all the same
      expect.soft(await overflowing(page), `too wide for ${size.width} pixels`).toEqual([]);
      if (size.width > 320) continue;
      expect.soft(await smallTexts(page, 12), 'texts of figures too small on a phone').toEqual([]);
      expect.soft(await cutTexts(page), 'texts of figures cut off on a phone').toEqual([]);
    }
    expect.soft(await violations(page), 'rules of axe').toEqual([]);
    expect.soft(await coloured(page), 'formulas in a colour of their own').toEqual([]);
    await page.emulateMedia({ colorScheme: 'dark' });
    expect.soft(await violations(page, onColours), 'colours in the dark').toEqual([]);
    await page.emulateMedia({ colorScheme: 'light' });
    await page.setViewportSize(paper);
    const onScreen = await figures(page);
    await page.emulateMedia({ media: 'print' });
    const onPaper = await figures(page);
    if (hasFigures(html)) expect.soft(onPaper, 'figures on paper').not.toEqual([]);
    expect
      .soft(
        onScreen.filter((name) => !onPaper.includes(name)),
        'not on paper',
      )
      .toEqual([]);
    expect.soft(onPaper.filter((name) => name.endsWith('wider than the paper'))).toEqual([]);
  });
}

for (const { path } of otherEmbeds) {
  test(`${path} fits a frame as narrow as a phone, and passes axe`, async ({ page }) => {
    await page.setViewportSize({ width: 320, height: 640 });
    await page.goto(path);
    await awake(page);
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
