/** Capitals, ideographs and pictures, against a small letter. */
const WIDE = 1.7;

/** Rough width of a sign, in small letters: an accent stands above the letter before it. */
function widthOf(sign: string): number {
  if (/^[\p{M}\u2068\u2069]$/u.test(sign)) return 0;
  return /^[\p{Lu}\p{Lo}\p{So}mw%@]$/u.test(sign) ? WIDE : 1;
}

/**
 * A name in a figure, cut with a sign of omission where it is longer than its place: somebody else’s name may be of any length, and whole it
 * stands beside the figure.
 * @param letters room, in small letters
 */
export function cutText(text: string, letters: number): string {
  const signs = [...text];
  let taken = 0;
  const over = signs.findIndex((sign) => {
    taken += widthOf(sign);
    return taken > letters;
  });
  return over < 0
    ? text
    : `${signs
        .slice(0, Math.max(1, over - 1))
        .join('')
        .trimEnd()}…${signs[0] === '\u2068' ? '\u2069' : ''}`;
}
