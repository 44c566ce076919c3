import AxeBuilder from '@axe-core/playwright';
import { awake } from './awake.ts';
import { expect, pages, test } from './site.ts';

/** Rules that axe leaves off by default, being young or stricter than WCAG 2.2 AA. */
const stricter = [
  'target-size',
  'identical-links-same-purpose',
  'css-orientation-lock',
  'focus-order-semantics',
  'label-content-name-mismatch',
  'table-fake-caption',
  'td-has-header',
];
const rules = Object.fromEntries(stricter.map((rule) => [rule, { enabled: true }]));

for (const { path } of pages) {
  for (const colorScheme of ['light', 'dark'] as const) {
    test(`${path} in ${colorScheme} passes every rule of axe`, async ({ page }) => {
      await page.emulateMedia({ colorScheme });
      await page.goto(path);
      await awake(page);
      const { violations } = await new AxeBuilder({ page }).options({ rules }).analyze();
      const told = violations.map(
        ({ id, help, nodes }) => `${id}: ${help}: ${nodes.map(({ html }) => html).join(' | ')}`,
      );
      expect(told).toEqual([]);
    });
  }
}
