import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import type { AxeResults, RunOptions } from 'axe-core';

/** What is looked at and what is left out, by their selectors; the whole page where no part is named. */
interface Parts {
  readonly include?: string[];
  readonly exclude: string[];
}

declare global {
  interface Window {
    /** The checker, once it has been brought into the page. */
    axe: { run(parts: Parts, options: RunOptions): Promise<AxeResults> };
  }
}

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

const script = readFileSync(fileURLToPath(import.meta.resolve('axe-core/axe.min.js')), 'utf8');

/** Brings axe into the page and the frames in it, where it is not there yet: its script is long, and a page is looked at several times. */
async function bringAxe(page: Page): Promise<void> {
  for (const frame of page.frames())
    if (!(await frame.evaluate(() => 'run' in (window.axe ?? {})))) await frame.evaluate(script);
}

/** What axe objects to, by all its rules or by some, on the whole page or in parts of it. */
export async function violations(
  page: Page,
  only?: readonly string[],
  parts: readonly string[] = [],
): Promise<string[]> {
  await bringAxe(page);
  const within: Parts = { exclude: [typeset], ...(parts.length > 0 && { include: [...parts] }) };
  const which: RunOptions = only ? { runOnly: [...only] } : { rules };
  return page.evaluate(
    async ([named, options]) => {
      // what passes is not gathered: that would take longer than to find what does not
      const found = await window.axe.run(named, { ...options, resultTypes: ['violations'] });
      return found.violations.map(
        ({ id, help, nodes }) => `${id}: ${help}: ${nodes.map(({ html }) => html).join(' | ')}`,
      );
    },
    [within, which] as const,
  );
}
