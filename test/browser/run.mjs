// Runs the browser tests on the built site: `npm run browser`, or `npm run browser -- touch.gate` for one gate.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { serveSite } from '../../src/build/site-server.ts';
import { builtPages } from '../site/pages.ts';
import { built, underBase } from '../site/under-base.mjs';
import { ensureChromium } from './chromium.mjs';

const here = fileURLToPath(new URL('.', import.meta.url));
const playwright = fileURLToPath(new URL('../../node_modules/.bin/playwright', import.meta.url));
const host = '127.0.0.1';

// says which of the two builds is missing, and what makes it
for (const { directory } of [built, underBase]) builtPages(directory);
const sites = [
  await serveSite({ ...built, host, port: 0 }),
  await serveSite({ ...underBase, host, port: 0 }),
];
const env = {
  ...process.env,
  CHROMIUM_PATH: ensureChromium(),
  SITE_ADDRESS: sites[0]?.url,
  SITE_UNDER_BASE: sites[1]?.url,
};
const tests = spawn(playwright, ['test', '--config', here, ...process.argv.slice(2)], {
  stdio: 'inherit',
  env,
});
const [code] = await once(tests, 'close');
for (const site of sites) await site.close();
process.exitCode = code ?? 1;
