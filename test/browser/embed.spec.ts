import { once } from 'node:events';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Browser, Frame, Page } from '@playwright/test';
import { overflowing } from './laid-out.ts';
import { addressTold, openAt } from './reader.ts';
import { embeds, expect, test } from './site.ts';

interface Hosted {
  readonly page: Page;
  readonly frame: Frame;
  readonly close: () => Promise<void>;
}

/** A page of somebody else's, at another origin than the site's, with a frame of the given lines. */
async function hosted(browser: Browser, lines: string): Promise<Hosted> {
  const html = `<!DOCTYPE html><html lang="en"><title>A club</title><h1>A club</h1>${lines}`;
  const server = createServer((_request, response) => {
    response.setHeader('content-type', 'text/html;charset=utf-8').end(html);
  });
  await once(server.listen(0, '127.0.0.1'), 'listening');
  const context = await browser.newContext({
    viewport: { width: 336, height: 700 },
    reducedMotion: 'reduce',
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
  const frame = page.frames()[1];
  if (!frame) throw new Error('embed: wish a frame');
  await frame.waitForLoadState();
  const close = async (): Promise<void> => {
    await context.close();
    server.close();
  };
  return { page, frame, close };
}

const frameOf = (address: string, sandbox: string): string =>
  `<iframe src="${address}" title="A figure" width="320" height="640" sandbox="${sandbox}"></iframe>`;
const at = (path: string, baseURL: string | undefined): string => new URL(path, baseURL).href;

test('the figure of a lesson works in a frame of a phone’s width, and leads to the lesson with its state', async ({
  browser,
  baseURL,
}) => {
  const { frame, page, close } = await hosted(
    browser,
    frameOf(at('/embed/few-readings/?n=5&v=1', baseURL), 'allow-scripts allow-same-origin allow-popups'),
  );
  const readings = frame.getByRole('slider').first();
  await expect(readings).toHaveValue('5');
  await readings.press('ArrowRight');
  await expect.poll(() => frame.url()).toMatch(/[?&]n=6&/);
  const overflow = await frame.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(overflow).toBeLessThanOrEqual(0);
  const opening = page.waitForEvent('popup');
  await frame.getByRole('link', { name: 'What are three readings worth?' }).click();
  const lesson = await opening;
  await expect(lesson).toHaveURL(/\/learn\/stacking\/a-few-readings\/\?n=6&v=1#figure$/);
  await close();
});

test('where the frame may open nothing the figure stays, and the address of its lesson is there to be read', async ({
  browser,
  baseURL,
}) => {
  const { frame, close } = await hosted(
    browser,
    frameOf(at('/embed/few-readings/', baseURL), 'allow-scripts allow-same-origin'),
  );
  await expect(frame.getByRole('slider').first()).toBeVisible();
  await frame.getByRole('link', { name: 'What are three readings worth?' }).click();
  await expect(frame.getByRole('slider').first()).toBeVisible();
  await expect(frame.getByText(/https?:\/\/.*\/learn\/stacking\/a-few-readings\/#figure$/)).toBeVisible();
  await close();
});

for (const sandbox of ['', 'allow-scripts']) {
  test(`with sandbox="${sandbox}" the figure stands there as it was written, with its link and without dead controls`, async ({
    browser,
    baseURL,
  }) => {
    const { frame, close } = await hosted(browser, frameOf(at('/embed/few-readings/', baseURL), sandbox));
    await expect(frame.locator('svg[role="img"]:visible').first()).toBeVisible();
    await expect(frame.getByRole('link', { name: 'What are three readings worth?' })).toBeVisible();
    await expect(frame.locator('.slider').first()).toBeHidden();
    await close();
  });
}

test('the lines that a lesson offers show its figure', async ({ page, browser, baseURL }) => {
  await page.goto('/learn/decibels/levels-and-gains/');
  await page.getByText('Put a figure on a page of your own').click();
  const lines = await page.getByRole('textbox', { name: /as HTML$/ }).all();
  expect(lines.length).toBe(2);
  for (const line of lines) {
    // published elsewhere than where it is tested
    const html = (await line.inputValue()).replaceAll(/https?:\/\/[^/"]+\//g, at('/', baseURL));
    const { frame, close } = await hosted(browser, html.replace('loading="lazy"', ''));
    await expect(frame.locator('svg[role="img"]:visible').first()).toBeVisible();
    await close();
  }
});

test('the lines that a worked example offers stand beside its texts', async ({ page }) => {
  await openAt(page, '/examples/two-pads-into-a-receiver/');
  await page.getByRole('radio', { name: 'Figure for a web page' }).check();
  await expect(page.getByRole('textbox', { name: 'The result as text' })).toHaveValue(
    /<iframe src="[^"]*\/embed\/two-pads-into-a-receiver\/"/,
  );
  await openAt(page, '/examples/swr-of-a-whip/');
  await page.getByRole('radio', { name: 'Figure for a web page' }).check();
  const lines = await page.getByRole('textbox', { name: 'The result as text' }).inputValue();
  const [, query] = /\/embed\/what-comes-back\/(\?[^"]+)"/.exec(lines) ?? [];
  await openAt(page, `/embed/what-comes-back/${query?.replaceAll('&amp;', '&')}`);
  await expect(page.getByRole('textbox', { name: 'SWR at the antenna' })).toHaveValue('1.5');
  await expect(addressTold(page)).toHaveCount(0);
});

test('a state in the address is shown, and one that is wrong is told', async ({ page }) => {
  await page.goto('/embed/few-readings/?n=3&v=1');
  await expect(page.getByRole('slider').first()).toHaveValue('3');
  await page.goto('/embed/few-readings/?n=many&v=1');
  await expect(page.getByText('“many” is not')).toBeVisible();
});

test('every figure has its own page, without navigation', async ({ page }) => {
  expect(embeds.length).toBeGreaterThan(30);
  expect(embeds.filter(({ html }) => /<(nav|header|footer)\b/.test(html)).map(({ path }) => path)).toEqual(
    [],
  );
  expect(embeds.filter(({ html }) => !html.includes('content="noindex"')).map(({ path }) => path)).toEqual(
    [],
  );
  await page.setViewportSize({ width: 320, height: 640 });
  await page.goto('/embed/reading-band/');
  expect(await overflowing(page)).toEqual([]);
});
