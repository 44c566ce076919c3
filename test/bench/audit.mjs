// What Lighthouse says of every kind of page, as on a slow telephone: a table. Informs, never fails.
import { existsSync } from 'node:fs';
import { createServer } from 'node:net';
import { chromium } from '@playwright/test';
import lighthouse from 'lighthouse';
import { serveSite } from '../../src/build/site-server.ts';
import { ensureChromium } from '../browser/chromium.mjs';
import { flags } from '../browser/flags.ts';
import { pageOfEachKind } from '../site/kinds.ts';
import { builtPages } from '../site/pages.ts';
import { built } from '../site/under-base.mjs';

const CATEGORIES = ['performance', 'accessibility', 'best-practices', 'seo'];

/** A port that nobody listens on. @returns {Promise<number>} */
const freePort = () =>
  new Promise((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const taken = server.address();
      server.close(() => resolve(typeof taken === 'object' && taken !== null ? taken.port : 0));
    });
  });

/** Prints the table, or that there is no built site to look at. */
export async function audit() {
  if (!existsSync(`${built.directory}/404.html`))
    return console.log('Lighthouse is left out: build the site first (npm run build).');
  const pages = builtPages(built.directory);
  const port = await freePort();
  const args = [...flags, `--remote-debugging-port=${port}`];
  const browser = await chromium.launch({ executablePath: ensureChromium(), args });
  const site = await serveSite({ ...built, host: '127.0.0.1', port: 0 });
  const rows = [];
  for (const { path } of pageOfEachKind(pages)) {
    const run = await lighthouse(new URL(path, site.url).href, {
      port,
      onlyCategories: CATEGORIES,
      logLevel: 'error',
    });
    const { categories = {}, audits = {} } = run?.lhr ?? {};
    const score = (/** @type {string} */ name) => Math.round(100 * (categories[name]?.score ?? Number.NaN));
    const shown = (/** @type {string} */ name) => audits[name]?.displayValue?.replace(/\s/g, ' ') ?? '';
    rows.push({
      page: path,
      ...Object.fromEntries(CATEGORIES.map((name) => [name, score(name)])),
      'largest paint': shown('largest-contentful-paint'),
      blocked: shown('total-blocking-time'),
      shifts: shown('cumulative-layout-shift'),
    });
  }
  console.table(rows);
  await browser.close();
  await site.close();
}

if (import.meta.main) await audit();
