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
