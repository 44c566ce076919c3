import { createHash } from 'node:crypto';
import sharp from 'sharp';
import { cardSvg } from './card-svg.ts';
import type { CardContent } from './content.ts';

/** A card as a file of the site. */
export interface Card {
  /** Name of its file with a share of its content's hash: another picture has another address, so that no cache shows an old one. */
  readonly name: string;
  readonly alt: string;
  readonly png: Uint8Array<ArrayBuffer>;
}

const kept = new Map<string, Promise<Card>>();

/** Colours of a card: a few, and their blends at the edges of letters. */
const COLOURS = 48;

async function draw(content: CardContent): Promise<Card> {
  const picture = await sharp(Buffer.from(cardSvg(content)))
    .png({ palette: true, colours: COLOURS, compressionLevel: 9 })
    .toBuffer();
  const png = new Uint8Array(picture);
  const hash = createHash('sha256').update(png).digest('hex').slice(0, 10);
  return { name: `${content.key}.${hash}.png`, alt: content.alt, png };
}

/** Draws a card; once for the page that names it and for the file itself. The same content gives the same bytes. */
export function cardOf(content: CardContent): Promise<Card> {
  const key = JSON.stringify(content);
  const card = kept.get(key) ?? draw(content);
  kept.set(key, card);
  return card;
}
