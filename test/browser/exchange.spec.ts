import { readFile } from 'node:fs/promises';
import type { Download, Page } from '@playwright/test';
import { copyStrings } from '../../src/bench/export/copy-strings.ts';
import { filesPartStrings } from '../../src/bench/export/files-part-strings.ts';
import { filesStrings } from '../../src/bench/export/files-strings.ts';
import { strings } from '../../src/bench/strings.ts';
import { version } from '../../src/layouts/version.ts';
import { SITE_NAME } from '../../src/text/site-name.ts';
import { textFormNames } from '../../src/text/summary/forms.ts';
import { decimalStrings } from '../../src/widgets/parts/decimal-strings.ts';
import { awake } from './awake.ts';
import { expect, test } from './site.ts';

const part = (page: Page, name: string) => page.getByRole('region', { name, exact: true });
const filesOf = (page: Page) => part(page, filesPartStrings.heading);
const titleOf = (page: Page) => page.getByLabel(strings.labels.title, { exact: true });

async function openFiles(page: Page, hash = ''): Promise<void> {
  await page.goto(`/bench/${hash}`);
  await awake(page);
  await filesOf(page).locator('summary').press('Enter');
  await expect(filesOf(page).getByLabel(filesStrings.open)).toBeVisible();
}

async function saved(page: Page, name: string): Promise<Download> {
  const coming = page.waitForEvent('download');
  await filesOf(page).getByRole('button', { name, exact: true }).press('Enter');
  const download = await coming;
  await expect(filesOf(page).getByText(filesStrings.saved(download.suggestedFilename()))).toBeVisible();
  return download;
}
/** Types into a field and presses a button before anything that follows the result has been painted. */
async function typeAndPress(field: Element, { typed, name }: { typed: string; name: string }): Promise<void> {
  const result = (): string | null | undefined => document.querySelector('#result')?.textContent;
  Object.assign(field, { value: typed });
  field.dispatchEvent(new Event('input', { bubbles: true }));
  for (let turn = 0; turn < 100 && result() !== typed; turn++) await Promise.resolve();
  if (result() !== typed) throw new Error(`typed ${typed}, the result is of ${result()}`);
  [...document.querySelectorAll('button')].find((button) => button.textContent === name)?.click();
}

const bytesOf = async (download: Download): Promise<Buffer> => readFile(await download.path());
const textOf = async (download: Download): Promise<string> => (await bytesOf(download)).toString();

const choose = (page: Page, name: string, content: string | Buffer) =>
  filesOf(page)
    .getByLabel(filesStrings.open)
    .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(content) });

