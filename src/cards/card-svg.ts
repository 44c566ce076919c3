import { light } from '../styles/tokens.ts';
import { SITE_NAME } from '../text/site-name.ts';
import { cardBand } from './band.tsx';
import type { CardContent } from './content.ts';
import { outlineOf } from './face.ts';
import { figureDrawing } from './figure-drawing.ts';
import { figureFor } from './figure-for.ts';
import { type Fitted, fitted, type Size } from './fit.ts';

/** What boards and messengers show without cutting (common practice). */
export const CARD_WIDTH = 1200;
export const CARD_HEIGHT = 630;
/** Nothing is written nearer to the edge: some round the corners, some cut to two to one. */
export const MARGIN = 60;

const inner = CARD_WIDTH - 2 * MARGIN;

interface Sizes {
  readonly site: readonly Size[];
  readonly title: readonly Size[];
  readonly big: readonly Size[];
  readonly small: readonly Size[];
}

/** Sizes in the order of the wish; what must be read at a quarter of the size begins with 44. */
const SIZES: Readonly<Record<CardContent['drawn']['kind'], Sizes>> = {
  band: {
    site: [{ size: 40, most: 1 }],
    title: [
      { size: 66, most: 1 },
      { size: 56, most: 2 },
    ],
    big: [
      { size: 124, most: 1 },
      { size: 110, most: 1 },
      { size: 96, most: 1 },
    ],
    small: [
      { size: 54, most: 1 },
      { size: 46, most: 1 },
    ],
  },
  figure: {
    site: [{ size: 40, most: 1 }],
    title: [
      { size: 56, most: 1 },
      { size: 50, most: 1 },
      { size: 46, most: 1 },
    ],
    big: [
      { size: 104, most: 1 },
      { size: 92, most: 1 },
      { size: 80, most: 1 },
    ],
    small: [
      { size: 48, most: 1 },
      { size: 44, most: 2 },
    ],
  },
};
/** From one baseline to the next, and how far capitals stand above it, in parts of the size. */
const STEP = 1.14;
const CAPITAL = 0.68;
const TOP = 44;
/** Between rows of words; a figure wants more height than a band. */
const GAPS = { band: 36, figure: 27 } as const;
/** Between the words and the drawing, and below it. */
const DRAWING_GAP = 28;

interface Placed {
  readonly markup: string;
  /** Baseline of the last row. */
  readonly end: number;
}

/** Rows from a height on, their first capitals right below it. */
function placed({ rows, size, weight }: Fitted, top: number, fill: string): Placed {
  const first = top + CAPITAL * size;
  const markup = rows.map((row, index) => {
    const d = outlineOf(row, { x: MARGIN, y: first + index * STEP * size, size, weight });
    return `<path fill="${fill}" d="${d}"/>`;
  });
  return { markup: markup.join(''), end: first + (rows.length - 1) * STEP * size };
}

/** Title, result and what it is, and the height below which there is room. */
function words({ title, big, small, drawn: { kind } }: CardContent): Placed {
  const sizes = SIZES[kind];
  const gap = GAPS[kind];
  const bold = { weight: 'Bold', width: inner } as const;
  const plain = { weight: 'Regular', width: inner } as const;
  const first = placed(fitted(SITE_NAME, { ...plain, sizes: sizes.site }), TOP, light.muted);
  const second = placed(fitted(title, { ...bold, sizes: sizes.title }), first.end + gap, light.ink);
  const third = placed(fitted(big, { ...bold, sizes: sizes.big }), second.end + gap, light.ink);
  const fourth = placed(fitted(small, { ...plain, sizes: sizes.small }), third.end + gap, light.ink);
  return { markup: [first, second, third, fourth].map(({ markup }) => markup).join(''), end: fourth.end };
}

/** The drawing of a card as large as there is room for, from its upper left corner. */
function drawing(
  drawn: CardContent['drawn'],
  room: { readonly width: number; readonly height: number },
): string {
  if (drawn.kind === 'band') return cardBand(drawn, room);
  const { markup, width, height } = figureDrawing(figureFor(drawn));
  const scale = Math.min(room.width / width, room.height / height);
  return `<g class="figure" transform="scale(${Number(scale.toFixed(4))})">${markup}</g>`;
}

/** A card as SVG: no letter in it needs a face, so that the same content gives the same picture on every machine. */
export function cardSvg(content: CardContent): string {
  const { markup, end } = words(content);
  const top = end + DRAWING_GAP;
  const room = { width: inner, height: CARD_HEIGHT - DRAWING_GAP - top };
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${CARD_WIDTH}" height="${CARD_HEIGHT}" viewBox="0 0 ${CARD_WIDTH} ${CARD_HEIGHT}">`,
    `<rect width="${CARD_WIDTH}" height="${CARD_HEIGHT}" fill="${light.paper}"/>`,
    markup,
    `<g transform="translate(${MARGIN} ${top})">${drawing(content.drawn, room)}</g>`,
    '</svg>',
  ].join('');
}
