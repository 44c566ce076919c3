import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { shelfFileStrings } from '../../src/bench/instruments/shelf-file-strings.ts';
import { shelfStrings } from '../../src/bench/instruments/shelf-strings.ts';
import { openAt } from './reader.ts';
import { expect, test } from './site.ts';

const field = (page: Page, name: string) => page.getByLabel(name, { exact: true });
const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const shelf = (page: Page) => page.locator('.instruments > li');
const files = (page: Page) => page.getByRole('region', { name: shelfStrings.files.heading, exact: true });
const kept = (page: Page) => expect(page.getByText(shelfStrings.kept, { exact: true })).toBeVisible();

const openShelf = (page: Page): Promise<void> => openAt(page, '/bench/instruments/');

async function saved(page: Page): Promise<{ readonly name: string; readonly text: string }> {
  const coming = page.waitForEvent('download');
  await button(page, shelfFileStrings.save).click();
  const download = await coming;
  const name = download.suggestedFilename();
  await expect(files(page).getByText(shelfFileStrings.saved(name), { exact: true })).toBeVisible();
  return { name, text: await readFile(await download.path(), 'utf8') };
}

const choose = (page: Page, content: string) =>
  field(page, shelfFileStrings.open).setInputFiles({
    name: 'any.json',
    mimeType: 'application/json',
    buffer: Buffer.from(content),
  });

test('instruments leave as a file and come back, beside what was changed, with nothing overwritten', async ({
  page,
}) => {
  await openShelf(page);
  await button(page, shelfStrings.addClub).click();
  await expect(shelf(page)).toHaveCount(7);
  await files(page).locator('summary').press('Enter');
  const whole = await saved(page);
  expect(whole.name).toBe('instruments.json');
  expect(JSON.parse(whole.text).instruments).toHaveLength(7);

  // one of them, without names
  await field(page, shelfFileStrings.which).selectOption({ label: 'Pad A, 20 dB, A' });
  await field(page, shelfFileStrings.leaveNames).check();
  const pad = await saved(page);
  expect(pad.name).toBe('pad-1.json');
  expect(JSON.parse(pad.text).instruments).toEqual([expect.objectContaining({ label: 'Pad 1', loss: '20' })]);

  // what cannot be taken is told, and changes nothing
  const opener = field(page, shelfFileStrings.open);
  await choose(page, whole.text.replace('"1 W"', '5'));
  await expect(opener).toHaveAccessibleDescription(/Instrument 5, “rated”: a text in quotation marks/);
  await expect(opener).toHaveAttribute('aria-invalid', 'true');
  await choose(page, '{"file": "how-sure-is-a-watt", "version": 1, "sheets": [{}]}');
  await expect(opener).toHaveAccessibleDescription(/open it on the bench/);
  await expect(shelf(page)).toHaveCount(7);

  // one changed, one deleted: the first comes beside, the other comes back
  await button(page, 'Edit: 3 m of thin coax').click();
  await field(page, 'Name').fill('<b>Coax</b>');
  await button(page, 'Delete: Dummy load').click();
  await expect(shelf(page)).toHaveCount(6);
  await choose(page, whole.text);
  await expect(opener).toHaveAccessibleDescription(
    new RegExp(`${shelfFileStrings.added(2)} ${shelfFileStrings.beside(1)} ${shelfFileStrings.same(5)}`),
  );
  await expect(shelf(page)).toHaveCount(8);
  await kept(page);
  await openShelf(page);
  await expect(shelf(page)).toHaveCount(8);
  await expect(shelf(page).getByRole('heading', { name: '<b>Coax</b>, 7' })).toBeVisible();
  await expect(shelf(page).getByRole('heading', { name: '3 m of thin coax, 7' })).toBeVisible();
});

test('a borrowed calibration corrects a reading on the bench, and is warned of when it is too old', async ({
  page,
}) => {
  await openAt(page, '/bench/borrow/');
  await button(page, 'Choose an instrument').click();
  await field(page, 'Its name').fill('The blue meter');
  await button(page, 'Save the calibration').click();
  await expect(page.getByText('Saved: “The blue meter” now has this calibration.')).toBeVisible();

  await openShelf(page);
  const own = shelf(page).filter({ has: page.getByRole('heading', { name: 'The blue meter' }) });
  await expect(own).toContainText(/correction −0\.75\d*\sdB; .*\(compared with a lent reference\)/);
  await button(page, 'Edit: The blue meter').click();
  await field(page, 'Again after, in months').fill('12');
  await kept(page);

  await openAt(page, '/bench/');
  const before = await page.locator('.running p').first().innerText();
  expect(before).toMatch(/^27\.10\sdBm/);
  const link = page.getByRole('group', { name: '3. The meter that was lent' });
  await link.getByText('From your instruments').click();
  await field(page, 'Instrument').selectOption({ label: 'The blue meter' });
  await link.getByRole('button', { name: /^State the link/ }).click();
  const taken = page.getByRole('group', { name: /^\d\. The blue meter$/ });
  await expect(page.locator('.running p').first()).toContainText(/26\.35\sdBm/);
  await expect(taken.locator('.link-age')).toContainText('Calibrated on 2026-05-09');
  await expect(taken.locator('.link-age')).not.toHaveClass(/problem/);

  // the last day that counts, and the one after it
  await field(page, 'When').fill('2027-05-09');
  await expect(taken.locator('.link-age')).not.toHaveClass(/problem/);
  await field(page, 'When').fill('2027-05-10');
  await expect(taken.locator('.link-age')).toHaveClass(/problem/);
  await expect(taken.locator('.link-age')).toContainText(
    'older than the 12 months you set, which ended on 2027-05-09',
  );
});
