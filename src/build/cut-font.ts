import subsetFont from 'subset-font';
import { fontCharacters } from './font-characters.ts';

/** The licence reserves the word "Source" for unmodified copies: a cut face needs a name of its own, as long as the old one. */
const RESERVED = 'SourceSans3';
const OWN = 'SitePageOne';

/**
 * What the pages ask of the face: what browsers apply without being asked, and figures of one width. Every other feature would bring
 * its own shapes of all letters and figures, as much again as is kept.
 */
export const KEPT_FEATURES = 'calt ccmp clig kern liga locl mark mkmk rlig rvrn tnum'.split(' ');

/** How a name is kept: two bytes a letter, or one. */
const encodings = [
  (text: string): Buffer => Buffer.from(text, 'utf16le').swap16(),
  (text: string): Buffer => Buffer.from(text, 'latin1'),
];

/** Writes a name of our own over a reserved one of the same length; the copyright line, which declares it reserved, stays. */
export function renamed(font: Uint8Array, reserved = RESERVED, own = OWN): Buffer {
  const bytes = Buffer.from(font);
  for (const encode of encodings) {
    const [from, to, declaring] = [encode(reserved), encode(own), encode('Font Name ')];
    for (let at = bytes.indexOf(from); at !== -1; at = bytes.indexOf(from, at + from.length))
      if (!bytes.subarray(0, at).subarray(-declaring.length).equals(declaring)) to.copy(bytes, at);
  }
  return bytes;
}

/** Source Sans 3 (OFL), cut to the characters and weights that the site uses, and renamed. The same input gives the same bytes. */
export async function cutFont(face: Uint8Array): Promise<Uint8Array> {
  const variationAxes = { wght: { min: 400, max: 700 } };
  const keepFeatures = KEPT_FEATURES;
  const cut = await subsetFont(face, fontCharacters(), {
    targetFormat: 'truetype',
    variationAxes,
    keepFeatures,
  });
  return subsetFont(renamed(cut), fontCharacters(), { targetFormat: 'woff2', keepFeatures });
}
