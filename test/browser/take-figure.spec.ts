import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { figureStrings as strings } from '../../src/layouts/figure-strings.ts';
import { openAt } from './reader.ts';
import { expect, pages, test } from './site.ts';

const examples = pages.filter(({ html }) => html.includes('take-figure'));
/** The first and the last of them: all are made by the same part. */
const some = [...new Set([examples[0], examples.at(-1)])].filter((page) => page !== undefined);

async function saved(page: Page, name: string): Promise<{ readonly file: string; readonly bytes: Buffer }> {
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name, exact: true }).press('Enter');
  const download = await coming;
  const file = download.suggestedFilename();
  await expect(page.getByText(strings.saved(file))).toBeVisible();
  return { file, bytes: await readFile(await download.path()) };
}

for (const { path } of some) {
  test(`the figure of ${path} goes out as SVG and PNG, with its result, assumptions and address in it`, async ({
    page,
  }) => {
    await page.goto(path);
    const figure = await saved(page, strings.svg);
    expect(figure.file).toMatch(/^[a-z0-9-]+\.svg$/);
    const svg = figure.bytes.toString();
    const level = (await page.locator('.answers dt').first().innerText()).replaceAll('\u00a0', ' ');
    const words = svg.replaceAll('\u00a0', ' ');
    expect(words, 'the level of the page').toContain(level);
    expect(words).toContain('Assumed: ');
    expect(words.replaceAll(/<[^>]*>/g, ''), 'the address').toContain(path.replace(/\/$/, ''));
    expect(svg).not.toMatch(/class=|var\(|<style|<script/);

    const picture = await saved(page, strings.png);
    expect(picture.file).toMatch(/\.png$/);
    expect(picture.bytes.readUInt32BE(16), 'under 1200 across').toBeLessThan(1200);
    expect(picture.bytes.readUInt32BE(16)).toBeGreaterThan(900);
    expect(picture.bytes.length).toBeGreaterThan(20_000);
  });
}

test('a figure that is no chain goes out as it is shown, with what was changed and the address of that', async ({
  page,
}) => {
  await openAt(page, '/examples/swr-of-a-whip/?d=30&v=1');
  const svg = (await saved(page, strings.svg)).bytes.toString().replaceAll('\u00a0', ' ');
  const plain = svg.replaceAll(/<[^>]*>/g, ' ').replaceAll('&amp;', '&');
  const [first = ''] = await page.locator('#figure .answers dt').allInnerTexts();
  expect(plain).toContain(first.replaceAll('\u00a0', ' '));
  expect(plain.replaceAll(/\s+/g, ''), 'the address with its state').toContain(
    '/examples/swr-of-a-whip/?d=30&v=1',
  );
  expect(svg).not.toMatch(/class=|var\(|<style|<script/);
  const picture = await saved(page, strings.png);
  expect(picture.bytes.readUInt32BE(16), 'under 1200 across').toBeLessThan(1200);
  expect(picture.bytes.length).toBeGreaterThan(20_000);
});

test('the picture of a chain has what was changed in it, with the address of that', async ({ page }) => {
  const changed = '/examples/two-pads-into-a-receiver/?re=1.5&v=1';
  await openAt(page, changed);
  const half = (await page.locator('.band-number').last().textContent())?.replaceAll('\u00a0', ' ');
  expect(half, 'as prepared it is 2.5 dB').toBe('±1.9 dB');
  const words = (await saved(page, strings.svg)).bytes
    .toString()
    .replaceAll('\u00a0', ' ')
    .replaceAll(/<[^>]*>/g, ' ')
    .replaceAll('&amp;', '&');
  expect(words).toContain(`26.8 dBm ${half}`);
  expect(words.replaceAll(/\s+/g, '')).toContain(changed);
  await openAt(page, '/examples/oscilloscope-on-a-load/?ga=1&v=1');
  const gain = (await page.locator('.band-number').last().textContent())?.replaceAll('\u00a0', ' ');
  expect(gain).toMatch(/^±0\.\d+ dB$/);
  expect((await saved(page, strings.svg)).bytes.toString().replaceAll('\u00a0', ' ')).toContain(gain ?? '');
});

test('the figure is copied as a picture, and the page says so', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto(some[0]?.path ?? '/examples/');
  await page.getByRole('button', { name: strings.copy, exact: true }).click();
  await expect(page.getByText(strings.copied)).toBeVisible();
  const types = await page.evaluate(async () =>
    (await navigator.clipboard.read()).flatMap(({ types }) => types),
  );
  expect(types).toContain('image/png');
});

test('where the browser refuses to copy, the page says what to do instead', async ({ page }) => {
  await page.addInitScript(() => {
    navigator.clipboard.write = () => Promise.reject(new DOMException('refused', 'NotAllowedError'));
  });
  await page.goto(some[0]?.path ?? '/examples/');
  await page.getByRole('button', { name: strings.copy, exact: true }).click();
  await expect(page.getByText(strings.refused)).toBeVisible();
});
