import type { BrowserContext, Locator, Page } from '@playwright/test';
import { keepStrings } from '../../src/bench/keep/strings.ts';
import { sheetStrings } from '../../src/bench/sheets/strings.ts';
import { awake } from './awake.ts';
import { openAt } from './reader.ts';
import { expect, test } from './site.ts';

const CLUB = 'The club’s hidden transmitter';
const title = (page: Page): Locator => page.getByLabel('Title');
const line = (page: Page): Locator => page.locator('.kept-line');
const rows = (page: Page): Locator => page.locator('.sheet-row');

const open = (page: Page, place = ''): Promise<void> => openAt(page, `/bench/${place}`);

/** Types a title and waits until it is kept. */
async function keepAs(page: Page, name: string): Promise<void> {
  await title(page).fill(name);
  await expect(line(page)).toContainText('Kept in this browser');
}

/** Another tab, at the address of this one or elsewhere. */
async function tabAt(context: BrowserContext, place: string): Promise<Page> {
  const page = await context.newPage();
  await open(page, place);
  return page;
}

test('nothing is kept before something is changed; then it is, and the bench opens with it', async ({
  page,
  context,
}) => {
  await open(page);
  await expect(line(page)).toContainText(keepStrings.unchanged);
  const list = await tabAt(context, 'sheets/');
  await expect(list.getByText(sheetStrings.none)).toBeVisible();
  await keepAs(page, 'First of mine');
  await expect(rows(list), 'the list follows').toHaveCount(1);
  await page.reload();
  await awake(page);
  await expect(title(page)).toHaveValue('First of mine');
  const other = await tabAt(context, '');
  await expect(title(other)).toHaveValue('First of mine');
  // a new sheet is kept beside it, and undo leads back to the one before, which is kept for itself
  await page.getByRole('button', { name: 'Start an empty sheet' }).click();
  await expect(line(page)).toContainText(keepStrings.unchanged);
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(title(page)).toHaveValue('First of mine');
  await expect(line(page)).toContainText('Kept in this browser');
  await page.getByRole('button', { name: 'Redo', exact: true }).click();
  await keepAs(page, 'Second of mine');
  await expect(rows(list)).toHaveCount(2);
  await expect(rows(list).first()).toContainText('Second of mine');
  await rows(list).getByRole('link', { name: 'Second of mine' }).click();
  await awake(list);
  await expect(title(list)).toHaveValue('Second of mine');
  await expect(line(list)).toContainText('Kept in this browser');
});

test('an address that carries a sheet overwrites none, and is kept as one of its own', async ({
  page,
  context,
}) => {
  await open(page);
  await keepAs(page, 'Dear to me');
  await expect.poll(() => page.evaluate(() => location.hash)).toContain('v=');
  const address = await page.evaluate(() => location.hash);
  const other = await tabAt(context, address);
  await expect(title(other)).toHaveValue('Dear to me');
  await expect(line(other)).toContainText(keepStrings.unchanged);
  await keepAs(other, 'Made of it');
  await page.reload();
  await awake(page);
  await expect(title(page)).toHaveValue('Dear to me');
  const list = await tabAt(context, 'sheets/');
  await expect(rows(list)).toHaveCount(2);
  // back to an entry of the history that had another sheet: it goes on with that one
  await other.evaluate(() => {
    location.hash = 't=Third&x=1&v=2';
  });
  await expect(title(other)).toHaveValue('Third');
  await expect(line(other)).toContainText(keepStrings.unchanged);
  await other.goBack();
  await expect(title(other)).toHaveValue('Made of it');
  await title(other).fill('Made of it later');
  await expect(rows(list).first()).toContainText('Made of it later');
  await expect(rows(list)).toHaveCount(2);
});

test('two tabs with one sheet ask before one overwrites the other', async ({ page, context }) => {
  await open(page);
  await keepAs(page, 'As at first');
  const other = await tabAt(context, '');
  await expect(title(other)).toHaveValue('As at first');
  await keepAs(page, 'By the first');
  await expect(line(other)).toContainText(keepStrings.elsewhere.changed);
  await expect(line(other)).toContainText(keepStrings.notMine);
  await title(other).fill('By the second');
  await expect(line(other)).toContainText(keepStrings.mine);
  await other.getByRole('button', { name: keepStrings.choices.take }).click();
  await expect(title(other)).toHaveValue('By the first');
  await expect(line(other)).toContainText('Kept in this browser');
  // both at once
  await title(page).fill('One');
  await title(other).fill('Two');
  const asked = (tab: Page): Promise<number> => line(tab).getByText(keepStrings.elsewhere.changed).count();
  await expect.poll(async () => (await asked(page)) + (await asked(other)), 'one of them').toBe(1);
  const loser = (await asked(page)) === 1 ? page : other;
  const lost = await title(loser).inputValue();
  await loser.getByRole('button', { name: keepStrings.choices.beside }).click();
  await expect(line(loser)).toContainText('Kept in this browser');
  const list = await tabAt(context, 'sheets/');
  await expect(rows(list)).toHaveCount(2);
  await expect(rows(list).first()).toContainText(lost);
});

