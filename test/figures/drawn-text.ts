import { readFileSync } from 'node:fs';

/** Widths and heights of letters as shares of their size, on the narrow side: what is found to touch by these, does touch. */
const LETTER = 0.5;
const RISE = 0.66;
const DROP = 0.02;

/** One text of a figure, as a box in units of the view box. */
export interface DrawnText {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const SHEETS = ['figures', 'plot-drawing', 'rulers', 'line-band', 'bench-figures'] as const;
let rules: readonly (readonly [string, number])[] | undefined;

/** Every selector of the figures' style sheets that sets letters in px, with their size; what is for print alone left out. */
export function letterRules(): readonly (readonly [selector: string, px: number])[] {
  rules ??= SHEETS.flatMap((name) => {
    const css = readFileSync(new URL(`../../src/styles/${name}.css`, import.meta.url), 'utf8')
      .replace(/\/\*[\s\S]*?\*\//g, '')
      .replace(/@media print \{[\s\S]*?\n\}/g, '');
    return [...css.matchAll(/([^{}]+)\{[^{}]*?font-size:\s*([\d.]+)px/g)].flatMap(([, selectors = '', px]) =>
      selectors.split(',').map((selector) => [selector.trim(), Number(px)] as const),
    );
  });
  return rules;
}

/** The size that a selector of the style sheets sets. */
export function letterSize(selector: string): number {
  const found = letterRules().find(([own]) => own === selector);
  if (found === undefined) throw new Error(`letterSize: wish a selector with a size, got ${selector}`);
  return found[1];
}

const attribute = (attributes: string, name: string): string =>
  new RegExp(`(?:^|\\s)${name}="([^"]*)"`).exec(attributes)?.[1] ?? '';
const decoded = (text: string): string => text.replace(/&(amp|lt|gt|quot|#39);/g, '.');

/** The texts of a figure's markup, set in letters of this size; `middle` where a text without an anchor of its own is centred. */
export function drawnTexts(
  markup: string,
  { size, middle = /^$/ }: { readonly size: number; readonly middle?: RegExp },
): DrawnText[] {
  return [...markup.matchAll(/<text ([^>]*)>([^<]*)<\/text>/g)].flatMap(([, attributes = '', raw = '']) => {
    const text = decoded(raw);
    if (text.trim() === '') return [];
    const own = attribute(attributes, 'class');
    const [x, y] = [Number(attribute(attributes, 'x')), Number(attribute(attributes, 'y'))];
    const width = [...text].length * LETTER * size;
    const anchor = /anchor-(start|middle|end)/.exec(own)?.[1] ?? (middle.test(own) ? 'middle' : 'start');
    const left = x - width * { start: 0, middle: 0.5, end: 1 }[anchor as 'start' | 'middle' | 'end'];
    return [{ text, left, right: left + width, top: y - RISE * size, bottom: y + DROP * size }];
  });
}

/** Pairs of texts that are drawn into each other. */
export const touching = (texts: readonly DrawnText[]): string[] =>
  texts.flatMap((one, index) =>
    texts
      .slice(index + 1)
      .filter(
        (other) =>
          one.left < other.right &&
          other.left < one.right &&
          one.top < other.bottom &&
          other.top < one.bottom,
      )
      .map((other) => `${one.text} | ${other.text}`),
  );

/** Texts that leave the view box of their figure by more than `room`, as an end of an axis may where the page has a margin. */
export function outsideOf(markup: string, texts: readonly DrawnText[], room: number): string[] {
  const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(markup) ?? [];
  return texts
    .filter(
      ({ left, right, top, bottom }) =>
        left < -room || right > Number(width) + room || top < -1 || bottom > Number(height) + 1,
    )
    .map(({ text }) => text);
}
