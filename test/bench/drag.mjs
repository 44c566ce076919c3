// How smoothly a figure follows the pointer: the reading band of the start page and the figure of the bench, the processor slowed down
// four times, read from the browser's own trace. Informs, never fails. `node test/bench/drag.mjs`, or as part of `npm run bench`.
import { existsSync } from 'node:fs';
import { loadavg } from 'node:os';
import { setTimeout as rest } from 'node:timers/promises';
import { chromium } from '@playwright/test';
import { serveSite } from '../../src/build/site-server.ts';
import { awake } from '../browser/awake.ts';
import { ensureChromium } from '../browser/chromium.mjs';
import { flags } from '../browser/flags.ts';
import { built } from '../site/under-base.mjs';
import { dragged, percentile, percentWithin } from './frames.ts';

const SLOWER = 4;
/** Length of a frame at 60 Hz, in ms. */
const FRAME = 1000 / 60;
/** A frame later than this has missed its turn: clocks jitter by less than half a frame. */
const LATE = 1.5 * FRAME;
const MOVES = 300;
/** Farthest from where the pointer took hold, in pixels, and movements to and fro. */
const REACH = 50;
const TURN = 90;
const CATEGORIES = ['devtools.timeline', 'devtools.timeline.frame', 'disabled-by-default-devtools.timeline'];
const DRAGS = [
  { what: 'reading band, start page', path: '/' },
  { what: 'figure of the bench', path: '/bench/' },
];

/**
 * Takes hold of the pad’s handle and moves it to and fro, as fast as the screen is drawn; answers the trace.
 * @param {import('@playwright/test').Browser} browser
 * @param {string} url
 */
async function trace(browser, url) {
  const page = await browser.newPage({
    viewport: { width: 1024, height: 768 },
    serviceWorkers: 'block',
    // the page stands where it was scrolled to, at once
    reducedMotion: 'reduce',
  });
  await page.goto(url);
  await awake(page);
  const handle = page.locator('.band-wide [data-handle="pad"]');
  await handle.evaluate((node) => node.scrollIntoView({ block: 'center' }));
  const box = await handle.boundingBox();
  if (!box) throw new Error(`drag: wish a handle on the screen of ${url}`);
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  // the first movements fetch what is fetched on first use
  await page.mouse.move(x + 5, y, { steps: 5 });
  await rest(500);
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  await browser.startTracing(page, { categories: CATEGORIES });
  const sent = [];
  const start = performance.now();
  for (let k = 1; k <= MOVES; k++) {
    const at = x + REACH * Math.sin((2 * Math.PI * k) / TURN);
    sent.push(
      session.send('Input.dispatchMouseEvent', { type: 'mouseMoved', x: at, y, button: 'left', buttons: 1 }),
    );
    await rest(Math.max(0, start + k * FRAME - performance.now()));
  }
  await Promise.all(sent);
  const { traceEvents } = JSON.parse((await browser.stopTracing()).toString());
  await page.close();
  return traceEvents;
}

/** Prints how many frames of each drag were done in time, or that there is no built site to drag on. */
export async function benchDrag() {
  if (!existsSync(`${built.directory}/bench/index.html`))
    return console.log('Dragging is left out: build the site first (npm run build).');
  const site = await serveSite({ ...built, host: '127.0.0.1', port: 0 });
  const browser = await chromium.launch({ executablePath: ensureChromium(), args: flags });
  const rows = [];
  for (const { what, path } of DRAGS) {
    const { workMs, threadMs, gapsMs } = dragged(await trace(browser, new URL(path, site.url).href));
    const round = (/** @type {number} */ value) => Number(value.toFixed(1));
    rows.push({
      dragged: what,
      frames: workMs.length,
      'within 16.7 ms, %': round(percentWithin(workMs, FRAME)),
      'median ms': round(percentile(workMs, 50)),
      '95 % within ms': round(percentile(workMs, 95)),
      'by the thread’s clock, %': round(percentWithin(threadMs, FRAME)),
      'median of it, ms': round(percentile(threadMs, 50)),
      'shown in turn, %': round(percentWithin(gapsMs, LATE)),
    });
  }
  console.table(rows);
  const [load = 0] = loadavg();
  console.log(
    `${MOVES} movements, one a frame, the processor ${SLOWER} times slower. Load of the machine: ${load.toFixed(1)}; what else runs shows in these numbers.`,
  );
  await browser.close();
  await site.close();
}

if (import.meta.main) await benchDrag();
