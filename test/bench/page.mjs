// How fast the bench answers a reader: a sheet of 12 links and 10 points, the processor slowed down four times, read from the browser's
// own trace. Informs, never fails.
import { readFile } from 'node:fs/promises';
import { chromium } from '@playwright/test';
import { encodeEntries } from '../../src/bench/address/address.ts';
import { demonstration } from '../../src/bench/state/demonstration.ts';
import { serveSite } from '../../src/build/site-server.ts';
import { awake } from '../browser/awake.ts';
import { ensureChromium } from '../browser/chromium.mjs';
import { flags } from '../browser/flags.ts';
import { built } from '../site/under-base.mjs';
import { median } from './median.ts';

const SLOWER = 4;
const LINKS = 12;
const POINTS = 10;
const EDITS = 15;
const CATEGORIES = ['devtools.timeline', 'blink.user_timing', 'disabled-by-default-devtools.timeline'];

/** The demonstration with more links and points, all different. */
function longSheet() {
  const { entries } = demonstration();
  const [point] = entries.points;
  if (point === undefined) throw new Error('long sheet: the demonstration must have a point');
  const links = Array.from({ length: LINKS }, (_, k) => {
    const link = entries.links[k % entries.links.length];
    if (link === undefined) throw new Error('long sheet: the demonstration must have links');
    return { ...link, id: `link${k + 1}`, label: `Link ${k + 1}`, loss: k % 3 === 0 ? '1' : '0' };
  });
  const points = Array.from({ length: POINTS }, (_, k) => ({
    ...point,
    id: `point${k + 1}`,
    label: `Point ${k + 1}`,
    frequency: `${3.5 + k / 10} MHz`,
    readings: `${7 + k / 10} dBm`,
  }));
  return { ...entries, links, points, damage: '' };
}

/** @typedef {{ name: string, ph: string, ts: number, dur?: number, tid: number, args?: { data?: { type?: string } } }} TraceEvent */

/**
 * From each input event to the end of the first paint after it, and to the end of the slices that it set off, in ms.
 * @param {readonly TraceEvent[]} events
 */
function answers(events) {
  const inputs = events.filter(({ name, args }) => name === 'EventDispatch' && args?.data?.type === 'input');
  const end = (/** @type {TraceEvent} */ event) => event.ts + (event.dur ?? 0);
  return inputs.map((input, index) => {
    const until = inputs[index + 1]?.ts ?? Number.POSITIVE_INFINITY;
    const after = events.filter(({ ts, tid }) => tid === input.tid && ts >= input.ts && ts < until);
    const paint = after.find((event) => event.name === 'Paint' && event.ts > end(input));
    const marks = after.filter(({ name }) => name === 'bench settled');
    const settled = marks.at(-1);
    return {
      handler: (input.dur ?? 0) / 1000,
      painted: paint ? (end(paint) - input.ts) / 1000 : Number.NaN,
      settled: settled ? (settled.ts - input.ts) / 1000 : Number.NaN,
    };
  });
}

/** @param {import('@playwright/test').Browser} browser @param {string} url @param {string} label */
async function measure(browser, url, label) {
  const page = await browser.newPage({ viewport: { width: 1024, height: 768 }, serviceWorkers: 'block' });
  await page.goto(url);
  await awake(page);
  const field = page.getByLabel(label, { exact: false }).first();
  await field.scrollIntoViewIfNeeded();
  await field.focus();
  await field.press('End');
  await page.evaluate(() => {
    // the table over all points is busy while it waits for its slices
    const mark = () => performance.mark('bench settled');
    for (const busy of document.querySelectorAll('[aria-busy]'))
      new MutationObserver(() => busy.getAttribute('aria-busy') === 'false' && mark()).observe(busy, {
        attributes: true,
        attributeFilter: ['aria-busy'],
      });
  });
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWER });
  await browser.startTracing(page, { categories: CATEGORIES });
  for (let k = 0; k < EDITS; k++) {
    await page.keyboard.press(k % 2 === 0 ? '1' : 'Backspace');
    await page.waitForTimeout(700);
  }
  const trace = JSON.parse((await browser.stopTracing()).toString());
  await page.close();
  return answers(
    trace.traceEvents.toSorted((/** @type {TraceEvent} */ a, /** @type {TraceEvent} */ b) => a.ts - b.ts),
  );
}

/** Prints how long the bench takes to answer, or that there is no built site to ask. */
export async function benchPage() {
  const isBuilt = await readFile(`${built.directory}/bench/index.html`).then(
    () => true,
    () => false,
  );
  if (!isBuilt) return console.log('The bench page is left out: build the site first (npm run build).');
  const site = await serveSite({ ...built, host: '127.0.0.1', port: 0 });
  const browser = await chromium.launch({ executablePath: ensureChromium(), args: flags });
  const url = `${new URL('/bench/', site.url).href}#${encodeEntries(longSheet())}`;
  const rows = [];
  for (const { what, label } of [
    { what: 'a reading', label: 'Readings, in dBm' },
    { what: 'a limit of a link', label: 'Limits ±' },
  ]) {
    const all = await measure(browser, url, label);
    const of = (/** @type {'handler' | 'painted' | 'settled'} */ key) => {
      const times = all.map((each) => each[key]).filter(Number.isFinite);
      return times.length === 0 ? 'nothing to do' : Number(median(times).toFixed(1));
    };
    rows.push({
      'typing in': what,
      edits: all.length,
      'handler ms': of('handler'),
      'painted after ms': of('painted'),
      'all points after ms': of('settled'),
    });
  }
  console.table(rows);
  console.log(
    `${LINKS} links, ${POINTS} points, the processor ${SLOWER} times slower; a frame at 60 Hz is 16.7 ms.`,
  );
  await browser.close();
  await site.close();
}

if (import.meta.main) await benchPage();
