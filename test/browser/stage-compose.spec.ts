import type { Page } from '@playwright/test';
import { awake } from './awake.ts';
import { expect, test } from './site.ts';

const compose = '/stage/compose/';
const lesson = 'How far down the chain did your watt come?';

const pick = async (page: Page, source: string, step: string): Promise<void> => {
  const group = page.locator('details', { hasText: source });
  if ((await group.getAttribute('open')) === null) await group.locator('summary').click();
  await group.getByRole('button', { name: `Add: ${step}`, exact: true }).click();
};
const picked = (page: Page): Promise<string[]> => page.locator('#talk-list li span').allTextContents();
const now = (page: Page) => page.locator('.slide.now');

test('steps are picked, put in order, taken out, kept, and carried by the address', async ({
  page,
  context,
}) => {
  await page.goto(compose);
  await pick(page, lesson, 'One rung decides');
  await pick(page, 'Two pads into a receiver', 'The answer');
  await pick(page, lesson, 'Every rung was compared with the one above');
  await page.getByRole('button', { name: /^Earlier: Every rung/ }).click();
  await page.getByRole('button', { name: /^Earlier: Every rung/ }).click();
  await expect(page.getByRole('status').last()).toContainText('Now step 1.');
  await page.getByRole('button', { name: /^Take out: One rung/ }).click();
  const told = [expect.stringMatching(/^Every rung/), expect.stringMatching(/^The answer/)];
  expect(await picked(page)).toEqual(told);
  await page.reload();
  expect(await picked(page)).toEqual(told);
  const address = await page.getByLabel('Its address, to share or keep').inputValue();
  const other = await context.newPage();
  await other.goto(address.replace('/talk/', '/compose/'));
  expect(await picked(other)).toEqual(told);
});

test('a talk that is put together in two windows has the steps of both', async ({ page, context }) => {
  await page.goto(compose);
  const other = await context.newPage();
  await other.goto(compose);
  await pick(page, lesson, 'One rung decides');
  await expect.poll(() => picked(other)).toHaveLength(1);
  await pick(other, 'Two pads into a receiver', 'The answer');
  const both = [expect.stringMatching(/^One rung decides/), expect.stringMatching(/^The answer/)];
  await expect.poll(() => picked(page)).toEqual(both);
  await expect(page.locator('#talk-says')).toContainText('Another window has changed your talk');
  await page.getByRole('link', { name: 'As it was before' }).click();
  await expect.poll(() => picked(page)).toHaveLength(1);
});

test('a talk is saved as a file and opened again, and another file is refused with a reason', async ({
  page,
}) => {
  await page.goto(compose);
  await pick(page, lesson, 'One rung decides');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a file' }).click();
  const path = await (await download).path();
  await page.getByRole('button', { name: /^Take out/ }).click();
  await expect(page.getByText('Nothing picked yet.')).toBeVisible();
  await page.getByLabel('Open a saved talk').setInputFiles(path);
  await expect.poll(() => picked(page)).toEqual([expect.stringMatching(/^One rung decides/)]);
  await page
    .getByLabel('Open a saved talk')
    .setInputFiles({ name: 'a.json', mimeType: 'application/json', buffer: Buffer.from('{}') });
  await expect(page.locator('#talk-says')).not.toBeEmpty();
  expect(await picked(page), 'nothing was changed').toHaveLength(1);
});

const parts = ['traceability.the-chain-to-the-definition.rungs', 'examples.two-pads-into-a-receiver.answer'];

