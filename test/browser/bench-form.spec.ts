import type { Locator, Page } from '@playwright/test';
import { awake } from './awake.ts';
import { expect, test } from './site.ts';

const open = async (page: Page): Promise<void> => {
  await page.goto('/bench/');
  await awake(page);
};

/** The result in one line at the foot of the form. */
const running = (page: Page): Locator => page.locator('.running p').first();
const linkNamed = (page: Page, name: string | RegExp): Locator => page.getByRole('group', { name });
const order = (page: Page): Promise<string[]> => page.locator('.link .link-name').allTextContents();
const readings = (page: Page): Locator => page.getByLabel('Readings, in dBm');
const undo = (page: Page): Locator => page.getByRole('button', { name: 'Undo', exact: true });
const redo = (page: Page): Locator => page.getByRole('button', { name: 'Redo', exact: true });
const CLUB = [
  'National standard',
  'Calibration laboratory',
  'The meter that was lent',
  'Mismatch',
  '20 dB pad',
  '3 m of thin coax',
];

/** Presses Tab until the control of that name has the focus. */
async function tabTo(page: Page, control: Locator): Promise<void> {
  const reached = (): Promise<boolean> => control.evaluate((node) => node === document.activeElement);
  for (let press = 0; press < 120; press += 1) {
    await page.keyboard.press('Tab');
    if (await reached()) return;
  }
  throw new Error('tabTo: wish a control that Tab comes to');
}

test('an empty sheet comes to a first result by the keyboard alone', async ({ page }) => {
  await open(page);
  await tabTo(page, page.getByRole('button', { name: 'Start an empty sheet' }));
  await page.keyboard.press('Enter');
  await expect(page.getByLabel('Title')).toBeFocused();
  await page.keyboard.type('My own');
  await tabTo(page, page.getByLabel('Nominal level'));
  await page.keyboard.type('500 mW');
  await tabTo(page, page.getByLabel('Plus or minus, in dB'));
  await page.keyboard.type('1,5');
  await tabTo(page, readings(page));
  // no figure at all rather than the demonstration's
  await expect(running(page)).toContainText('No figure yet');
  await expect(page.locator('.bench-result figure, .verdict, #copy')).toHaveCount(0);
  await page.keyboard.type('7');
  // 7 dBm behind a pad of 20 dB and a cable of 0.1 dB, as the method brings them
  await expect(running(page)).toContainText(/27\.1\d*\sdBm/);
  await expect(running(page)).not.toContainText('No figure yet');
  await expect(page.getByText('5 links still stand as the method brought them')).toBeVisible();
  await expect(page.getByText('assumed: check your data sheet').first()).toBeVisible();
});

test('each method is chosen by the arrow keys and asks for its own readings', async ({ page }) => {
  await open(page);
  const labels = {
    'Oscilloscope across a load': ['Readings, in V from peak to peak'],
    'Peak detector and voltmeter': ['Readings, in V DC'],
    'Meter in the line': ['Forward power, in W', 'Reflected power, in W'],
    'The same heat from DC': [
      'Rise with RF, in K',
      'Rise with DC, in K',
      'DC voltage, in V',
      'DC current, in A',
    ],
  };
  await page.getByRole('radio', { name: 'Pads into a power meter or receiver' }).focus();
  for (const [method, columns] of Object.entries(labels)) {
    await page.keyboard.press('ArrowDown');
    await expect(page.getByRole('radio', { name: method })).toBeChecked();
    for (const column of columns) await expect(page.getByLabel(column)).toBeVisible();
  }
});

test('another method and back keeps what was typed', async ({ page }) => {
  await open(page);
  await readings(page).fill('7,3 dBm');
  await linkNamed(page, '5. 20 dB pad').getByLabel('Limits ±').fill('0,123');
  await page.getByRole('radio', { name: 'Oscilloscope across a load' }).check();
  await expect(page.getByLabel('Readings, in V from peak to peak')).toHaveValue('7,3 dBm');
  await expect(page.getByLabel('Readings, in V from peak to peak')).toHaveAttribute('aria-invalid', 'true');
  await page.getByLabel('Bandwidth of the oscilloscope').fill('100 MHz');
  await page.getByRole('radio', { name: 'Pads into a power meter or receiver' }).check();
  await expect(readings(page)).toHaveValue('7,3 dBm');
  await expect(page.getByRole('group', { name: '20 dB pad' }).getByLabel('Limits ±')).toHaveValue('0,123');
  await page.getByRole('radio', { name: 'Oscilloscope across a load' }).check();
  await expect(page.getByLabel('Bandwidth of the oscilloscope')).toHaveValue('100 MHz');
});

