import type { Page } from '@playwright/test';

/**
 * Texts of one figure that lie over each other, two by two. The box of a letter is higher than the letter: what is told is a third of the
 * lower line covered, by more than two pixels across.
 */
export const textsOver = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    interface Drawn {
      readonly figure: Element | null;
      readonly text: string;
      readonly box: DOMRect;
    }
    /** The whole figure that a text stands in, which may be drawn inside another. */
    const outermost = (node: Element | null | undefined): Element | null => {
      const figure = node?.closest('svg') ?? null;
      return figure && (outermost(figure.parentElement) ?? figure);
    };
    const drawn: Drawn[] = [];
    for (const node of document.querySelectorAll<SVGTextElement>('svg text')) {
      if (!node.checkVisibility({ visibilityProperty: true, opacityProperty: true })) continue;
      const walker = document.createTreeWalker(node, NodeFilter.SHOW_TEXT);
      for (let text = walker.nextNode(); text; text = walker.nextNode()) {
        const range = document.createRange();
        range.selectNodeContents(text);
        const told = text.textContent?.trim() ?? '';
        for (const box of range.getClientRects())
          if (told && box.width > 1) drawn.push({ figure: outermost(node), text: told, box });
      }
    }
    const over = ({ box: a }: Drawn, { box: b }: Drawn): boolean => {
      const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
      const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
      return across > 2 && down > 0.33 * Math.min(a.height, b.height);
    };
    return drawn.flatMap((one, index) =>
      drawn
        .slice(index + 1)
        .filter((other) => other.figure === one.figure && over(one, other))
        .map((other) => `${one.text} / ${other.text}`),
    );
  });
