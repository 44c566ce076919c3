import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, Page } from '@playwright/test';
import { keepStrings } from '../../src/bench/keep/strings.ts';
import { type RunningSite, serveSite } from '../../src/build/site-server.ts';
import { offlineStrings } from '../../src/layouts/offline-strings.ts';
import { hashOfText } from '../offline/kept.ts';
import { built, underBase } from '../site/under-base.mjs';
import { awake } from './awake.ts';
import { expect, test } from './site.ts';

test.use({ keepsSite: true });

const serve = (site: { directory: string; base: string }): Promise<RunningSite> =>
  serveSite({ ...site, host: '127.0.0.1', port: 0 });
const says = (page: Page) => page.locator('#offline-says');

/** Opens the page and waits until the whole site is kept. */
async function visit(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
}

const lesson = 'learn/decibels/ratios-that-add/';

for (const site of [built, underBase]) {
  test(`one visit to ${site.base}, and the whole site works with its host gone`, async ({ page }) => {
    const { url, close } = await serve(site);
    await visit(page, url);
    await close();

    await test.step('a lesson with its figure', async () => {
      await page.goto(`${url}${lesson}`);
      await awake(page);
      await page.getByRole('slider').first().press('ArrowRight');
      await expect.poll(() => new URL(page.url()).search).toContain('v=');
      await page.reload();
      await awake(page);
    });
    await test.step('the bench with a sheet of one’s own', async () => {
      await page.goto(`${url}bench/`);
      await awake(page);
      await page.getByLabel('Title').fill('Kept in the woods');
      await expect(page.locator('.kept-line')).toContainText('Kept in this browser');
      await expect(page.locator('.kept-line')).not.toContainText(keepStrings.failed.refused);
      await page.goto(`${url}bench/sheets/`);
      await awake(page);
      await page.getByRole('link', { name: 'Kept in the woods' }).click();
      await awake(page);
      await expect(page.getByLabel('Title')).toHaveValue('Kept in the woods');
      await expect(page.locator('.bench-result')).toContainText('dBm');
    });
    await test.step('practice, whose questions are fetched topic by topic', async () => {
      await page.goto(`${url}practice/ratios/`);
      await awake(page);
      await page.getByRole('button', { name: /^Begin with \d+ questions$/ }).click();
      const typed = page.getByRole('textbox', { name: 'Your answer' });
      const option = page.locator('.ask-options label').first();
      await expect(typed.or(option).first()).toBeVisible();
      if ((await typed.count()) > 0) await typed.fill('3');
      else await option.click();
      await page.getByRole('button', { name: 'Check my answer' }).click();
      await expect(page.locator('.ask-form .choice-reply')).toContainText(/^(Right|Not right)/);
    });
    await test.step('the stage, worked examples, formulas', async () => {
      const paths = [
        `stage/${lesson}`,
        'stage/compose/',
        'examples/',
        'practice/paper/',
        'reference/formulas/',
        'reference/words/',
      ];
      for (const path of paths) {
        await page.goto(url + path);
        await awake(page);
        await expect(page.locator('h1')).toHaveCount(1);
      }
    });
    await test.step('the search', async () => {
      await page.goto(`${url}search/?q=attenuator`);
      await expect(page.locator('.found li').first()).toContainText('Word: pad');
    });
    await test.step('what is kept is told', async () => {
      await page.goto(`${url}about/`);
      await expect(page.locator('#offline-amount')).toContainText(/whole site, \d+ files of [\d.]+\sMB/);
    });
    await test.step('an address without its slash at the end', async () => {
      await page.goto(`${url}about#offline`);
      expect(page.url()).toBe(`${url}about/#offline`);
    });
  });
}

test('a wrong address gets the page for wrong addresses with the host gone as well', async ({ browser }) => {
  const context = await browser.newContext();
  const page = await context.newPage();
  const { url, close } = await serve(underBase);
  await visit(page, url);
  await close();
  const answer = await page.goto(`${url}no/such/page/`);
  expect(answer?.status()).toBe(404);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('There is no page at this address');
  await context.close();
});