test('a pasted column is counted, and the reading that stands off is pointed at', async ({
  page,
  context,
}) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await open(page);
  const paste = async (text: string): Promise<void> => {
    await page.evaluate((words) => navigator.clipboard.writeText(words), text);
    await readings(page).focus();
    await page.keyboard.press('ControlOrMeta+A');
    await page.keyboard.press('ControlOrMeta+V');
  };
  await paste('Level / dBm\n7,0\n7,1\n7,2\n');
  await expect(page.getByText(/^3 readings, mean 7\.10\sdBm, scatter s = 0\.10\sdB$/)).toBeVisible();
  await expect(page.locator('.outlier')).toHaveCount(0);
  await paste('7,0\n7,1\n7,0\n7,1\n7,0\n7,1\n8,6\n');
  await expect(page.locator('.outlier')).toContainText('8.6');
  // also while something else cannot be used
  await page.getByLabel('Nominal level').fill('');
  await expect(page.locator('.outlier')).toContainText('8.6');
  await paste('7,0\nabc\n7,2');
  await expect(readings(page)).toHaveAccessibleDescription(/Line 2/);
});

test('the specification is typed in each form, and echoed in the other unit', async ({ page }) => {
  await open(page);
  const form = page.getByLabel('How it is stated');
  await page.getByLabel('Nominal level').fill('500 mW');
  await expect(page.getByText(/^= 26\.99\sdBm$/)).toBeVisible();
  await form.selectOption('uneven');
  await page.getByLabel('Up to so much above, in dB').fill('1');
  await page.getByLabel('Down to so much below, in dB').fill('2');
  await expect(page.getByText(/^24\.99\sdBm to 27\.99\sdBm/)).toBeVisible();
  await form.selectOption('licence');
  await page.getByLabel('Upper limit').fill('1 W');
  await expect(page.getByText(/^= 30\.00\sdBm$/)).toBeVisible();
  await form.selectOption('between');
  await page.getByLabel('Lower limit').fill('31 dBm');
  await expect(page.getByLabel('Upper limit')).toHaveAttribute('aria-invalid', 'true');
  await form.selectOption('uneven');
  await expect(page.getByLabel('Down to so much below, in dB')).toHaveValue('2');
});

test('a change after the first reading is kept with its reason', async ({ page }) => {
  await open(page);
  await expect(page.locator('.lock')).toContainText('agree on them before you look');
  await readings(page).fill('7,2 dBm');
  await expect(page.locator('.lock')).toContainText('locked since the first reading');
  await page.getByLabel('Plus or minus, in dB').fill('2');
  await expect(page.locator('.logged')).toContainText('became');
  await page.getByLabel('Reason for this change').fill('The data sheet says 2 dB.');
  await page.getByText('Rule that decides').click();
  await page.getByLabel('Rule', { exact: true }).selectOption('simple');
  await expect(page.getByLabel('Reason for this change')).toHaveCount(2);
  await expect(page.getByLabel('Reason for this change').first()).toHaveValue('The data sheet says 2 dB.');
});

test('no letter is lost, however fast it is typed on a slow machine', async ({ page }) => {
  await open(page);
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: 6 });
  const texts = [
    { field: page.getByRole('textbox', { name: 'Title' }), text: 'a transmitter with quite a long name' },
    { field: readings(page), text: '7,01 7,02 7,03 7,04 7,05 dBm' },
    { field: linkNamed(page, /^5\. /).getByLabel('Name'), text: 'the pad of the other drawer' },
    { field: linkNamed(page, /^5\. /).getByLabel('Limits ±'), text: '0,123456' },
  ];
  for (const { field, text } of texts) {
    await field.fill('');
    await field.focus();
    await page.keyboard.type(text);
  }
  for (const { field, text } of texts) await expect(field).toHaveValue(text);
  await expect(page.getByRole('heading', { level: 2 }).first()).toHaveText(texts[0]?.text ?? '');
});

