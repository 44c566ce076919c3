import { expect, type Page } from '@playwright/test';
import type { Visit } from './visit.ts';

declare global {
  interface Window {
    /** The controls that Tab has to reach, and how each is told of; the radio buttons of one group are one control. */
    controls: { keyOf(node: Element): string; wished: string[] };
  }
}

/** Lists the controls in the page itself, so that what has the focus can be compared with them. */
const listControls = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const focusable =
      'a[href], button, input, select, textarea, summary, [tabindex], [contenteditable="true"]';
    const numbers = new Map<Element, number>();
    const keyOf = (node: Element): string => {
      if (node instanceof HTMLInputElement && node.type === 'radio') return `radio group ${node.name}`;
      if (!numbers.has(node)) numbers.set(node, numbers.size);
      return `${node.tagName.toLowerCase()} ${node.getAttribute('aria-label') ?? node.textContent?.trim().slice(0, 40)} #${numbers.get(node)}`;
    };
    const reachable = (node: Element): boolean =>
      (node as HTMLElement).tabIndex >= 0 && !node.matches(':disabled, [inert] *') && node.checkVisibility();
    const wished = [...new Set([...document.querySelectorAll(focusable)].filter(reachable).map(keyOf))];
    window.controls = { keyOf, wished };
    return wished;
  });

interface Focused {
  /** What has the focus, in the words of the list. */
  readonly key: string;
  /** Whether it draws an outline of its own of at least a pixel. */
  readonly isOutlined: boolean;
}

/** What has the focus; nothing when the focus has left the page's controls. Asked once for each press: a question from outside costs most. */
const focused = (page: Page): Promise<Focused | undefined> =>
  page.evaluate(() => {
    const node = document.activeElement;
    if (!node || node === document.body) return undefined;
    const { outlineStyle, outlineWidth } = getComputedStyle(node);
    const { width, height } = node.getBoundingClientRect();
    const visible = node.checkVisibility({ opacityProperty: true, visibilityProperty: true });
    const isDrawn = outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 1;
    return { key: window.controls.keyOf(node), isOutlined: visible && isDrawn && width > 1 && height > 1 };
  });

/** Whether the screen around the focused control looks different without the focus; the focus is back afterwards. */
async function looksDifferent(page: Page): Promise<boolean> {
  const node = await page.evaluateHandle(() => document.activeElement as HTMLElement);
  const withFocus = await page.screenshot();
  await node.evaluate((element) => element.blur());
  const without = await page.screenshot();
  await node.evaluate((element) => element.focus());
  return !withFocus.equals(without);
}

interface Walk {
  readonly reached: string[];
  readonly unseen: string[];
  readonly left: boolean;
}

/** Presses Tab until the focus has left the last control, or more often than there are controls. */
async function tabThrough(page: Page, most: number): Promise<Walk> {
  const reached: string[] = [];
  const unseen: string[] = [];
  for (let presses = 0; presses < most; presses += 1) {
    await page.keyboard.press('Tab');
    const here = await focused(page);
    if (here === undefined || here.key === reached[0]) return { reached, unseen, left: true };
    reached.push(here.key);
    if (!here.isOutlined && !(await looksDifferent(page))) unseen.push(here.key);
  }
  return { reached, unseen, left: false };
}

/** That Tab reaches each control of the page, shows where it is, and gets away from it again. */
export async function reachedByTab({ page }: Visit): Promise<void> {
  const wished = await listControls(page);
  // fields with parts (a date, a scrolled region) take a few presses more than one
  const { reached, unseen, left } = await tabThrough(page, 2 * wished.length + 10);
  expect
    .soft(
      wished.filter((control) => !reached.includes(control)),
      'not reached by Tab',
    )
    .toEqual([]);
  expect.soft(unseen, 'without a visible focus').toEqual([]);
  expect.soft(left, 'the focus leaves the last control').toBe(true);
}
