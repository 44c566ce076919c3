import type { StyleRule } from './style-rules.ts';

/** What classes of a drawing say, put into attributes: the drawing then stands alone, without any style sheet. */
export function resolveStyles(drawing: Element, rules: readonly StyleRule[]): void {
  for (const { selector, attributes } of rules) {
    const found = [...drawing.querySelectorAll(selector)];
    for (const element of drawing.matches(selector) ? [drawing, ...found] : found)
      for (const [name, value] of attributes) element.setAttribute(name, value);
  }
}

/** What belongs to a page and not to a picture: classes, handles, marks for scripts, names that only another element uses. */
export function stripPage(drawing: Element): void {
  for (const element of [drawing, ...drawing.querySelectorAll('*')])
    for (const { name } of [...element.attributes])
      if (/^(?:class|id|role|tabindex|data-.*|aria-.*)$/.test(name)) element.removeAttribute(name);
  for (const words of drawing.querySelectorAll('title, desc')) words.remove();
}
