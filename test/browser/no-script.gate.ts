import type { Page } from '@playwright/test';
import { awake } from './awake.ts';
import { expect, pages, test } from './site.ts';

/** What a reader sees in the main part: its text, and how many figures; controls that need script are left out on both sides. */
const seen = (page: Page): Promise<{ text: string; figures: number }> =>
  page.evaluate(() => {
    for (const node of document.querySelectorAll('.needs-script, noscript')) node.remove();
    const figures = [...document.querySelectorAll('main svg')].filter((node) => node.checkVisibility());
    const text = document.querySelector<HTMLElement>('main')?.innerText.replace(/\s+/g, ' ').trim() ?? '';
    return { text, figures: figures.length };
  });

for (const { path } of pages) {
  test(`${path} says and shows the same without script`, async ({ page, browser, baseURL }) => {
    await page.goto(path);
    await awake(page);
    const withScript = await seen(page);
    const plain = await browser.newContext({
      javaScriptEnabled: false,
      viewport: { width: 1024, height: 768 },
    });
    const plainPage = await plain.newPage();
    await plainPage.goto(new URL(path, baseURL).href);
    const without = await seen(plainPage);
    await plain.close();
    expect(without).toEqual(withScript);
    expect(without.text).not.toBe('');
  });
}
