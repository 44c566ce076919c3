/** Most numbers on a step: more of them a room does not take in (common practice of people who give talks). */
export const MOST_NUMBERS = 3;

const FIGURE = /(?<![A-Za-z\d.])[+\u2212±]?\d+(?:\u00a0\d{3}(?!\d))*(?:\.\d+(?:\u00a0\d+)*)?(?![A-Za-z\d])/g;
const UNIT = '(?:\\u00a0[^\\s\\d.,;:()]{1,7}(?: RMS)?)?';

/** What may stand between the figures of one number: before its other end, the other side of its band, its factor k, its power of ten. */
const WITHIN = new RegExp(`^(?:${UNIT} to |/|${UNIT},? \\(?k = |\\)?\\u00a0×\\u00a0)$`, 'u');
/** What may stand before a band that begins with ±. */
const BEFORE_BAND = new RegExp(`^${UNIT}[\\u00a0 ]$`, 'u');
/** What may stand between a number and both ends of its band. */
const BEFORE_ENDS = new RegExp(`^${UNIT}(?:,| \\(|,? from) ?$`, 'u');

/** What is written with figures and is a name: clauses of documents, the usual rule (k = 2, 95 %), a probe’s switch, 10 lg. */
const NAMES =
  /\((?:VIM|JCGM|GUM)[^)]*\)|\bk[ \u00a0]=[ \u00a0]2(?![.\d])|\b95[ \u00a0]%|\b10?×(?!\d)|\b[12]0 lg\b/g;

/**
 * How many numbers a text has, as a room counts them: a value with its unit, its band or both ends of it, its factor k and its power of
 * ten is one; what only names something is none.
 */
export function numbersIn(text: string): number {
  const plain = text.replace(NAMES, '');
  const figures = [...plain.matchAll(FIGURE)];
  const gaps = figures.map(({ index, 0: figure }, at) => {
    const end = index + figure.length;
    return plain.slice(end, figures[at + 1]?.index ?? end);
  });
  const goesOn = figures.map(({ 0: figure }, at) => {
    const gap = gaps[at - 1];
    if (gap === undefined) return false;
    if (WITHIN.test(gap)) return true;
    if (figure.startsWith('±') && BEFORE_BAND.test(gap)) return true;
    return BEFORE_ENDS.test(gap) && gaps[at]?.endsWith(' to ') === true;
  });
  return goesOn.filter((is) => !is).length;
}

/** Things in the groups that fit a step each, in their order; one that has more numbers by itself stands alone. */
export function packed<Thing>(
  things: readonly Thing[],
  textOf: (thing: Thing) => string,
): readonly (readonly Thing[])[] {
  const groups: Thing[][] = [];
  for (const thing of things) {
    const last = groups.at(-1);
    if (last && numbersIn([...last, thing].map(textOf).join('\n')) <= MOST_NUMBERS) last.push(thing);
    else groups.push([thing]);
  }
  return groups;
}

/** A piece that was cut out as a sentence by itself. */
const wholePiece = (piece: string): string =>
  piece.replace(/;$/, '.').replace(/^\p{Ll}/u, (letter) => letter.toUpperCase());

/** A text in pieces that fit a step each, cut behind a sentence or a semicolon. */
export const inSteps = (text: string): readonly string[] =>
  packed(text.split(/(?<=[.?!]”?|;) (?=[\p{L}\d“])/u), (piece) => piece).map((pieces) =>
    wholePiece(pieces.join(' ')),
  );