test('a sheet goes out as file, tables and picture, without names on request, and comes back', async ({
  page,
}) => {
  await openFiles(page);
  const coming = page.waitForEvent('download');
  await titleOf(page).evaluate(typeAndPress, { typed: '<b>Quux’s</b> rig', name: filesStrings.sheet });
  const file = await coming;
  expect(file.suggestedFilename()).toBe('b-quuxs-b-rig.json');
  const whole = await textOf(file);
  expect(JSON.parse(whole)).toMatchObject({ version: 1, sheets: [{ title: '<b>Quux’s</b> rig' }] });

  await part(page, copyStrings.heading).getByLabel(decimalStrings.signs.comma).check();
  expect(await textOf(await saved(page, filesStrings.readings))).toContain('3,58 MHz;3,58;1;7\r\n');
  expect(await textOf(await saved(page, filesStrings.budget))).toContain(';0,288675135;');

  const svg = await textOf(await saved(page, filesStrings.svg));
  expect(svg).toContain('27,10 dBm ±0,69 dB (k = 2, 95,45 %) · 513 mW, 438 to 601');
  // ticks of both axes and what each link adds; the conditions are the reader’s own words, and a version and an address have points
  expect(svg).toContain(`Worked out with ${SITE_NAME} ${version}, `);
  expect(
    svg
      .replace(version, '')
      .replaceAll(/3\.58 MHz|12\.0 V|127\.0\.0\.1/g, '')
      .match(/>[^<]*\d\.\d[^<]*</g) ?? [],
  ).toEqual([]);
  expect(svg).toContain('&lt;b&gt;Quux’s&lt;/b&gt; rig');
  expect(svg).toMatch(/fill="#0f766a"/);
  expect(svg).not.toMatch(/class=|var\(|<style/);
  const parsed = await page.evaluate((text) => {
    const file = new DOMParser().parseFromString(text, 'image/svg+xml');
    return { root: file.documentElement.localName, errors: file.querySelectorAll('parsererror').length };
  }, svg);
  expect(parsed).toEqual({ root: 'svg', errors: 0 });

  const png = await bytesOf(await saved(page, filesStrings.png));
  // signature, then the width in the header chunk (PNG, ISO/IEC 15948, 5.2 and 11.2.2)
  expect(png.subarray(1, 4).toString()).toBe('PNG');
  expect(png.readUInt32BE(16)).toBe(1180);
  expect(png.length).toBeGreaterThan(20_000);

  await part(page, copyStrings.heading).getByLabel(copyStrings.nameless).check();
  const nameless = await textOf(await saved(page, filesStrings.sheet));
  expect(nameless).not.toMatch(/Quux|meter no\. 3|measuring evening/);
  expect(await textOf(await saved(page, filesStrings.svg))).not.toContain('Quux');

  await choose(page, 'sheet.json', nameless);
  await expect(filesOf(page).getByRole('status').filter({ hasText: 'Opened' })).toContainText(
    'A transmitter',
  );
  await expect(titleOf(page)).toHaveValue('A transmitter');
  await expect(page.getByRole('group', { name: '5. Pad' }).first()).toBeVisible();
  await choose(page, 'sheet.json', whole);
  await expect(titleOf(page)).toHaveValue('<b>Quux’s</b> rig');
  await expect(page.locator('#result b')).toHaveCount(0);
});

test('a file that cannot be opened is told beside the field, and the sheet stays', async ({ page }) => {
  await openFiles(page);
  const title = await titleOf(page).inputValue();
  const field = filesOf(page).getByLabel(filesStrings.open);
  const head = '"file": "how-sure-is-a-watt", "version"';
  for (const [content, sentence] of [
    ['hello', 'it is no JSON text'],
    [Buffer.from([0x89, 0x50, 0x4e, 0x47]), 'This is a PNG picture'],
    [
      `{${head}: 1, "sheets": [{"title": 5}]}`,
      'Sheet 1, “title”: a text in quotation marks is expected here',
    ],
    [`{${head}: 9, "sheets": [{}]}`, 'made by a later version of this site'],
    [`{${head}: 1, "sheets": [`, 'changed or cut off on its way'],
    [Buffer.alloc(5_100_000, 32), '5.1\u00a0MB'],
  ] as const) {
    await choose(page, 'odd.json', content);
    await expect(field).toHaveAccessibleDescription(new RegExp(sentence));
    await expect(field).toHaveAttribute('aria-invalid', 'true');
  }
  await expect(titleOf(page)).toHaveValue(title);

  await choose(page, 'two.json', `{${head}: 1, "sheets": [{"title": "One"}, {"title": "Two", "odd": 1}]}`);
  await filesOf(page).getByRole('button', { name: '“Two”' }).press('Enter');
  await expect(titleOf(page)).toHaveValue('Two');
  await expect(filesOf(page)).toContainText('Sheet 2, “odd” means nothing here');
});

test('the record is copied in the form that is asked for, and an address that no forum takes is left out', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto('/bench/');
  await awake(page);
  const take = part(page, copyStrings.heading);
  const clipboard = () => page.evaluate(() => navigator.clipboard.readText());
  await take.getByLabel(textFormNames.markdown).check();
  await take.getByRole('button', { name: copyStrings.button }).press('Enter');
  await expect(take.getByText(copyStrings.done, { exact: true })).toBeVisible();
  expect(await clipboard()).toMatch(/^\*\*The club.*\n\n- /);
  expect(await clipboard()).toMatch(/<http.*#zip=[0-9A-Za-z]+&v=3>/);
  await take.getByLabel(textFormNames.bbcode).check();
  await take.getByRole('button', { name: copyStrings.button }).press('Enter');
  await expect.poll(clipboard).toMatch(/^\[b\]The club/);

  await take.getByRole('button', { name: copyStrings.addressButton }).press('Enter');
  await expect.poll(clipboard).toMatch(/^http\S+#zip=[0-9A-Za-z]+&v=3$/);

  // more than two thousand letters that nothing folds: a congruence modulo 2^32 (Knuth, 3.2.1)
  let seed = 1;
  const noise = (): string => {
    seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
    return Math.floor(seed / 2 ** 27).toString(32);
  };
  for (const name of ['Remarks', 'Certificates', 'Instruments'])
    await page.getByLabel(name, { exact: true }).fill(Array.from({ length: 1000 }, noise).join(''));
  // the parts below the form follow it a breath later
  await expect(async () => {
    await take.getByRole('button', { name: copyStrings.button }).press('Enter');
    await expect(take.getByRole('status')).toHaveText(copyStrings.withoutAddress, { timeout: 1000 });
  }).toPass();
  expect(await clipboard()).toContain('ask for the file');
  expect(await clipboard()).not.toContain('#zip=');
});