test('the list finds, duplicates, deletes and brings back, and shows names as text', async ({ page }) => {
  await open(page);
  const hostile = '<img src=x onerror=alert(1)> “Pad”';
  await keepAs(page, hostile);
  await line(page).getByRole('link').click();
  await awake(page);
  await expect(rows(page)).toHaveCount(1);
  await expect(rows(page).getByRole('link', { name: hostile })).toBeVisible();
  await rows(page).getByRole('button', { name: sheetStrings.duplicate }).click();
  await expect(rows(page)).toHaveCount(2);
  await page.getByLabel(sheetStrings.search).fill('copy');
  await expect(rows(page)).toHaveCount(1);
  await rows(page).getByRole('button', { name: sheetStrings.remove }).click();
  await expect(rows(page)).toHaveCount(0);
  await expect(page.getByRole('button', { name: sheetStrings.undo })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(rows(page)).toHaveCount(1);
  await page.getByLabel(sheetStrings.search).fill('no such thing');
  await expect(page.getByText(sheetStrings.noneFound)).toBeVisible();
});

/** Hurts every kept sheet, as a failing disk or a foreign script might. */
const hurt = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    const asked = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const database = await asked(indexedDB.open('how-sure-is-a-watt'));
    const sheets = database.transaction('sheets', 'readwrite').objectStore('sheets');
    for (const record of await asked(sheets.getAll())) await asked(sheets.put({ ...record, value: 7 }));
    database.close();
  });

test('a damaged kept sheet is told and left, until the reader deletes it', async ({ page }) => {
  await open(page);
  await keepAs(page, 'Was whole');
  await page.goto('/about/');
  await hurt(page);
  await open(page, 'sheets/');
  const told = page.locator('li', { hasText: sheetStrings.unreadable.damaged });
  await expect(told).toContainText('Was whole');
  await expect(rows(page)).toHaveCount(0);
  await told.getByRole('button', { name: sheetStrings.onlyButton(sheetStrings.remove, 'Was whole') }).click();
  await expect(told).toHaveCount(0);
  await expect(page.getByRole('button', { name: sheetStrings.undo })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(told, 'as damaged as it was').toHaveCount(1);
});

test('a browser that keeps nothing is told of it, and the bench works all the same', async ({ page }) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('denied', 'SecurityError');
    };
  });
  await open(page);
  await title(page).fill('Not to be kept');
  await expect(line(page)).toContainText(keepStrings.failed.refused);
  await page.getByLabel('Readings, in dBm').fill('8 dBm');
  await expect(page.locator('.bench-result')).toContainText(/28\.1/);
  await expect.poll(() => page.evaluate(() => location.hash)).toContain('v=');
  await page.reload();
  await awake(page);
  await expect(title(page), 'the address still has it').toHaveValue('Not to be kept');
  await openAt(page, '/bench/sheets/');
  await expect(page.getByText(sheetStrings.problems.refused)).toBeVisible();
  await openAt(page, `/bench/#kept-abc`);
  await expect(line(page)).toContainText(keepStrings.opening.refused);
  await expect(title(page)).toHaveValue(CLUB);
});

test('a letter typed just before the page is loaded again is still there, kept sheet or none', async ({
  page,
}) => {
  await open(page);
  await title(page).focus(); // what writes addresses is fetched now
  await page.waitForLoadState('networkidle');
  await title(page).fill('First');
  await page.reload();
  await awake(page);
  await expect(title(page)).toHaveValue('First');
  await keepAs(page, 'Second');
  await title(page).press('End');
  await title(page).pressSequentially('!');
  await page.reload();
  await awake(page);
  await expect(title(page)).toHaveValue('Second!');
  await expect(line(page)).toContainText('Kept in this browser');
});

test('what is left over from a page that was left, damaged or of another page, opens nothing', async ({
  page,
}) => {
  await open(page);
  const leftOver = [
    '{"',
    '[]',
    '[3, 4]',
    '["https://elsewhere.invalid/", "/bench/#r=3"]',
    '["HERE", "https://elsewhere.invalid/"]',
  ];
  for (const text of leftOver) {
    await page.evaluate(
      (kept) => sessionStorage.setItem('address-not-written', kept.replace('HERE', location.href)),
      text,
    );
    await page.reload();
    await awake(page);
    expect(new URL(page.url()).hash, text).toBe('');
    expect(await page.evaluate(() => sessionStorage.getItem('address-not-written')), text).toBeNull();
  }
});
