import type { Locator, Page } from '@playwright/test';
import { decodeEntries } from '../../src/bench/address/address.ts';
import { linkStrings } from '../../src/bench/form/link-strings.ts';
import { pointStrings } from '../../src/bench/form/point-strings.ts';
import { helpPartStrings } from '../../src/bench/help/help-part-strings.ts';
import { helpStrings } from '../../src/bench/help/help-strings.ts';
import { checkStrings } from '../../src/bench/validity/check-strings.ts';
import { validityStrings } from '../../src/bench/validity/validity-strings.ts';
import { recordStrings } from '../../src/bench/words/record-strings.ts';
import { simulationPartStrings } from '../../src/bench/words/simulation-strings.ts';
import { tryStrings } from '../../src/bench/words/try-strings.ts';
import { strings as simulationStrings } from '../../src/widgets/simulation/strings.ts';
import { awake } from './awake.ts';
import { violations } from './axe.ts';
import { expect, test } from './site.ts';

const open = async (page: Page, hash = ''): Promise<void> => {
  await page.goto(`/bench/${hash}`);
  await awake(page);
};

const part = (page: Page, heading: string): Locator =>
  page.getByRole('region', { name: heading, exact: true });

/** Unfolds a part by the keyboard alone, and gives it back. */
async function unfold(page: Page, { heading, fold }: { heading: string; fold: string }): Promise<Locator> {
  const summary = part(page, heading).locator('summary').filter({ hasText: fold });
  await summary.focus();
  await page.keyboard.press('Enter');
  return part(page, heading);
}

const check = (within: Locator, name: keyof typeof checkStrings.names): Locator =>
  within.getByRole('group', { name: checkStrings.names[name], exact: true });
const field = (within: Locator, key: keyof typeof checkStrings.labels): Locator =>
  within.getByLabel(checkStrings.labels[key], { exact: true });
const readings = (page: Page): Locator =>
  page.getByLabel(pointStrings.columns.padsIntoMeter.readings.label, { exact: true });
const press = (within: Page | Locator, name: string): Promise<void> =>
  within.getByRole('button', { name, exact: true }).press('Enter');

/** Lets a worker be slow: its news is held until it is released. */
const holdWorkers = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    window.Worker = new Proxy(Worker, {
      construct(target, [url, options]: ConstructorParameters<typeof Worker>) {
        const worker = new target(url, options);
        Object.defineProperty(worker, 'onmessage', {
          set: (hear: (event: MessageEvent) => void) =>
            worker.addEventListener('message', (event) => {
              if (document.body.hasAttribute('data-released')) hear(event);
              else document.addEventListener('released', () => hear(event), { once: true });
            }),
        });
        return worker;
      },
    });
  });
const release = (page: Page): Promise<void> =>
  page.evaluate(() => {
    document.body.setAttribute('data-released', '');
    document.dispatchEvent(new Event('released'));
  });

