import type { Page } from '@playwright/test';
import { violations } from './axe.ts';
import { alikeGroups, alikePages } from './sampled.ts';
import { allPages, expect, otherEmbeds, pages, test } from './site.ts';

/** So many pages in one visit: few visits, and each within its time. */
const IN_A_VISIT = 25;

const alike = alikePages(allPages);
const visits = alikeGroups(allPages).flatMap((group) =>
  Array.from({ length: Math.ceil(group.length / IN_A_VISIT) }, (_, at) =>
    group.slice(at * IN_A_VISIT, (at + 1) * IN_A_VISIT),
  ),
);

/** Puts the main part of a page into the one that is open, as it was written: its islands do not wake. */
const show = (page: Page, html: string): Promise<void> =>
  page.evaluate((text) => {
    const main = new DOMParser().parseFromString(text, 'text/html').querySelector('main');
    for (const island of main?.querySelectorAll('astro-island') ?? [])
      island.replaceWith(...island.childNodes);
    document.querySelector('main')?.replaceWith(main ?? '');
  }, html);

/** What axe objects to in the main part, by the same rules as everywhere. */
const inMain = (page: Page): Promise<readonly string[]> => violations(page, undefined, ['main']);

visits.forEach((some, at) => {
  test(`pages that are made alike pass axe as they were written, visit ${at + 1}`, async ({ page }) => {
    await page.goto(some[0]?.path ?? '/');
    for (const { path, html } of some) {
      await show(page, html);
      // soft: what is wrong on one page must not hide what is wrong on the next; the test fails all the same
      expect.soft(await inMain(page), path).toEqual([]);
    }
  });
});

test('what axe should object to is objected to in a page that is put into another', async ({ page }) => {
  await page.goto(alike[0]?.path ?? '/');
  await show(page, '<main><h1>a</h1><input><img src="data:,"></main>');
  expect((await inMain(page)).map((each) => each.split(':')[0]).sort()).toEqual(['image-alt', 'label']);
});

test('of pages that are made alike, each kind has one that every gate runs on', () => {
  const taken = new Set(pages.map(({ path }) => path));
  const ofQuestions = alike.filter(({ path }) => path.startsWith('/practice/q/'));
  const controls = (html: string): readonly string[] =>
    ['ask-options', 'ask-typed', 'ask-order', 'places'].filter((name) => html.includes(`class="${name}"`));
  const kinds = (all: typeof alike): readonly string[] =>
    [...new Set(all.flatMap(({ html }) => controls(html)))].sort();
  expect(kinds(ofQuestions.filter(({ path }) => taken.has(path)))).toEqual(kinds(ofQuestions));
  const others = alike.filter(({ path }) => !taken.has(path));
  expect(pages.length + others.length + otherEmbeds.length).toBe(allPages.length);
});
