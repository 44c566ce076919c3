import { stat } from 'node:fs/promises';
import { basename } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page, TestInfo } from '@playwright/test';
import { clubSheet } from '../../src/sheet/club.ts';
import { runSimulation } from '../../src/widgets/simulation/run.ts';
import { expect, test } from './site.ts';

/** Both ends of the club’s result by the first million trials, worked out in this process. */
function triedHere(): string {
  const steps = runSimulation({ sheet: clubSheet(), seed: 1, stop: { kind: 'trials', trials: 1_000_000 } });
  for (;;) {
    const { done, value } = steps.next();
    if (done) {
      const { lower, upper } = value.symmetric;
      return `${lower.toFixed(2)} to ${upper.toFixed(2)}\u00a0dBm`;
    }
  }
}

/** What a carried file may weigh at most, in bytes. */
const LARGEST = 600_000;

/** Saves the stage at an address as a file. */
async function saved(page: Page, address: string, info: TestInfo): Promise<string> {
  await page.goto(address);
  await page.getByRole('button', { name: 'Keys' }).click();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Take it along as one file' }).click();
  const path = info.outputPath((await download).suggestedFilename());
  await (await download).saveAs(path);
  await expect(page.getByText('Saved: the file opens by itself')).toBeVisible();
  return path;
}

/** Opens a file from the disk in a browser without a network, and notes whatever goes wrong or is asked of a network. */
async function opened(browser: Browser, path: string) {
  const context = await browser.newContext({ offline: true, viewport: { width: 1024, height: 768 } });
  const wrong: string[] = [];
  context.on('page', (page) => {
    page.on('pageerror', (error) => wrong.push(String(error)));
    page.on('console', (message) => {
      if (message.type() === 'error' || message.type() === 'warning') wrong.push(message.text());
    });
    page.on('request', (request) => {
      if (!/^(file|blob|data):/.test(request.url())) wrong.push(`asked for ${request.url()}`);
    });
  });
  const page = await context.newPage();
  await page.goto(pathToFileURL(path).href);
  await expect(page.locator('.slide:visible')).toHaveCount(1);
  return { context, page, wrong };
}

test('a lesson is saved as one file that opens from a disk, without a network, and works', async ({
  page,
  browser,
}, info) => {
  const path = await saved(page, '/stage/learn/stacking/a-million-tries/', info);
  expect(basename(path)).toBe('a-million-tries.html');
  expect((await stat(path)).size).toBeLessThan(LARGEST);
  const { context, page: carried, wrong } = await opened(browser, path);
  await carried.keyboard.press('PageDown');
  await expect(carried.locator('[data-deck="count"]')).toHaveText(/^2 \/ /);
  // The trials run in a worker, which a page from a disk may start from itself alone.
  const figure = carried.locator('.slide', { has: carried.locator('.stage-what-if') }).first();
  await carried.goto(`${carried.url().replace(/#.*/, '')}#${await figure.getAttribute('id')}`);
  const states = figure.locator('dl, table').first();
  const before = await states.textContent();
  await figure.getByRole('button', { name: /^More by/ }).click();
  await expect(states).not.toHaveText(before ?? '');
  expect(wrong).toEqual([]);
  await context.close();
});

test('the notes of a carried file open beside it and keep in step, and its simulation runs', async ({
  page,
  browser,
}, info) => {
  const path = await saved(page, '/stage/examples/club-transmitter/', info);
  expect((await stat(path)).size).toBeLessThan(LARGEST);
  const { context, page: wall, wrong } = await opened(browser, path);
  const opening = context.waitForEvent('page');
  await wall.keyboard.press('n');
  const notes = await opening;
  await wall.keyboard.press('PageDown');
  await expect(notes.locator('[data-deck="count"]')).toHaveText(/^2 \/ /);
  await notes.keyboard.press('PageDown');
  await expect(wall.locator('[data-deck="count"]')).toHaveText(/^3 \/ /);
  // a million trials, by a worker that a page from a disk starts from itself, and the same numbers as anywhere
  await wall.goto(`${wall.url().replace(/#.*/, '')}#tries`);
  await wall.getByRole('button', { name: 'Try it a million times' }).click();
  const tried = triedHere();
  await expect(wall.locator('#tries p').filter({ hasText: 'By a million trials' }).first()).toHaveText(
    `By a million trials: ${tried}`,
  );
  await expect(wall.locator('#tries [role="status"]')).toHaveText(
    `By a million trials: ${tried.replace('\u00a0dBm', ' decibel-milliwatts')}`,
  );
  expect(wrong).toEqual([]);
  await context.close();
});

test('a carried formula has its typeface with it, and a link leads to the site', async ({
  page,
  browser,
}, info) => {
  const path = await saved(page, '/stage/learn/decibels/ratios-that-add/', info);
  expect((await stat(path)).size).toBeLessThan(LARGEST);
  const { context, page: carried, wrong } = await opened(browser, path);
  await expect(carried.locator('.katex').first()).toBeAttached();
  const faces = await carried.evaluate(async () => {
    await Promise.all([...document.fonts].map((face) => face.load().catch(() => undefined)));
    return [...document.fonts].map(({ family, status }) => `${family} ${status}`);
  });
  expect(faces.filter((face) => /Signs_/.test(face)).length).toBeGreaterThan(0);
  expect(faces.filter((face) => /Signs_/.test(face) && !face.endsWith('loaded'))).toEqual([]);
  const leave = carried.getByRole('link', { name: 'Leave' });
  await expect(leave).toHaveAttribute('href', /^https:\/\/[^/]+\/learn\/decibels\/ratios-that-add\/$/);
  expect(wrong).toEqual([]);
  await context.close();
});

test('a talk made of parts is saved with every step that it borrows, each the same on the wall and in the notes', async ({
  page,
  browser,
}, info) => {
  const parts =
    'decibels.ratios-that-add.guess~examples.club-transmitter.chain~decibels.ratios-that-add.guess';
  const path = await saved(page, `/stage/talk/?parts=${parts}&v=1`, info);
  expect((await stat(path)).size).toBeLessThan(LARGEST);
  const { context, page: carried, wrong } = await opened(browser, path);
  await expect(carried.locator('[data-deck="count"]')).toHaveText('1 / 4');
  await carried.keyboard.press('PageDown');
  const shown = carried.locator('.slide:visible');
  const before = await shown.textContent();
  await shown.getByRole('button', { name: /^More by/ }).click();
  await expect(shown).not.toHaveText(before ?? '');
  const opening = context.waitForEvent('page');
  await carried.keyboard.press('n');
  const notes = await opening;
  const number = (window: Page) => window.locator('#s2 .stage-what-if input');
  await expect(number(notes), 'changed before the notes were there').toHaveValue('0.6');
  await notes.locator('#s2').getByRole('button', { name: 'Reset' }).click();
  await expect(number(carried), 'and back').toHaveValue('0.5');
  await carried.keyboard.press('PageUp');
  const hands = (window: Page, step: string) => window.locator(`${step} input`).first();
  await hands(carried, '#s1').fill('7');
  await expect(hands(notes, '#s1')).toHaveValue('7');
  await expect(hands(notes, '#s3'), 'the same step at another place of the talk stays as it is').toHaveValue(
    '',
  );
  await expect(hands(carried, '#s3')).toHaveValue('');
  const ids = await carried.locator('[id]').evaluateAll((all) => all.map(({ id }) => id));
  expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
  expect(wrong).toEqual([]);
  await context.close();
});
