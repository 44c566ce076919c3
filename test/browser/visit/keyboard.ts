import { expect, type Page } from '@playwright/test';
import type { Visit } from './visit.ts';

declare global {
  interface Window {
    /** The controls that Tab has to reach, and how each is told of; the radio buttons of one group are one control. */
    controls: {
      keyOf(node: Element): string;
      readonly wished: readonly string[];
      /** What each press of Tab has led to so far, and the controls that it was. */
      readonly steps: Step[];
      readonly nodes: Map<string, HTMLElement | SVGElement>;
    };
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
    window.controls = { keyOf, wished, steps: [], nodes: new Map() };
    return wished;
  });

/** Where a press of Tab has led to. */
interface Step {
  /** What has the focus, in the words of the list; nothing when the focus has left the page's controls. */
  readonly key: string | undefined;
  /** Whether it draws an outline of its own of at least a pixel. */
  readonly isOutlined: boolean;
}

/** Has the page note where each press of Tab leads, when the key is up again. */
const noteSteps = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const { controls } = window;
    const note = ({ key: pressed }: KeyboardEvent): void => {
      if (pressed !== 'Tab') return;
      const node = document.activeElement;
      if (!(node instanceof HTMLElement || node instanceof SVGElement) || node === document.body) {
        controls.steps.push({ key: undefined, isOutlined: false });
        return;
      }
      const { outlineStyle, outlineWidth } = getComputedStyle(node);
      const { width, height } = node.getBoundingClientRect();
      const visible = node.checkVisibility({ opacityProperty: true, visibilityProperty: true });
      const isDrawn = outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 1;
      const key = controls.keyOf(node);
      controls.nodes.set(key, node);
      controls.steps.push({ key, isOutlined: visible && isDrawn && width > 1 && height > 1 });
    };
    addEventListener('keyup', note, { capture: true });
  });

/** Whether the screen around a control looks different without the focus. */
async function looksDifferent(page: Page, key: string): Promise<boolean> {
  const node = await page.evaluateHandle((named) => window.controls.nodes.get(named), key);
  await node.evaluate((element) => element?.focus());
  const withFocus = await page.screenshot();
  await node.evaluate((element) => element?.blur());
  const without = await page.screenshot();
  return !withFocus.equals(without);
}

interface Walk {
  readonly reached: readonly string[];
  readonly unseen: readonly string[];
  readonly left: boolean;
}

/** Presses of Tab that are sent behind each other before the page is asked where they have led to: a question from outside costs most. */
const AT_ONCE = 20;

/** Presses Tab until the focus has left the last control, or more often than there are controls. */
async function tabThrough(page: Page, most: number): Promise<Walk> {
  const devtools = await page.context().newCDPSession(page);
  const tab = { key: 'Tab', code: 'Tab', windowsVirtualKeyCode: 9 };
  await noteSteps(page);
  let end = -1;
  let steps: readonly Step[] = [];
  for (let presses = 0; presses < most && end < 0; presses += AT_ONCE) {
    const sent = Array.from({ length: AT_ONCE }, () => [
      devtools.send('Input.dispatchKeyEvent', { type: 'rawKeyDown', ...tab }),
      devtools.send('Input.dispatchKeyEvent', { type: 'keyUp', ...tab }),
    ]);
    await Promise.all(sent.flat());
    steps = await page.evaluate(() => window.controls.steps);
    end = steps.findIndex(({ key }, at) => key === undefined || (at > 0 && key === steps[0]?.key));
  }
  await devtools.detach();
  const walked = end < 0 ? steps : steps.slice(0, end);
  const unseen: string[] = [];
  for (const { key, isOutlined } of walked)
    if (key !== undefined && !isOutlined && !(await looksDifferent(page, key))) unseen.push(key);
  return { reached: walked.flatMap(({ key }) => key ?? []), unseen, left: end >= 0 };
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