test('points come and go, with the focus at hand', async ({ page }) => {
  await open(page);
  await page.getByRole('button', { name: 'Add a point' }).press('Enter');
  await expect(page.getByLabel('Name of this point')).toBeFocused();
  await page.keyboard.type('Low supply');
  await readings(page).fill('6,1');
  const pressed = page.getByRole('group', { name: 'Points' }).getByRole('button', { pressed: true });
  await expect(pressed).toHaveText('Low supply');
  await page.getByRole('group', { name: 'Points' }).getByRole('button').first().press('Enter');
  await expect(readings(page)).not.toHaveValue('6,1');
  await page.getByRole('button', { name: 'Low supply', exact: true }).press('Enter');
  await expect(readings(page)).toHaveValue('6,1');
  await page.getByRole('button', { name: 'Remove “Low supply”' }).press('Enter');
  await expect(page.getByRole('group', { name: 'Points' })).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Add a point' })).toBeFocused();
});

test('links are moved, doubled and removed by the keyboard, with the focus at hand', async ({ page }) => {
  await open(page);
  await page.getByRole('button', { name: 'Move up: 20 dB pad' }).press('Enter');
  await expect
    .poll(() => order(page))
    .toEqual([...CLUB.slice(0, 3), '20 dB pad', 'Mismatch', '3 m of thin coax']);
  await expect(page.getByRole('button', { name: 'Move up: 20 dB pad' })).toBeFocused();
  await expect(page.getByRole('status').filter({ hasText: '20 decibel pad: now 4 of 6.' })).toHaveCount(1);
  // taking it back and doing it again say the place as well
  await undo(page).press('Enter');
  await expect(page.getByRole('status').filter({ hasText: '20 decibel pad: now 5 of 6.' })).toHaveCount(1);
  await redo(page).press('Enter');
  await expect(page.getByRole('status').filter({ hasText: '20 decibel pad: now 4 of 6.' })).toHaveCount(1);
  await page.getByRole('button', { name: 'Duplicate: 20 dB pad' }).press('Enter');
  const twin = linkNamed(page, '5. 20 dB pad, again');
  await expect(twin.getByLabel('Name')).toBeFocused();
  await expect(twin.getByLabel('Loss in dB')).toHaveValue('20');
  await expect(running(page)).toContainText(/47\.1\d*\sdBm/);
  await page.getByRole('button', { name: 'Remove: 20 dB pad, again' }).press('Enter');
  await expect(page.getByRole('button', { name: 'Remove: Mismatch' })).toBeFocused();
  await page.getByRole('button', { name: 'Remove: 3 m of thin coax' }).press('Enter');
  await expect(page.getByRole('button', { name: 'Remove: Mismatch' })).toBeFocused();
  await page.getByRole('button', { name: 'Add a link' }).press('Enter');
  await expect(linkNamed(page, '6. Another pad').getByLabel('Name')).toBeFocused();
});

test('a link that is left out counts no more, and says so', async ({ page }) => {
  await open(page);
  const pad = linkNamed(page, '5. 20 dB pad');
  await pad.getByLabel('Leave it out, to see what if').check();
  await expect(running(page)).toContainText(/(?<!\d)7\.1\d*\sdBm/);
  await expect(pad).toContainText('left out');
  await pad.getByLabel('Leave it out, to see what if').uncheck();
  await expect(running(page)).toContainText(/27\.1\d*\sdBm/);
});

test('a sum of terms, two standing-wave ratios and a shared cause are stated', async ({ page }) => {
  await open(page);
  const meter = linkNamed(page, '3. The meter that was lent');
  await meter.getByLabel('Stated as').selectOption('terms');
  await meter.getByLabel('% of reading', { exact: true }).fill('20');
  await meter.getByLabel('% of full scale').fill('5');
  await meter.getByLabel('Full scale', { exact: true }).fill('10 mW');
  // 20 % of 5.01 mW and 0.5 mW: 1.5 mW, which is 30 % of the power
  await expect(running(page)).toContainText(/±1\.\d\sdB/);
  const mismatch = linkNamed(page, '4. Mismatch');
  await mismatch.getByLabel('Stated as').selectOption('swr');
  await mismatch.getByLabel('SWR of the source').fill('0.9');
  await expect(mismatch.getByLabel('SWR of the source')).toHaveAttribute('aria-invalid', 'true');
  await mismatch.getByLabel('SWR of the source').fill('3');
  await mismatch.getByLabel('SWR of the load').fill('1,2');
  await expect(running(page)).not.toContainText('last usable entries');
  await meter.getByText('Kind, source, rating and more').click();
  await meter.getByLabel('Cause shared with other links').fill('one meter');
  await expect(meter.getByLabel('It moves this link')).toBeVisible();
  await expect(page.locator('#bench-causes option[value="one meter"]')).toHaveCount(1);
});

