// Pictures of pages as a reader meets them, into .reports/shots: `npm run shoot -- / /learn/`.
// Addresses are paths of the built site; `--only 320,dark` takes some of the views; `--full` takes the whole page.
import { mkdir } from 'node:fs/promises';
import { parseArgs } from 'node:util';
import { chromium } from '@playwright/test';
import { serveSite } from '../../src/build/site-server.ts';
import { built } from '../site/under-base.mjs';
import { awake } from './awake.ts';
import { ensureChromium } from './chromium.mjs';
import { flags } from './flags.ts';

/** @type {Record<string, import('@playwright/test').BrowserContextOptions>} */
const views = {
  320: { viewport: { width: 320, height: 640 } },
  1024: { viewport: { width: 1024, height: 768 } },
  1440: { viewport: { width: 1440, height: 900 } },
  dark: { viewport: { width: 1024, height: 768 }, colorScheme: 'dark' },
  'no-script': { viewport: { width: 1024, height: 768 }, javaScriptEnabled: false },
  print: { viewport: { width: 794, height: 1123 } },
};
const out = '.reports/shots';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    only: { type: 'string', default: Object.keys(views).join(',') },
    full: { type: 'boolean', default: false },
    dir: { type: 'string', default: built.directory },
  },
});

/** @param {import('@playwright/test').Browser} browser @param {string} view @param {string} url */
async function shoot(browser, view, url) {
  const options = views[view];
  if (!options) throw new Error(`shoot: wish one of ${Object.keys(views).join(', ')}, got ${view}`);
  const context = await browser.newContext({ reducedMotion: 'reduce', serviceWorkers: 'block', ...options });
  const page = await context.newPage();
  await page.goto(url);
  if (options.javaScriptEnabled !== false) await awake(page);
  const { pathname, search } = new URL(url);
  const name = `${(pathname + search).replace(/[^a-z0-9]+/gi, '-').replace(/^-|-$/g, '') || 'home'}.${view}`;
  if (view === 'print') await page.pdf({ path: `${out}/${name}.pdf`, format: 'A4', printBackground: true });
  if (view === 'print') await page.emulateMedia({ media: 'print' });
  await page.screenshot({ path: `${out}/${name}.png`, fullPage: values.full || view === 'print' });
  await context.close();
  console.log(`${out}/${name}.png`);
}

await mkdir(out, { recursive: true });
const site = await serveSite({ directory: values.dir, base: '/', host: '127.0.0.1', port: 0 });
const browser = await chromium.launch({ executablePath: ensureChromium(), args: flags });
for (const path of positionals.length > 0 ? positionals : ['/']) {
  for (const view of values.only.split(',')) await shoot(browser, view, new URL(path, site.url).href);
}
await browser.close();
await site.close();