test.describe('the validity checks', () => {
  test('are unfolded, filled in and told by the keyboard alone', async ({ page }) => {
    await open(page);
    const validity = await unfold(page, validityStrings);
    const step = check(validity, 'step');
    await expect(step.getByText(checkStrings.statuses.notMade)).toBeVisible();
    // typed faster than a slow machine draws: no letter may be lost
    const devtools = await page.context().newCDPSession(page);
    await devtools.send('Emulation.setCPUThrottlingRate', { rate: 6 });
    await field(step, 'stepWithout').focus();
    for (const text of ['7.0', '-3,1 dBm', '10', '0.4']) {
      await page.keyboard.type(text);
      await page.keyboard.press('Tab');
    }
    await expect(step.locator('.check-status')).toContainText(
      /^passed: 10\.0\sdB more moved the reading by 10\.10\sdB/,
    );
  });

  test('one that fails is a caution at the result, and gone when it passes', async ({ page }) => {
    await open(page);
    const validity = await unfold(page, validityStrings);
    await field(validity, 'off').fill('-3');
    const caution = page.locator('.checks-failed');
    await expect(caution).toContainText(checkStrings.failed(checkStrings.names.floor));
    await field(validity, 'off').fill('-30');
    await expect(caution).toHaveCount(0);
  });

  test('keep what cannot be used, say why beside it, over folding and a reload', async ({ page }) => {
    await open(page);
    const validity = await unfold(page, validityStrings);
    await field(validity, 'off').fill('hardly any');
    await expect(field(validity, 'off')).toHaveAttribute('aria-invalid', 'true');
    await expect(field(validity, 'off')).toHaveAccessibleDescription(/hardly any/);
    // the result does not wait for a check
    await expect(page.locator('.bench-problems')).toHaveCount(0);
    await expect
      .poll(async () => decodeEntries(await page.evaluate(() => location.hash)).entries.checks.off)
      .toBe('hardly any');
    await page.reload();
    await awake(page);
    await unfold(page, validityStrings);
    await expect(field(validity, 'off')).toHaveValue('hardly any');
  });
});

test.describe('the record', () => {
  test('is printed with what was noted, agreed and checked', async ({ page }) => {
    await open(page);
    const record = part(page, recordStrings.heading);
    await record.getByLabel(recordStrings.labels.by, { exact: true }).fill('M. and the Tuesday group');
    await record.getByLabel(recordStrings.labels.instruments, { exact: true }).fill('pad no. 3\nlent meter');
    const validity = await unfold(page, validityStrings);
    await field(validity, 'off').fill('-30');
    await page.emulateMedia({ media: 'print' });
    await expect(record.getByText('M. and the Tuesday group')).toBeVisible();
    await expect(record.getByText('pad no. 3; lent meter')).toBeVisible();
    await expect(record.getByText(checkStrings.names.floor)).toBeVisible();
    await expect(record.getByText(/^passed: /)).toBeVisible();
    await expect(record.getByLabel(recordStrings.labels.by, { exact: true })).toBeHidden();
    await expect(part(page, validityStrings.heading)).toBeHidden();
  });

  test('says of every change after the first reading that no reason was given, until one is', async ({
    page,
  }) => {
    await open(page);
    await readings(page).fill('7.2 dBm');
    await page.getByLabel(pointStrings.labels.tolerance, { exact: true }).fill('1');
    const record = part(page, recordStrings.heading);
    await expect(record.getByText(recordStrings.noReason)).toBeVisible();
    await page.getByLabel(pointStrings.lock.reason).fill('misread the data sheet');
    await expect(record.getByText(recordStrings.reason('misread the data sheet'))).toBeVisible();
  });
});

test.describe('what would help', () => {
  test('is worked out when unfolded, link by link, with the cheapest change', async ({ page }) => {
    await open(page);
    // 28.1 dBm against 28.5: can't tell
    await readings(page).fill('8 dBm');
    const help = await unfold(page, helpPartStrings);
    await expect(help.getByText(helpStrings.computed)).toBeVisible();
    const rows = help.getByRole('row');
    await expect(rows.nth(2)).toContainText('20 dB pad');
    await expect(help.locator('.cheapest')).toContainText(/^20 dB pad: brought down to \d+\s% .* “inside”/);
  });

  test('begins anew with the next edit, and reckons with a better part', async ({ page }) => {
    await open(page);
    const help = await unfold(page, helpPartStrings);
    await expect(help.locator('.cheapest')).toContainText('The verdict is there already');
    await readings(page).fill('8 dBm');
    await expect(help.locator('.cheapest')).toContainText('brought down to');
    const pad = page.getByRole('group', { name: '5. 20 dB pad' });
    await pad.getByText(linkStrings.more).click();
    await pad.getByLabel(linkStrings.labels.better).fill('0,1 dB');
    await expect(help.getByRole('columnheader', { name: helpStrings.replaced })).toBeVisible();
    await pad.getByLabel(linkStrings.labels.better).fill('good');
    await expect(help.getByText(helpStrings.unusable)).toBeVisible();
    await expect(pad.getByLabel(linkStrings.labels.better)).toHaveAttribute('aria-invalid', 'true');
    // the result does not wait for it
    await expect(page.locator('.bench-problems')).toHaveCount(0);
  });

  test('rests while it is folded', async ({ page }) => {
    await open(page);
    const help = await unfold(page, helpPartStrings);
    await expect(help.getByText(helpStrings.computed)).toBeVisible();
    await unfold(page, helpPartStrings);
    await readings(page).fill('8 dBm');
    await expect(page.locator('.verdict-words')).toContainText('Can’t tell');
    await expect(help.getByText(helpStrings.computed)).toBeHidden();
    await unfold(page, helpPartStrings);
    await expect(help.locator('.cheapest')).toContainText('brought down to');
  });
});