test('an assumption stays marked until it is touched or taken for good', async ({ page }) => {
  await open(page);
  await page.getByRole('button', { name: 'Start an empty sheet' }).click();
  const mark = 'assumed: check your data sheet';
  const before = await page.locator('.link', { hasText: mark }).count();
  const pad = linkNamed(page, '5. 20 dB pad');
  await expect(pad).toContainText(mark);
  await pad.getByLabel('Limits ±').fill('0.3');
  await expect(pad).not.toContainText(mark);
  await page.getByRole('button', { name: 'Mine says the same: Power meter' }).click();
  await expect(page.locator('.link', { hasText: mark })).toHaveCount(before - 2);
});

test('undo and redo go through everything, by buttons and by keys outside of text fields', async ({
  page,
}) => {
  await open(page);
  await expect(undo(page)).toBeDisabled();
  await page.getByRole('button', { name: 'Remove: Mismatch' }).click();
  await readings(page).fill('8');
  await expect(running(page)).toContainText(/28\.1\d*\sdBm/);
  await undo(page).press('Enter');
  await expect(running(page)).toContainText(/27\.1\d*\sdBm/);
  await expect(readings(page)).toHaveValue('7 dBm');
  await undo(page).press('Enter');
  await expect.poll(() => order(page)).toEqual(CLUB);
  // nothing is left to take back: the focus goes to the button that does it again
  await expect(redo(page)).toBeFocused();
  await page.keyboard.press('Control+Shift+Z');
  await expect(page.locator('.link')).toHaveCount(5);
  await page.keyboard.press('Control+Y');
  await expect(readings(page)).toHaveValue('8');
  await page.keyboard.press('Control+Z');
  await expect(readings(page)).toHaveValue('7 dBm');
});

test('letters that were taken back before they were drawn are gone from their field', async ({ page }) => {
  await open(page);
  await page.getByRole('button', { name: 'Remove: Mismatch' }).click();
  const fields = [readings(page), linkNamed(page, '20 dB pad').getByLabel('Limits ±')];
  for (const field of fields) {
    const before = await field.inputValue();
    // both within one turn of the page, as when a slow machine draws late
    await field.evaluate((element: HTMLInputElement) => {
      element.value = '8';
      element.dispatchEvent(new InputEvent('input', { bubbles: true }));
      document.body.dispatchEvent(new KeyboardEvent('keydown', { key: 'z', ctrlKey: true, bubbles: true }));
    });
    await expect(field).toHaveValue(before);
    await redo(page).click();
    await expect(field).toHaveValue('8');
    await undo(page).click();
    await expect(field).toHaveValue(before);
  }
});

test('inside a text field the browser’s own undo stays', async ({ page }) => {
  await open(page);
  await page.getByRole('button', { name: 'Remove: Mismatch' }).click();
  await page.getByLabel('Title').focus();
  await page.keyboard.press('End');
  await page.keyboard.type('!');
  await page.keyboard.press('Control+Z');
  await expect(page.getByLabel('Title')).toHaveValue('The club’s hidden transmitter');
  await expect(page.locator('.link')).toHaveCount(5);
});

test('what cannot be used is told beside its field, also where that is folded or of another point', async ({
  page,
}) => {
  await open(page);
  await page.getByLabel('Nominal level').fill('27 dB');
  await expect(page.getByLabel('Nominal level')).toHaveAccessibleDescription(/dB is a ratio/);
  await page.getByRole('button', { name: 'Add a point' }).click();
  await page.getByLabel('Nominal level').fill('28');
  const pad = linkNamed(page, '5. 20 dB pad');
  await pad.getByText('Kind, source, rating and more').click();
  await pad.getByLabel('Rated power').fill('minus one');
  await pad.getByText('Kind, source, rating and more').click();
  await page
    .locator('.bench-problems')
    .getByRole('button', { name: /20 dB pad.*Rated power/ })
    .click();
  await expect(pad.getByLabel('Rated power')).toBeFocused();
  await pad.getByLabel('Rated power').fill('2 W');
  await expect(pad.getByLabel('Rated power')).toBeVisible();
  await page
    .locator('.bench-problems')
    .getByRole('button', { name: /Nominal level/ })
    .click();
  await expect(page.getByLabel('Nominal level')).toBeFocused();
  await expect(page.getByLabel('Nominal level')).toHaveValue('27 dB');
});
