import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { twoPadsSheet } from '../../src/sheet/two-pads.ts';
import type { SimulationNews, SimulationOrder } from '../../src/widgets/simulation/messages.ts';
import { runSimulation } from '../../src/widgets/simulation/run.ts';
import { strings } from '../../src/widgets/simulation/strings.ts';
import { built } from '../site/under-base.mjs';
import { openAt } from './reader.ts';
import { expect, test } from './site.ts';

const PAGE = '/examples/two-pads-into-a-receiver/';
const order: SimulationOrder = { sheet: twoPadsSheet(), seed: 7, stop: { kind: 'trials', trials: 400_000 } };

function inProcess() {
  const steps = runSimulation(order);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

test('a seed gives the same numbers in this browser as in Node, to the last bit', async ({ page }) => {
  const worker = readdirSync(join(built.directory, '_astro')).find((file) =>
    file.startsWith('simulation.worker'),
  );
  await page.goto(PAGE);
  const news = await page.evaluate(
    ({ url, sent }) =>
      new Promise<SimulationNews>((resolve, reject) => {
        const side = new Worker(url, { type: 'module' });
        side.onmessage = ({ data }: MessageEvent<SimulationNews>) => {
          if (data.kind !== 'progress') resolve(data);
        };
        side.onerror = () => reject(new Error('the worker could not start'));
        side.postMessage(sent);
      }),
    { url: `/_astro/${worker}`, sent: order },
  );
  expect(news).toEqual({ kind: 'done', result: inProcess() });
});

test('a simulation runs beside the page and stands by the computed interval', async ({ page }) => {
  await openAt(page, PAGE);
  await page.getByRole('button', { name: strings.start }).click();
  await expect(page.getByRole('table', { name: strings.caption })).toBeVisible({ timeout: 30_000 });
  await expect(page.getByText(strings.done({ trials: '1\u00a0000\u00a0000', seed: 1 }))).toBeVisible();
  await page.getByRole('button', { name: strings.again }).click();
  await expect(page.getByText(strings.done({ trials: '1\u00a0000\u00a0000', seed: 2 }))).toBeVisible({
    timeout: 30_000,
  });
});

test('a simulation that is stopped concludes nothing', async ({ page }) => {
  await openAt(page, PAGE);
  // within the page, since a fast machine has done the million before a second click arrives from outside
  await page.evaluate(
    ({ start, cancel }) =>
      new Promise<void>((resolve) => {
        const press = (name: string): boolean => {
          const button = [...document.querySelectorAll('button')].find(
            ({ textContent }) => textContent === name,
          );
          button?.click();
          return button !== undefined;
        };
        const observer = new MutationObserver(() => {
          if (!press(cancel)) return;
          observer.disconnect();
          resolve();
        });
        observer.observe(document.body, { childList: true, subtree: true });
        press(start);
      }),
    { start: strings.start, cancel: strings.cancel },
  );
  await expect(page.getByText('nothing is concluded from them')).toBeVisible();
  await expect(page.getByRole('table', { name: strings.caption })).toHaveCount(0);
});