test('the talk shows its parts one after the other, by clicker, even while a number in one has the focus', async ({
  page,
}) => {
  await page.goto(`/stage/talk/?parts=${[...parts, parts[0]].join('~')}&v=1`);
  const first = page.locator('iframe').first().contentFrame();
  const amount = first.getByLabel('20 decibel pad: what it adds');
  await expect(first.locator('astro-island[ssr]')).toHaveCount(0);
  await amount.fill('2');
  await expect(first.locator('.band-number').last()).toHaveText('±2.3\u00a0dB');
  await page.keyboard.press('PageDown');
  await expect(now(page)).toHaveId('s2');
  await expect(page.locator('[data-deck="told"]'), 'by the title of the borrowed step').toHaveText(
    'Step 2 of 4: The answer',
  );
  const second = page.locator('iframe').nth(1).contentFrame();
  await expect(second.locator('.slide.now')).toHaveId('answer');
  await expect(second.getByRole('navigation'), 'the bar is the talk’s').toBeHidden();
  await page.keyboard.press('w');
  await expect(now(page)).toHaveId('s1');
  await expect(amount, 'its state is kept').toHaveValue(/^2/);
  const again = page.locator('iframe').nth(2).contentFrame().getByLabel('20 decibel pad: what it adds');
  await expect(again, 'the same step at another place is of its own').toHaveValue('0.5');
  await page.keyboard.press('Escape');
  await page.keyboard.press('0');
  await expect(amount).toHaveValue('0.5');
  await page.keyboard.press('End');
  await expect(now(page)).toHaveId('address');
});

test('a talk prints as a handout: its steps one below the other with their notes and figures, and no frame', async ({
  page,
}) => {
  await page.goto(`/stage/talk/?parts=${[...parts, 'decibels.ratios-that-add.nowhere'].join('~')}&v=1`);
  await awake(page);
  await page.locator('.talk-paper').waitFor({ state: 'attached' });
  await expect(page.locator('.talk-paper'), 'not for the wall').toBeHidden();
  await page.emulateMedia({ media: 'print' });
  const steps = page.locator('.talk-paper .slide');
  await expect(steps).toHaveCount(2);
  await expect(steps.nth(0)).toContainText('Read the figure from the top.');
  await expect(steps.nth(0).getByRole('img').first()).toBeVisible();
  await expect(steps.nth(1)).toContainText('26.8\u00a0dBm ±2.5\u00a0dB');
  await expect(steps.nth(1)).toContainText('From “Two pads into a receiver”');
  await expect(page.locator('.talk-paper > p')).toHaveText(
    'The step decibels.ratios-that-add.nowhere is not on this site (any more).',
  );
  await expect(page.locator('iframe:visible')).toHaveCount(0);
  await expect(page.locator('#address')).toBeVisible();
});

// An answer that is cut off is the one that a browser says nothing of.
for (const [what, address, told] of [
  ['the page of a step', '**/two-pads-into-a-receiver/', /^The step .*two-pads.* did not come/],
  ['what lays them out', '**/talk-paper.*.js', /^The steps did not come/],
] as const)
  test(`where ${what} does not come for paper, the paper says so`, async ({ page }) => {
    // frames have their own: only what is fetched for paper fails
    await page.route(address, (route) =>
      route.request().resourceType() === 'document' ? route.continue() : route.abort('aborted'),
    );
    await page.goto(`/stage/talk/?parts=${parts.join('~')}&v=1`);
    await awake(page);
    await page.locator('.talk-paper').waitFor({ state: 'attached' });
    await page.emulateMedia({ media: 'print' });
    await expect(page.getByText(told)).toBeVisible();
    await expect(page.locator('#address')).toBeVisible();
  });

test('notes of a talk move with it', async ({ page, context }) => {
  await page.goto(`/stage/talk/?parts=${parts.join('~')}&v=1`);
  await awake(page);
  const opened = context.waitForEvent('page');
  await page.keyboard.press('n');
  const notes = await opened;
  await expect(
    notes.locator('iframe').first().contentFrame().getByText('Read the figure from the top.'),
  ).toBeVisible();
  const amount = (window: Page) =>
    window.locator('iframe').first().contentFrame().getByLabel('20 decibel pad: what it adds');
  await amount(page).fill('2');
  await expect(amount(notes), 'a number that is changed in a step').toHaveValue(/^2/);
  await page.keyboard.press('PageDown');
  await expect(now(notes)).toHaveId('s2');
});

test('every step that can be picked is on the page that shows it', async ({ page, request }) => {
  await page.goto(compose);
  const links = await page
    .locator('.compose li a')
    .evaluateAll((all) => all.map((link) => (link as HTMLAnchorElement).href));
  expect(links.length).toBeGreaterThan(250);
  const texts = new Map<string, string>();
  for (const link of links) {
    const [address = '', id = ''] = link.split('#');
    if (!texts.has(address)) texts.set(address, await (await request.get(address)).text());
    expect(texts.get(address), link).toContain(`id="${id}"`);
  }
});