test.describe('the simulation', () => {
  const run = (seed: number): string => simulationStrings.done({ trials: '1\u00a0000\u00a0000', seed });

  test('runs on request, says its seed, and stands by whole distribution and propagation', async ({
    page,
  }) => {
    await open(page);
    const tried = await unfold(page, simulationPartStrings);
    await press(tried, simulationStrings.start);
    await expect(tried.getByText(run(1))).toBeVisible({ timeout: 30_000 });
    await expect(tried.getByRole('row')).toHaveCount(4);
    await expect(tried.getByText(/no more than the noise/)).toBeVisible();
    await expect(tried.getByText(tryStrings.stale)).toHaveCount(0);
  });

  test('that an edit overtakes is told to be of an earlier state, running and done', async ({ page }) => {
    await holdWorkers(page);
    await open(page);
    const tried = await unfold(page, simulationPartStrings);
    await press(tried, simulationStrings.start);
    await expect(tried.getByRole('progressbar')).toBeVisible();
    await readings(page).fill('8 dBm');
    await expect(page.locator('.verdict-words')).toContainText('Can’t tell');
    await expect(tried.getByText(tryStrings.stale)).toBeVisible();
    await release(page);
    await expect(tried.getByText(run(1))).toBeVisible({ timeout: 30_000 });
    await expect(tried.getByText(tryStrings.stale)).toBeVisible();
    // of the state that it was started for: 27.1 dBm, not 28.1
    await expect(tried.getByRole('row').nth(1)).toContainText(/26\.\d{3}\sdBm/);
    await press(tried, simulationStrings.again);
    await expect(tried.getByText(run(2))).toBeVisible({ timeout: 30_000 });
    await expect(tried.getByText(tryStrings.stale)).toHaveCount(0);
    await expect(tried.getByRole('row').nth(1)).toContainText(/27\.\d{3}\sdBm/);
  });

  test('that is stopped concludes nothing', async ({ page }) => {
    await holdWorkers(page);
    await open(page);
    const tried = await unfold(page, simulationPartStrings);
    await press(tried, simulationStrings.start);
    await press(tried, simulationStrings.cancel);
    await expect(tried.getByText('nothing is concluded from them')).toBeVisible();
    await release(page);
    await expect(tried.getByRole('table')).toHaveCount(0);
  });
});

test('what is unfolded passes the rules of accessibility and fits a telephone', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await open(page);
  const validity = await unfold(page, validityStrings);
  await field(validity, 'off').fill('hardly any');
  await field(validity, 'reconnections').fill('7\n8');
  const help = await unfold(page, helpPartStrings);
  await expect(help.locator('.cheapest')).toContainText('The verdict is there already');
  const tried = await unfold(page, simulationPartStrings);
  await press(tried, simulationStrings.start);
  await expect(tried.getByRole('row')).toHaveCount(4, { timeout: 30_000 });
  expect(await violations(page, undefined, ['.defence', '.record-part'])).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
});
