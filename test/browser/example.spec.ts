import { awake } from './awake.ts';
import { addressTold, openAt } from './reader.ts';
import { expect, test } from './site.ts';

const example = '/examples/two-pads-into-a-receiver/';

test('the result is copied in four forms, each as it stands there', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await openAt(page, example);
  const texts: string[] = [];
  for (const name of ['Plain text', 'Plain text with signs', 'Markdown', 'BBCode']) {
    await page.getByLabel(name, { exact: true }).check();
    await page.getByRole('button', { name: 'Copy the text' }).click();
    await expect(page.getByText('Copied.')).toBeVisible();
    const text = await page.evaluate(() => navigator.clipboard.readText());
    await expect(page.getByLabel('The result as text')).toHaveValue(text);
    expect(text).toContain('26.8');
    expect(text).toMatch(/two-pads-into-a-receiver/);
    texts.push(text);
  }
  expect(new Set(texts).size).toBe(4);
  expect(texts[0]).toMatch(/^[\x20-\x7e\r\n]+$/);
});

test('“open with your own numbers” opens the bench with the example’s numbers', async ({ page }) => {
  await openAt(page, example);
  await page.getByRole('link', { name: 'Open with your own numbers' }).click();
  await page.waitForURL(/\/bench\/#/);
  await awake(page);
  await expect(page.getByLabel('Title')).toHaveValue('Two pads into a receiver');
  await expect(page.locator('.answers dt').first()).toHaveText(/^26\.8\sdBm ±2\.5\sdB$/);
  await expect(addressTold(page)).toHaveCount(0);
});

test('what the bench cannot hold opens beside it, with the example’s numbers', async ({ page }) => {
  await page.goto('/examples/pad-measured-at-dc/');
  await page.getByRole('link', { name: 'Open with your own numbers' }).click();
  await page.waitForURL(/\/bench\/borrow\/#/);
  await awake(page);
  await expect(page.locator('.answers dt').first()).toHaveText(/^10\.006\sdB ±0\.071\sdB$/);
  await expect(addressTold(page)).toHaveCount(0);
});

test('the three answers stand there once', async ({ page }) => {
  await page.goto(example);
  await expect(page.locator('.answers')).toHaveCount(1);
});

test('an address with numbers of the reader’s own opens the example’s figure with them', async ({ page }) => {
  await openAt(page, '/examples/oscilloscope-on-a-load/?ga=5&v=1');
  await expect(page.getByRole('textbox', { name: 'Gain of the oscilloscope: what it adds' })).toHaveValue(
    '5.0',
  );
  await expect(addressTold(page)).toHaveCount(0);
  await openAt(page, '/examples/swr-of-a-whip/');
  await expect(page.locator('figure')).toContainText('1.34');
});

test('whoever comes by changed numbers is told that the rest of the page has the example’s', async ({
  page,
}) => {
  for (const address of ['two-pads-into-a-receiver/?re=1.5&v=1', 'swr-of-a-whip/?d=30&v=1']) {
    await openAt(page, `/examples/${address}`);
    const note = page.locator('section:has(#figure) > .figure-follows');
    await expect(note).toContainText('all other numbers stay the example’s');
    await expect(note.getByRole('link')).toHaveAttribute('href', /\/bench\/#/);
  }
});

for (const address of [
  '/examples/oscilloscope-on-a-load/?ga=zz&v=1',
  '/embed/what-comes-back/?s=zz&v=1',
  '/bench/#f0=zz&v=9',
  '/bench/borrow/#f0=zz&v=9',
])
  test(`an address that cannot be read in full is told where it opens: ${address}`, async ({ page }) => {
    await openAt(page, address);
    await expect(addressTold(page)).toHaveCount(1);
    await expect(addressTold(page)).toBeVisible();
  });

test('a percentage that is typed stays a percentage, and goes into the address', async ({ page }) => {
  await openAt(page, '/examples/oscilloscope-on-a-load/');
  const field = page.getByRole('textbox', { name: 'Gain of the oscilloscope: what it adds' });
  await field.fill('12,5 %');
  await expect.poll(() => new URL(page.url()).search).toContain('ga=12.5');
  await field.blur();
  await expect(field).toHaveValue('12.5');
});

test('each step of the sum has an anchor that leads to it', async ({ page }) => {
  await page.goto('/examples/borrowed-calibration/#step-later');
  const step = page.locator('#step-later');
  await expect(step).toBeInViewport();
  await expect(step.getByRole('link')).toHaveAttribute('href', '#step-later');
});
