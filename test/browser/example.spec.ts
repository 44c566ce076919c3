import { awake } from './awake.ts';
import { expect, test } from './site.ts';

const example = '/examples/two-pads-into-a-receiver/';

test('the result is copied in four forms, each as it stands there', async ({ page, context }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await page.goto(example);
  await awake(page);
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
  await page.goto(example);
  await awake(page);
  await page.getByRole('link', { name: 'Open with your own numbers' }).click();
  await page.waitForURL(/\/bench\/#/);
  await awake(page);
  await expect(page.getByLabel('Title')).toHaveValue('Two pads into a receiver');
  await expect(page.locator('.answers dt').first()).toHaveText(/^26\.8\sdBm ±2\.5\sdB$/);
  await expect(page.locator('.address-told')).toHaveCount(0);
});

test('the three answers stand there once', async ({ page }) => {
  await page.goto(example);
  await expect(page.locator('.answers')).toHaveCount(1);
});
