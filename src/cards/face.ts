import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { create, type Font } from 'fontkit';

/** Regular and bold of the face that the pages' own is cut from. */
export type Weight = 'Regular' | 'Bold';

const faces = new Map<Weight, Font>();

/** Builds, tests and tools all run in the project's own folder; where a built file lies says nothing about it. */
function face(weight: Weight): Font {
  const kept = faces.get(weight);
  if (kept !== undefined) return kept;
  const font = create(readFileSync(join('node_modules/source-sans/TTF', `SourceSans3-${weight}.ttf`)));
  if (!('unitsPerEm' in font))
    throw new TypeError(`face: one face must be in the file of ${weight}, got a collection`);
  faces.set(weight, font);
  return font;
}

export interface Lettering {
  readonly size: number;
  readonly weight: Weight;
}

/** @throws RangeError for a character that the face does not have: no card shows an empty box. */
function run(text: string, weight: Weight) {
  const shaped = face(weight).layout(text);
  const missing = shaped.glyphs.findIndex(({ id }) => id === 0);
  if (missing >= 0)
    throw new RangeError(`run: the face must have every character, got ${JSON.stringify(text)}`);
  return shaped;
}

/** How wide a text is. */
export const widthOf = (text: string, { size, weight }: Lettering): number =>
  (run(text, weight).advanceWidth * size) / face(weight).unitsPerEm;

/** A text as the outlines of its letters, so that it looks the same wherever it is drawn; `x` and `y` are where its baseline begins. */
export function outlineOf(
  text: string,
  { x, y, size, weight }: Lettering & { readonly x: number; readonly y: number },
): string {
  const scale = size / face(weight).unitsPerEm;
  const { glyphs, positions } = run(text, weight);
  let at = x;
  return glyphs
    .map((glyph, index) => {
      const position = positions[index];
      const outline = glyph.path.scale(scale, -scale).translate(at + (position?.xOffset ?? 0) * scale, y);
      at += (position?.xAdvance ?? 0) * scale;
      return outline.toSVG();
    })
    .join('');
}
