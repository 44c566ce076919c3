import type { Page } from '@playwright/test';

/**
 * Texts that are cut off by a box that does not scroll, and texts that lie over each other. Left out are formulas, whose parts are set
 * over each other on purpose, what sticks to an edge over the rest, and figures: what stands in them stands in words beside them too.
 */
export const runTogether = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    interface Piece {
      readonly node: Element;
      readonly text: string;
      readonly box: DOMRect;
    }
    const isAside = (node: Element | null): boolean =>
      node !== null &&
      (/sticky|fixed/.test(getComputedStyle(node).position) ||
        getComputedStyle(node).clipPath !== 'none' ||
        isAside(node.parentElement));
    const pieces: Piece[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let text = walker.nextNode(); text; text = walker.nextNode()) {
      const node = text.parentElement;
      if (!node || !text.textContent?.trim() || node.closest('.katex, svg, script, style, option, textarea'))
        continue;
      if (!node.checkVisibility({ visibilityProperty: true, opacityProperty: true }) || isAside(node))
        continue;
      const range = document.createRange();
      range.selectNodeContents(text);
      for (const box of range.getClientRects())
        if (box.width > 1) pieces.push({ node, text: text.textContent.trim().slice(0, 40), box });
    }
    const told = new Set<string>();
    const hides = (value: string): boolean => value === 'hidden' || value === 'clip';
    for (const { node, text, box } of pieces) {
      for (
        let around: Element | null = node;
        around && around !== document.body;
        around = around.parentElement
      ) {
        const { overflowX, overflowY } = getComputedStyle(around);
        if (!hides(overflowX) && !hides(overflowY)) continue;
        const frame = around.getBoundingClientRect();
        const across = hides(overflowX) && (box.left < frame.left - 2 || box.right > frame.right + 2);
        const down =
          hides(overflowY) &&
          (box.top + box.height / 4 < frame.top || box.bottom - box.height / 4 > frame.bottom);
        if (across || down) told.add(`cut off: ${text}`);
      }
    }
    const sorted = pieces.toSorted((a, b) => a.box.top - b.box.top);
    sorted.forEach((a, index) => {
      for (let next = index + 1; next < sorted.length; next += 1) {
        const b = sorted[next];
        if (!b || b.box.top > a.box.bottom) break;
        if (a.node === b.node) continue;
        const across = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
        const down = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
        const isOver = across > 2 && down > 0.4 * Math.min(a.box.height, b.box.height);
        if (isOver) told.add(`over each other: ${a.text} / ${b.text}`);
      }
    });
    return [...told];
  });
