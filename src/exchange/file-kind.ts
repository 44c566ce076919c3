/** What a file is, by its first bytes, where it is certainly not one of ours; the usual marks of each format's own standard. */
const MARKS: readonly (readonly [bytes: readonly number[], kind: string])[] = [
  [[0x89, 0x50, 0x4e, 0x47], 'a PNG picture'],
  [[0xff, 0xd8, 0xff], 'a JPEG picture'],
  [[0x47, 0x49, 0x46, 0x38], 'a GIF picture'],
  [[0x25, 0x50, 0x44, 0x46], 'a PDF document'],
  [[0x50, 0x4b, 0x03, 0x04], 'a ZIP archive, or a spreadsheet or document, which are archives too'],
  [[0x1f, 0x8b], 'a compressed file'],
  [[0xd0, 0xcf, 0x11, 0xe0], 'a spreadsheet or document of an old kind'],
  [[0x7b, 0x5c, 0x72, 0x74, 0x66], 'a formatted text (RTF)'],
];

/** The kind of a file of another kind, as far as it can be told; undefined for what may be text of ours. */
export function otherKindOf(bytes: Uint8Array): string | undefined {
  const found = MARKS.find(([mark]) => mark.every((byte, index) => bytes[index] === byte));
  if (found !== undefined) return found[1];
  const start = new TextDecoder().decode(bytes.subarray(0, 400)).trimStart().toLowerCase();
  if (start.startsWith('<svg') || (start.startsWith('<?xml') && start.includes('<svg')))
    return 'an SVG picture';
  if (start.startsWith('<!doctype html') || start.startsWith('<html')) return 'a web page';
  return start.startsWith('<?xml') ? 'an XML file' : undefined;
}
