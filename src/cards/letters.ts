import { light } from '../styles/tokens.ts';
import { outlineOf, type Weight, widthOf } from './face.ts';

/** A text of a figure: where its baseline begins, is in the middle of, or ends. */
export interface Letters {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly anchor: string;
  readonly weight: Weight;
  readonly fill: string;
  /** Smaller goes first where there is no room for all. */
  readonly rank: number;
}

interface Room {
  readonly width: number;
  readonly height: number;
  readonly size: number;
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** How far letters reach above and below their baseline, and what has to be free beside them, in parts of their size. */
const ABOVE = 0.68;
const BELOW = 0.2;
const BESIDE = 0.3;
/** A rim of paper keeps letters and lines apart. */
const RIM = 9;

function boxOf({ text, x, y, anchor, weight }: Letters, { size, width: room }: Room): Box {
  const width = widthOf(text, { size, weight });
  const begins = anchor === 'middle' ? x - width / 2 : anchor === 'end' ? x - width : x;
  const left = Math.max(0, Math.min(begins, room - width));
  return { left, right: left + width, top: y - ABOVE * size, bottom: y + BELOW * size };
}

const meet = (a: Box, b: Box, beside: number): boolean =>
  a.left < b.right + beside && b.left < a.right + beside && a.top < b.bottom && b.top < a.bottom;

const within = ({ left, right, top, bottom }: Box, { width, height, size }: Room): boolean =>
  left >= 0 && right <= width && top >= -1 && bottom <= height + BELOW * size;

/** The letters of a figure as outlines of one size; what would stand in another or out of the figure is left out, numbers of axes first. */
export function lettering(letters: readonly Letters[], room: Room): string {
  const { size } = room;
  const taken: Box[] = [];
  return letters
    .filter(({ text }) => text.trim() !== '')
    .toSorted((a, b) => a.rank - b.rank)
    .map((one) => {
      const box = boxOf(one, room);
      if (!within(box, room) || taken.some((other) => meet(box, other, BESIDE * size))) return '';
      taken.push(box);
      const d = outlineOf(one.text, { x: box.left, y: one.y, size, weight: one.weight });
      return `<path fill="${light.paper}" stroke="${light.paper}" stroke-width="${RIM}" stroke-linejoin="round" d="${d}"/><path class="letters" fill="${one.fill}" d="${d}"/>`;
    })
    .join('');
}
