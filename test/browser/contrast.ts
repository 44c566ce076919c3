import type { Page } from '@playwright/test';

/** What of the page is fainter than WCAG 2.2 allows and axe does not look at, in words. */
export interface Faint {
  /** Letters and lines of figures, against what they stand on. */
  readonly figures: readonly string[];
  /** Edges of fields and buttons. */
  readonly edges: readonly string[];
  /** The ground of the page, as red, green and blue. */
  readonly ground: readonly number[];
}

/** Least contrast of letters, and of lines that mean something (criteria 1.4.3 and 1.4.11). */
const least = { letters: 4.5, lines: 3 };

/** Looks for what is too faint in the main part of the page, as its colours are at present. */
export const faint = (page: Page): Promise<Faint> => page.evaluate(findFaint, least);

/** Runs in the page, where nothing of this file is at hand. */
function findFaint({ letters, lines }: { letters: number; lines: number }): Faint {
  type Colour = readonly [number, number, number, number];
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = 1;
  const paint = canvas.getContext('2d', { willReadFrequently: true });
  if (!paint) throw new Error('contrast: wish a canvas to read colours from');
  const known = new Map<string, Colour>();
  const colour = (text: string): Colour => {
    const before = known.get(text);
    if (before) return before;
    paint.clearRect(0, 0, 1, 1);
    paint.fillStyle = text;
    paint.fillRect(0, 0, 1, 1);
    const [r = 0, g = 0, b = 0, a = 0] = paint.getImageData(0, 0, 1, 1).data;
    known.set(text, [r, g, b, a / 255]);
    return [r, g, b, a / 255];
  };
  const over = ([r, g, b, a]: Colour, [r2, g2, b2]: Colour, opacity = 1): Colour => {
    const mix = (top: number, below: number): number => top * a * opacity + below * (1 - a * opacity);
    return [mix(r, r2), mix(g, g2), mix(b, b2), 1];
  };
  const luminance = ([r, g, b]: Colour): number => {
    const linear = (value: number): number =>
      value <= 0.04045 * 255 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4;
    return 0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b);
  };
  const contrast = (a: Colour, b: Colour): number => {
    const [low = 0, high = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
    return (high + 0.05) / (low + 0.05);
  };
  const white: Colour = [255, 255, 255, 1];
  const groundOf = (node: Element | null): Colour => {
    if (node === null) return white;
    const own = colour(getComputedStyle(node).backgroundColor);
    return own[3] === 1 ? own : over(own, groundOf(node.parentElement));
  };
  const opacityOf = (node: Element): number =>
    node instanceof SVGSVGElement || !node.parentElement
      ? 1
      : Number(getComputedStyle(node).opacity) * opacityOf(node.parentElement);
  const isSeen = (node: Element): boolean =>
    node.checkVisibility({ visibilityProperty: true, opacityProperty: true }) &&
    node.getBoundingClientRect().width + node.getBoundingClientRect().height > 0;

  /** A shape of a figure that hides what is below it. */
  const shapes = 'rect, path, circle, ellipse, polygon';
  const covers = (shape: Element, x: number, y: number): boolean => {
    const { left, right, top, bottom } = shape.getBoundingClientRect();
    return left <= x && x <= right && top <= y && y <= bottom;
  };
  const groundInFigure = (svg: SVGSVGElement, node: Element): Colour => {
    const { left, top, width, height } = node.getBoundingClientRect();
    const style = getComputedStyle(node);
    // letters with an edge around them, painted first, stand on that edge
    if (style.paintOrder.startsWith('stroke') && style.stroke !== 'none') return colour(style.stroke);
    let ground = groundOf(svg);
    for (const shape of svg.querySelectorAll(shapes)) {
      if (!(shape.compareDocumentPosition(node) & Node.DOCUMENT_POSITION_FOLLOWING)) break;
      const { fill, fillOpacity } = getComputedStyle(shape);
      if (fill === 'none' || fill.startsWith('url') || !covers(shape, left + width / 2, top + height / 2))
        continue;
      ground = over(colour(fill), ground, Number(fillOpacity) * opacityOf(shape));
    }
    return ground;
  };
  const told = (node: Element, ratio: number): string => {
    const svg = node.closest('svg');
    const name = `${node.tagName.toLowerCase()}.${node.getAttribute('class') ?? ''}`;
    return `${svg?.getAttribute('class') ?? ''} ${name} ${node.textContent?.trim().slice(0, 30)}: ${ratio.toFixed(2)}`;
  };
  const inFigures: string[] = [];
  for (const svg of document.querySelectorAll<SVGSVGElement>('main svg:not(svg svg, .katex svg)')) {
    if (!isSeen(svg)) continue;
    for (const node of svg.querySelectorAll('text, tspan')) {
      const hasOwn = [...node.childNodes].some(
        ({ nodeType, data }: ChildNode & { data?: string }) => nodeType === 3 && data?.trim(),
      );
      if (!hasOwn || !isSeen(node)) continue;
      const { fill, fillOpacity } = getComputedStyle(node);
      const ground = groundInFigure(svg, node);
      const ratio = contrast(over(colour(fill), ground, Number(fillOpacity) * opacityOf(node)), ground);
      if (ratio < letters) inFigures.push(told(node, ratio));
    }
    for (const node of svg.querySelectorAll('line, polyline, path, rect, circle, ellipse, polygon')) {
      const { stroke, strokeWidth, strokeOpacity } = getComputedStyle(node);
      if (
        stroke === 'none' ||
        stroke.startsWith('url') ||
        Number.parseFloat(strokeWidth) === 0 ||
        !isSeen(node)
      )
        continue;
      const ground = groundOf(svg);
      const drawn = over(colour(stroke), ground, Number(strokeOpacity) * opacityOf(node));
      const ratio = contrast(drawn, ground);
      // drawn in the colour of the ground: a line that is left out
      if (ratio < lines && ratio > 1.01) inFigures.push(told(node, ratio));
    }
  }
  const controls =
    'input:not([type="range"], [type="file"], [type="hidden"]), select, textarea, button, .button';
  const edges: string[] = [];
  for (const node of document.querySelectorAll(`main :is(${controls})`)) {
    if (!isSeen(node) || node.matches(':disabled, .visually-hidden')) continue;
    const { borderTopWidth, borderTopStyle, borderTopColor, outlineStyle, outlineColor } =
      getComputedStyle(node);
    const drawn = outlineStyle === 'solid' ? outlineColor : borderTopColor;
    const hasEdge =
      outlineStyle === 'solid' || (borderTopStyle !== 'none' && Number.parseFloat(borderTopWidth) > 0);
    if (!hasEdge || colour(drawn)[3] === 0) continue;
    const ground = groundOf(node.parentElement);
    const ratio = contrast(over(colour(drawn), ground), ground);
    if (ratio < lines) edges.push(told(node, ratio));
  }
  return {
    figures: [...new Set(inFigures)],
    edges: [...new Set(edges)],
    ground: groundOf(document.documentElement).slice(0, 3),
  };
}
