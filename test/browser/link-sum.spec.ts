import { drag, openAt, search } from './reader.ts';
import { expect, test } from './site.ts';

const SHAPE = '/learn/stacking/the-whole-shape/';
const nb = '\u00a0';

test('links added one by one: the shape follows, and the address', async ({ page }) => {
  await openAt(page, SHAPE);
  const answers = page.locator('#figure .answers dt');
  await expect(answers.nth(2)).toHaveText(`k = 2 holds 100${nb}%`);
  const count = page.getByRole('textbox', { name: 'Links in the sum' });
  await count.fill('4');
  await expect(answers.nth(0)).toHaveText(`±1.14${nb}dB`);
  await page.getByRole('textbox', { name: 'First link' }).fill('two');
  await expect(page.getByText(/a limit is expected/).first()).toBeVisible();
  await page.getByRole('textbox', { name: 'First link' }).fill('2');
  await page.getByText('Shapes of the links, and what is asked for').first().click();
  await page.getByLabel('Shape of the first link').selectOption({ index: 3 });
  await expect(answers.nth(4)).toHaveText('No worst case');
  await expect.poll(() => search(page)).toBe('?n=4&a=2&as=n&v=1');
});

test('the knob on the axis makes the first link wider', async ({ page }) => {
  await openAt(page, `${SHAPE}?n=2&v=1`);
  await drag(page.locator('.plot-wide [data-handle="part"]'), { x: 80 });
  const field = page.getByRole('textbox', { name: 'First link' });
  await expect.poll(async () => Number(await field.inputValue())).toBeGreaterThan(0.6);
  const size = Number(await field.inputValue());
  await expect.poll(() => search(page)).toBe(`?n=2&a=${size}&v=1`);
});
