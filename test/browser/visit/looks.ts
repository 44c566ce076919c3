import { expect, type Page } from '@playwright/test';
import { onColours, typeset, violations } from '../axe.ts';
import { cutTexts, overflowing, smallTexts, whereSpaced } from '../laid-out.ts';
import { projector, type Visit } from './visit.ts';

const telephone = { width: 320, height: 640 };
const sizes = [telephone, { width: 1440, height: 900 }, projector];

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

/** That the page fits every width, and that the texts of its figures can be read on a phone. Afterwards it is as wide as on a projector. */
export async function fitsEveryWidth({ page }: Visit): Promise<void> {
  for (const size of sizes) {
    await page.setViewportSize(size);
    expect.soft(await overflowing(page), `too wide for ${size.width} pixels`).toEqual([]);
    if (size.width > telephone.width) continue;
    expect.soft(await smallTexts(page, 12), 'texts of figures too small on a phone').toEqual([]);
    expect.soft(await cutTexts(page), 'texts of figures cut off on a phone').toEqual([]);
    expect
      .soft(await whereSpaced(page, cutTexts), 'texts of figures cut off where they are spaced')
      .toEqual([]);
  }
}

/** That axe objects to nothing, in light colours and in dark ones. */
export async function passesAxe({ page }: Visit): Promise<void> {
  expect.soft(await violations(page), 'rules of axe').toEqual([]);
  expect.soft(await coloured(page), 'formulas in a colour of their own').toEqual([]);
  await page.emulateMedia({ colorScheme: 'dark' });
  expect.soft(await violations(page, onColours), 'colours in the dark').toEqual([]);
  await page.emulateMedia({ colorScheme: 'light' });
}
