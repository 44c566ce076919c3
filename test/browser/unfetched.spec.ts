import { openAt } from './reader.ts';
import { expect, test } from './site.ts';

const unfetched = 'Something that this page needs did not come';

// The browser says itself that a script did not come: an answer that is cut off is the one that it says nothing of.
for (const [what, path, script] of [
  ['a curve', '/learn/traceability/blocks-and-warm-hands/', '**/evaluated-blocks.*.js'],
  ['what writes the address', '/learn/decibels/ratios-that-add/', '**/_astro/address.*.js'],
] as const)
  test(`where ${what} does not come the page says so, and the next change asks again`, async ({ page }) => {
    await page.route(script, (route) => route.abort('aborted'));
    await openAt(page, path);
    const says = page.locator('#offline-says');
    await expect(says).toBeEmpty();
    const slider = page.getByRole('slider').first();
    await slider.press('ArrowRight');
    await expect(says).toContainText(unfetched);
    await expect(says).toBeInViewport({ ratio: 1 });
    await says.getByRole('button').click();
    await expect(says).toBeEmpty();
    await page.unroute(script);
    await slider.press('ArrowRight');
    await expect.poll(() => page.evaluate(() => location.search)).toContain('v=');
    await expect(page.getByText('Not worked out yet')).toHaveCount(0);
  });

for (const [path, script] of [
  ['/bench/', '**/_astro/fragment.*.js'],
  ['/bench/borrow/', '**/_astro/address.*.js'],
] as const)
  test(`where what writes the address of ${path} does not come the page says so, and keeps what was typed`, async ({
    page,
  }) => {
    await page.route(script, (route) => route.abort('aborted'));
    await openAt(page, path);
    await page.setViewportSize({ width: 320, height: 640 });
    const field = page.locator('main input[type="text"]').first();
    await field.fill('A letter more');
    await expect(page.locator('#offline-says')).toContainText(unfetched);
    await expect(field).toHaveValue('A letter more');
    const below = (await page.locator('#offline-says').boundingBox())?.y ?? 0;
    const box = await field.boundingBox();
    expect((box?.y ?? 0) + (box?.height ?? 0), 'the note covers no field that is typed into').toBeLessThan(
      below,
    );
    await page.unroute(script);
    await field.fill('A letter more still');
    await expect.poll(() => page.evaluate(() => location.hash)).not.toBe('');
  });
