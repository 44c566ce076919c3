import type { Page } from '@playwright/test';
import fc from 'fast-check';
import { encodePlainly } from '../../src/bench/address/address.ts';
import { demonstrationEntries } from '../../src/bench/entries/fresh.ts';
import { filesPartStrings } from '../../src/bench/export/files-part-strings.ts';
import { filesStrings } from '../../src/bench/export/files-strings.ts';
import { sheetsAsFile } from '../../src/bench/export/sheet-file.ts';
import { instrumentsAsFile } from '../../src/bench/instruments/instrument-file.ts';
import { shelfFileStrings } from '../../src/bench/instruments/shelf-file-strings.ts';
import { shelfStrings } from '../../src/bench/instruments/shelf-strings.ts';
import { strings } from '../../src/bench/strings.ts';
import { clubInstruments } from '../../src/instruments/club.ts';
import { cleanText } from '../../src/text/clean.ts';
import { damaged, hostileTexts } from '../hostile/any-damage.ts';
import { stateAddresses } from './addresses.ts';
import { awake } from './awake.ts';
import { cutTexts, overflowing, whereSpaced } from './laid-out.ts';
import { expect, pages, test } from './site.ts';
import { textsOver } from './texts-over.ts';

const SEED = 50;
const SAVED = '2026-05-09T10:00:00.000Z';
/** Texts that a page can hold in a name, with all that they try. */
const names = hostileTexts.filter((text) => text.length < 100);

/** That nothing of what a page was given ran in it, and that it is still as wide as the window. */
async function expectCalm(page: Page, what: string): Promise<void> {
  expect(await page.evaluate(() => 'ran' in globalThis), what).toBe(false);
  expect(await page.locator('iframe, object, embed, img').count(), what).toBe(0);
  expect(await overflowing(page), what).toEqual([]);
}

/** What a figure has no room for in one line. */
const LONG_STATEMENT = { form: 'uncertainLimits', amount: '0.1234', doubt: '0.0123' } as const;

/** The demonstration with the same hostile text wherever a reader's words stand. */
const hostileSheet = (text: string) => {
  const { links, points, ...sheet } = demonstrationEntries();
  const [first, ...more] = points;
  return {
    ...sheet,
    title: text,
    plane: text,
    conditions: text,
    by: text,
    instruments: text,
    points: first ? [{ ...first, label: text }, ...more] : points,
    links: links.map((link) => ({ ...link, label: text, ...LONG_STATEMENT })),
  };
};

test('names that try to run stand on the bench as text', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await page.goto('/bench/');
  await awake(page);
  const title = page.getByLabel(strings.labels.title, { exact: true });
  for (const text of [...names, 'long '.repeat(80), '\u0301'.repeat(300), 'W'.repeat(300)]) {
    await page.evaluate(
      (address) => {
        location.hash = address;
      },
      encodePlainly(hostileSheet(text)) ?? '',
    );
    await expect(title).toHaveValue(cleanText(text).slice(0, 200));
    await expect(page.locator('.bench-result')).toContainText('dBm');
    await expectCalm(page, text);
    expect(await whereSpaced(page, cutTexts), `${text}: past the edge of a figure`).toEqual([]);
    expect(await whereSpaced(page, textsOver), `${text}: over another text`).toEqual([]);
    // the bench writes its own address a moment later
    await expect.poll(() => page.evaluate(() => location.hash)).toContain('zip=');
  }
});

const sample = fc.sample(fc.constantFrom(...stateAddresses(pages)).chain(damaged), {
  numRuns: 24,
  seed: SEED,
});

for (const half of [0, 1]) {
  test(`hurt addresses open their pages or are told, part ${half + 1}`, async ({ page }) => {
    for (const address of sample.filter((_, index) => index % 2 === half)) {
      const place = new URL(address, 'http://site.invalid');
      // what was hurt before its state is another page's address
      const path = pages.some((known) => known.path === place.pathname) ? place.pathname : '/bench/';
      await page.goto(path + place.search + place.hash);
      await awake(page);
      await expect(page.locator('h1')).toHaveCount(1);
      await expectCalm(page, address);
    }
  });
}

const textOf = (written: ReturnType<typeof sheetsAsFile>): string => (written.ok ? written.text : '');
const fileOf = (text: string) => ({
  name: '<img src=x onerror=globalThis.ran=1>.json',
  mimeType: 'application/json',
  buffer: Buffer.from(text),
});

test('names in files stand as text on the bench and on the shelf, and keys that all objects share are told', async ({
  page,
}) => {
  await page.goto('/bench/');
  await awake(page);
  const files = page.getByRole('region', { name: filesPartStrings.heading, exact: true });
  await files.locator('summary').press('Enter');
  const [markup = ''] = names;
  const sheet = textOf(sheetsAsFile([hostileSheet(markup)], SAVED));
  await files
    .getByLabel(filesStrings.open)
    .setInputFiles(fileOf(sheet.replace('"title"', '"__proto__": {"ran": 1}, "title"')));
  await expect(files).toContainText('“__proto__” means nothing here');
  await expect(page.getByLabel(strings.labels.title, { exact: true })).toHaveValue(markup);
  await expect(page.locator('#result')).toHaveText(markup);
  await expectCalm(page, 'a file of sheets');

  await page.goto('/bench/instruments/');
  await awake(page);
  const shelf = page.getByRole('region', { name: shelfStrings.files.heading, exact: true });
  await shelf.locator('summary').press('Enter');
  const known = names.map((label, index) => ({
    id: `${index}`.padStart(24, '0'),
    value: { ...clubInstruments()[0], label, notes: label },
  }));
  const instruments = textOf(instrumentsAsFile(known as Parameters<typeof instrumentsAsFile>[0], SAVED));
  await page.getByLabel(shelfFileStrings.open, { exact: true }).setInputFiles(fileOf(instruments));
  await expect(page.locator('.instruments > li')).toHaveCount(names.length);
  await expectCalm(page, 'a file of instruments');
  await page.goto('/bench/sheets/');
  await awake(page);
  await expectCalm(page, 'the list of sheets');
});
