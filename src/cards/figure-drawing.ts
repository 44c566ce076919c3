import { readFileSync } from 'node:fs';
import type { ComponentChild } from 'preact';
import render from 'preact-render-to-string';
import { ELEMENT_NODE, type ElementNode, type Node, parse, TEXT_NODE } from 'ultrahtml';
import { querySelector, querySelectorAll } from 'ultrahtml/selector';
import { type StyleRule, styleRules } from '../exchange/style-rules.ts';
import { light } from '../styles/tokens.ts';
import { type Letters, lettering } from './letters.ts';

/** A figure in its own coordinates, its letters as outlines. */
export interface FigureDrawing {
  readonly markup: string;
  readonly width: number;
  readonly height: number;
}

/** Size of every letter in a figure on a card, in the figure's own units. */
export const FIGURE_SIZE = 44;

/** The sheets that dress figures on the pages; read as files, since tests get no style sheets. */
const SHEETS = ['figures', 'plot-drawing', 'rulers', 'line-band', 'unit-tree'] as const;

/** A card's figure has the firm lines of the wall. */
const readRules = (): readonly StyleRule[] =>
  styleRules(
    SHEETS.map((name) => readFileSync(`src/styles/${name}.css`, 'utf8').replaceAll('-stage', '-card')).join(
      '\n',
    ),
    light,
  ).filter(({ selector }) => !selector.includes(':last-of-type'));

let kept: readonly StyleRule[] | undefined;
/** Read once: every figure is dressed by the same. */
function rules(): readonly StyleRule[] {
  kept ??= readRules();
  return kept;
}

/** What is for a hand or for somebody who does not see it. */
const LEFT_OUT = 'title, desc, .pull, .band-grip, .pull-grip';
/** Handles are for a hand too, but a point or a tile is what it stands for as well. */
const HANDLE = '.band-handle';
const STANDS_FOR = /\b(?:ruler-point|tile)\b/;

const isElement = (node: Node): node is ElementNode => node.type === ELEMENT_NODE;

/** Attributes that an element hands down to what is within it. */
const INHERITED = ['fill', 'stroke', 'stroke-width', 'font-weight', 'text-anchor'] as const;
/** Attributes that are of the page alone. */
const OF_PAGE = /^(?:class|role|style|tabindex|data-.*|aria-.*|font-.*|text-.*|paint-order)$/;

interface Inherited {
  readonly x: number;
  readonly y: number;
  readonly attributes: Readonly<Record<string, string>>;
}

const number = (text: string | undefined): number => Number(text ?? 0);

/** What `translate` moves by; figures use no other transform. */
function moved(transform: string | undefined): { readonly x: number; readonly y: number } {
  const [, x, y] = /^translate\(([-\d.]+) ([-\d.]+)\)$/.exec(transform ?? '') ?? [];
  return { x: number(x), y: number(y) };
}

const textIn = (node: Node): string =>
  node.type === TEXT_NODE
    ? unescaped(String(node.value))
    : isElement(node)
      ? node.children.map(textIn).join('')
      : '';

const unescaped = (text: string): string =>
  text.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&amp;', '&');

/** The letters of a `text` element where they stand in the drawing. */
function lettersOf(node: ElementNode, { x, y, attributes }: Inherited): Letters {
  const { class: classes = '' } = node.attributes;
  return {
    text: textIn(node),
    x: x + number(node.attributes.x),
    y: y + number(node.attributes.y),
    anchor: attributes['text-anchor'] ?? 'start',
    weight: Number(attributes['font-weight'] ?? 400) >= 600 ? 'Bold' : 'Regular',
    fill: attributes.fill ?? light.ink,
    rank: rankOf(classes),
  };
}

/** What goes first where there is no room for all: what things are, then what an axis gives, then its numbers. */
const rankOf = (classes: string): number => (/tick/.test(classes) ? 2 : /unit/.test(classes) ? 1 : 0);

/** The shapes of a drawing as they are written, and its letters apart. */
function walked(node: Node, above: Inherited, letters: Letters[]): string {
  if (!isElement(node)) return '';
  const { x, y } = moved(node.attributes.transform);
  const own = Object.fromEntries(
    INHERITED.flatMap((name) => (node.attributes[name] === undefined ? [] : [[name, node.attributes[name]]])),
  );
  const here = { x: above.x + x, y: above.y + y, attributes: { ...above.attributes, ...own } };
  if (node.name === 'text') {
    letters.push(lettersOf(node, here));
    return '';
  }
  const attributes = Object.entries(node.attributes)
    .filter(([name]) => !OF_PAGE.test(name))
    .map(([name, value]) => ` ${name}="${value}"`)
    .join('');
  const children = node.children.map((child) => walked(child, here, letters)).join('');
  return `<${node.name}${attributes}>${children}</${node.name}>`;
}

/** A figure of the site as a picture's part: dressed by the page's own style sheets, what is not for a picture left out. @throws RangeError without a drawing. */
export function figureDrawing(figure: ComponentChild): FigureDrawing {
  // the renderer takes an element of any kind, and a figure is one
  const tree = parse(render(figure as Parameters<typeof render>[0]));
  const svg = querySelector(tree, 'svg');
  if (!(svg && isElement(svg)))
    throw new RangeError('figureDrawing: the figure must have a drawing, got none');
  prune(svg, new Set([...elementsIn(svg, LEFT_OUT), ...elementsIn(svg, HANDLE).filter(isForHands)]));
  for (const { selector, attributes } of rules())
    for (const element of elementsIn(tree, selector))
      for (const [name, value] of attributes) element.attributes[name] = value;
  const [, , width = 0, height = 0] = String(svg.attributes.viewBox).split(' ').map(Number);
  const letters: Letters[] = [];
  const above = { x: 0, y: 0, attributes: {} };
  const shapes = svg.children.map((child: Node) => walked(child, above, letters)).join('');
  return { markup: `${shapes}${lettering(letters, { width, height, size: FIGURE_SIZE })}`, width, height };
}

const elementsIn = (tree: Node, selector: string): readonly ElementNode[] =>
  querySelectorAll(tree, selector).filter(isElement);

const isForHands = ({ attributes: { class: classes = '' } }: ElementNode): boolean =>
  !STANDS_FOR.test(classes);

function prune(node: ElementNode, gone: ReadonlySet<Node>): void {
  node.children = node.children.filter((child: Node) => !gone.has(child));
  for (const child of node.children) if (isElement(child)) prune(child, gone);
}
