import { light } from '../styles/tokens.ts';
import { cardBand } from './band.tsx';
import type { CardContent } from './content.ts';
import { outlineOf } from './face.ts';
import { type Fitted, fitted, type Size } from './fit.ts';

/** What boards and messengers show without cutting (common practice). */
export const CARD_WIDTH = 1200;
export const CARD_HEIGHT = 630;
/** Nothing is written nearer to the edge: some round the corners, some cut to two to one. */
export const MARGIN = 60;

const SITE = 'How Sure Is a Watt?';
const inner = CARD_WIDTH - 2 * MARGIN;
/** Sizes in the order of the wish; what must be read at a quarter of the size begins with 46. */
const SIZES = {
  site: [{ size: 40, most: 1 }],
  title: [
    { size: 68, most: 1 },
    { size: 62, most: 2 },
  ],
  titleAboveBand: [
    { size: 66, most: 1 },
    { size: 56, most: 2 },
  ],
  big: [
    { size: 140, most: 1 },
    { size: 124, most: 1 },
    { size: 108, most: 1 },
    { size: 92, most: 2 },
  ],
  bigAboveBand: [
    { size: 124, most: 1 },
    { size: 110, most: 1 },
    { size: 96, most: 1 },
  ],
  small: [
    { size: 54, most: 1 },
    { size: 50, most: 2 },
    { size: 46, most: 3 },
  ],
  smallAboveBand: [
    { size: 54, most: 1 },
    { size: 46, most: 1 },
  ],
} as const satisfies Readonly<Record<string, readonly Size[]>>;
/** From one baseline to the next, and how far capitals stand above it, in parts of the size. */
const STEP = 1.14;
const CAPITAL = 0.68;
const TOP = 44;
const GAP = 36;
/** Between the words and the band, and below the band. */
const BAND_GAP = 28;
/** The site's sign, a band that widens step by step, for a card that has no band of its own. */
const SIGN = { scale: 4, width: 104, room: 150 } as const;

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

function sign(): string {
  const { scale, width } = SIGN;
  const place = `translate(${CARD_WIDTH - MARGIN - width} ${CARD_HEIGHT - MARGIN - width}) scale(${scale})`;
  return `<g transform="${place}"><path fill="${light.ink}" d="M12 0h2v5h-2zM0 24h26v2H0z"/><path fill="${light.band}" d="M7 8h12v5H7zM2 16h22v6H2z"/></g>`;
}

/** Title, result and what it is, and the height below which there is room. */
function words({ title, big, small, band }: CardContent): Placed {
  const bold = { weight: 'Bold', width: inner } as const;
  const plain = { weight: 'Regular', width: band ? inner : inner - SIGN.room } as const;
  const head = fitted(title, { ...bold, sizes: band ? SIZES.titleAboveBand : SIZES.title });
  const result = fitted(big, { ...bold, sizes: band ? SIZES.bigAboveBand : SIZES.big });
  const said = fitted(small, { ...plain, sizes: band ? SIZES.smallAboveBand : SIZES.small });
  const first = placed(fitted(SITE, { ...plain, sizes: SIZES.site }), TOP, light.muted);
  const second = placed(head, first.end + GAP, light.ink);
  const third = placed(result, second.end + (band ? 1 : 2) * GAP, light.ink);
  const fourth = placed(said, third.end + GAP, light.ink);
  return { markup: [first, second, third, fourth].map(({ markup }) => markup).join(''), end: fourth.end };
}

/** A card as SVG: no letter in it needs a face, so that the same content gives the same picture on every machine. */
export function cardSvg(content: CardContent): string {
  const { markup, end } = words(content);
  const top = end + BAND_GAP;
  const room = { width: inner, height: CARD_HEIGHT - BAND_GAP - top };
  const drawn = content.band
    ? `<g transform="translate(${MARGIN} ${top})">${cardBand(content.band, room)}</g>`
    : sign();
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${CARD_WIDTH}" height="${CARD_HEIGHT}" viewBox="0 0 ${CARD_WIDTH} ${CARD_HEIGHT}">`,
    `<rect width="${CARD_WIDTH}" height="${CARD_HEIGHT}" fill="${light.paper}"/>`,
    markup,
    drawn,
    '</svg>',
  ].join('');
}
