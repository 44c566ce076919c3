import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';

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
/** Rules on colours: all that another colour scheme can change. */
export const onColours = ['color-contrast', 'link-in-text-block'];

/** What formulas are drawn with: hidden from a screen reader, and in the colour of the words around (`coloured`). */
export const typeset = '.katex-html';

/** What axe objects to, by all its rules or by some, on the whole page or in a part of it. */
export async function violations(page: Page, only?: readonly string[], part?: string): Promise<string[]> {
  // axe runs in the page and brings back what it objects to; what passes it would take longer to carry than to find
  const axe = new AxeBuilder({ page }).setLegacyMode(true).exclude(typeset);
  if (part !== undefined) axe.include(part);
  const which = only ? { runOnly: [...only] } : { rules };
  const found = await axe.options({ ...which, resultTypes: ['violations'] }).analyze();
  return found.violations.map(
    ({ id, help, nodes }) => `${id}: ${help}: ${nodes.map(({ html }) => html).join(' | ')}`,
  );
}