/** Publishes another version: the page says something else, and the worker lists it by its hash. */
async function publish(directory: string, before: string, now: string): Promise<void> {
  const about = join(directory, 'about/index.html');
  const worker = join(directory, 'offline-worker.js');
  const newer = (await readFile(about, 'utf8')).replace(before, now);
  await writeFile(about, newer);
  const listed = /about\/([`'"]),[`'"]([\w-]{12})/;
  const code = await readFile(worker, 'utf8');
  expect(code).toMatch(listed);
  await writeFile(
    worker,
    code.replace(listed, (all, _quote, hash: string) => all.replace(hash, hashOfText(newer))),
  );
}

test('a newer version is offered and breaks no open page', async ({ context, page }) => {
  const directory = await mkdtemp(join(tmpdir(), 'newer-'));
  await cp(built.directory, directory, { recursive: true });
  const { url, close } = await serve({ directory, base: '/' });
  const heading = page.getByRole('heading', { level: 1 });
  await visit(page, `${url}about/`);
  const other = await context.newPage();
  await other.goto(`${url}${lesson}`);
  await publish(directory, 'About this site, and', 'Newer words, and');
  await page.reload();
  await expect(says(page)).toContainText('A newer version');
  await expect(heading).toHaveText('About this site, and cautions');
  await page.reload();
  await expect(heading, 'until the reader says so').toHaveText('About this site, and cautions');
  await says(page).getByRole('button').click();
  await expect(heading).toHaveText('Newer words, and cautions');
  await expect(says(page)).toBeEmpty();
  await expect(says(other)).toContainText('A newer version');
  await awake(other);
  await other.getByRole('slider').first().press('ArrowRight');
  await expect.poll(() => new URL(other.url()).search).toContain('v=');
  // one for which there is no room leaves the page with what it has
  await withRoomFor(context, page, { url, bytes: 1000 });
  await publish(directory, 'Newer words, and', 'Newest words, and');
  await page.reload();
  await expect(says(page)).toContainText('no room for it');
  await expect(page.locator('#offline-amount')).toContainText('the whole site');
  await close();
  await rm(directory, { recursive: true });
});

const kept = (page: Page): Promise<number> =>
  page.evaluate(async () => {
    const caches = await Promise.all(
      (await globalThis.caches.keys()).map((name) => globalThis.caches.open(name)),
    );
    return (await Promise.all(caches.map((cache) => cache.keys()))).flat().length;
  });

interface Room {
  readonly url?: string;
  readonly bytes: number;
}

async function withRoomFor(
  context: BrowserContext,
  page: Page,
  { url = process.env.SITE_ADDRESS ?? '', bytes }: Room,
) {
  const session = await context.newCDPSession(page);
  const { origin } = new URL(url);
  await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: bytes });
}

test('a browser without room is told of, and nothing half is left', async ({ context, page }) => {
  await withRoomFor(context, page, { bytes: 1_000_000 });
  await page.goto('/about/');
  // a browser may name more room than it then gives: then some of the site is fetched before one file is refused
  await expect(says(page)).toContainText('no room to keep the site', { timeout: 30_000 });
  await expect(page.locator('#offline-amount')).toHaveText(offlineStrings.notYet);
  expect(await kept(page)).toBe(0);
});

test('a browser that keeps nothing is told of', async ({ page }) => {
  // as a frame that a host has shut in: the mere name of what keeps is refused
  await page.route('**/*', async (route) => {
    const response = await route.fetch();
    const shut = { 'content-security-policy': 'sandbox allow-scripts', 'access-control-allow-origin': '*' };
    await route.fulfill({ response, headers: { ...response.headers(), ...shut } });
  });
  await page.goto('/about/');
  await expect(says(page)).toContainText('This browser keeps nothing for this site');
  await expect(page.locator('#offline-amount')).toHaveText(offlineStrings.unable);
});

test('a page in a frame has nothing kept', async ({ page }) => {
  // a host that sends no headers lets any page be framed
  const { url, close } = await serveSite({ ...built, host: '127.0.0.1', port: 0, headers: false });
  // what asks to have the site kept is noted by the window that asks
  await page.addInitScript(() => {
    ServiceWorkerContainer.prototype.register = () => {
      Object.assign(globalThis, { asked: true });
      return Promise.reject(new Error('noted'));
    };
  });
  const hasAsked = () =>
    new Promise((resolve) => {
      // the page asks in a turn of its own once all of it is there
      const answer = (): unknown => setTimeout(() => setTimeout(() => resolve('asked' in globalThis)));
      if (document.readyState === 'complete') answer();
      else addEventListener('load', answer);
    });
  await page.goto(url);
  expect(await page.evaluate(hasAsked), 'the page around it').toBe(true);
  await page.evaluate(() => {
    const frame = document.createElement('iframe');
    frame.src = 'about/';
    document.body.append(frame);
  });
  await expect(page.frameLocator('iframe').locator('#offline-amount')).toHaveText(offlineStrings.notYet);
  expect(await page.frames()[1]?.evaluate(hasAsked), 'the one in it').toBe(false);
  await close();
});

test('no page but an embedded one may be framed', async ({ browser }) => {
  const context = await browser.newContext();
  const page = await context.newPage();
  const refused = page.waitForEvent('console', (message) => message.text().includes('frame-ancestors'));
  await page.goto('/404.html');
  await page.evaluate(() => {
    const frame = document.createElement('iframe');
    frame.src = '/bench/';
    document.body.append(frame);
  });
  expect((await refused).type()).toBe('error');
  await context.close();
});
