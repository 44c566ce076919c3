import type { Page } from '@playwright/test';

/**
 * Controls that something else lies over when they have the focus, and controls that are out of sight then: forwards through the page and
 * backwards, since what sticks to an edge covers on one of the two ways only. (That Tab reaches each of them is `visit/keyboard.ts`.)
 */
export const covered = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const focusable =
      'a[href], button, input, select, textarea, summary, [tabindex]:not([tabindex^="-"]), [contenteditable="true"]';
    const reachable = (node: HTMLElement): boolean =>
      node.tabIndex >= 0 &&
      !node.matches(':disabled, [inert] *') &&
      node.checkVisibility({ visibilityProperty: true });
    const shares = [0.02, 0.25, 0.5, 0.75, 0.98];
    const told = new Set<string>();
    const belongs = (node: HTMLElement, hit: Element | null): boolean =>
      hit !== null &&
      (node.contains(hit) ||
        hit.contains(node) ||
        (node instanceof HTMLInputElement && [...(node.labels ?? [])].some((label) => label.contains(hit))));
    const seesSome = (node: HTMLElement): boolean =>
      [...node.getClientRects()].some((box) => {
        // only what is on the screen of a region that is taller than the screen
        const [left, right] = [Math.max(box.left, 0), Math.min(box.right, innerWidth)];
        const [top, bottom] = [Math.max(box.top, 0), Math.min(box.bottom, innerHeight)];
        return (
          left < right &&
          top < bottom &&
          shares.some((across) =>
            shares.some((down) =>
              belongs(
                node,
                document.elementFromPoint(left + across * (right - left), top + down * (bottom - top)),
              ),
            ),
          )
        );
      });
    const look = (node: HTMLElement, way: string): void => {
      node.focus();
      if (document.activeElement === node && !seesSome(node))
        told.add(
          `${way}: ${node.tagName.toLowerCase()} ${node.getAttribute('aria-label') ?? node.textContent?.trim().slice(0, 40)}`,
        );
    };
    const all = [...document.querySelectorAll<HTMLElement>(focusable)].filter(reachable);
    for (const node of all) look(node, 'forwards');
    for (const node of all.toReversed()) look(node, 'backwards');
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    scrollTo(0, 0);
    return [...told];
  });
