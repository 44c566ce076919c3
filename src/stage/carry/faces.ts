/** What in a page asks for each face of the formulas, by the name of its file. A face that nothing asks for stays at home. */
const ASKS: Readonly<Record<string, string>> = {
  'Main-Regular': '.katex',
  'Math-Italic': '.mathnormal',
  'Size1-Regular': '.size1, .small-op',
  'Size2-Regular': '.size2, .large-op',
  'Size3-Regular': '.size3',
  'Size4-Regular': '.size4, .delim-size4',
};

const FACE = /@font-face\s*\{[^}]*\}/g;
const FORMULA_FACE = /Signs_([A-Za-z0-9]+-[A-Za-z]+)\./;
const FILE = /url\((["']?)([^"')]+\.woff2)\1\)/;

/** The address of the file of a face; undefined for one that the reader's machine has. */
const fileOf = (face: string): string | undefined => FILE.exec(face)?.[2];

/** A style sheet without the faces that the pages do not ask for. */
export function withoutIdleFaces(css: string, asks: (selector: string) => boolean): string {
  return css.replace(FACE, (face) => {
    const [, name] = FORMULA_FACE.exec(fileOf(face) ?? '') ?? [];
    if (name === undefined) return face;
    const selector = ASKS[name];
    return selector !== undefined && asks(selector) ? face : '';
  });
}

/** The files of all faces in a style sheet, each once. */
export const faceFiles = (css: string): readonly string[] => [
  ...new Set([...css.matchAll(FACE)].flatMap(([face]) => fileOf(face) ?? [])),
];
