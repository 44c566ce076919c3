/** Capitals, ideographs and pictures, against a small letter. */
const WIDE = 1.7;

/** Rough width of a sign, in small letters: an accent stands above the letter before it. */
function widthOf(sign: string): number {
  if (/^[\p{M}\u2068\u2069]$/u.test(sign)) return 0;
  return /^[\p{Lu}\p{Lo}\p{So}mw%@]$/u.test(sign) ? WIDE : 1;
}

/** Which sign is the first that has no room; -1 where all have. */
function firstOver(signs: readonly string[], letters: number): number {
  let taken = 0;
  return signs.findIndex((sign) => {
    taken += widthOf(sign);
    return taken > letters;
  });
}

/**
 * A name in a figure, cut with a sign of omission where it is longer than its place: somebody else’s name may be of any length, and whole it
 * stands beside the figure.
 * @param letters room, in small letters
 */
export function cutText(text: string, letters: number): string {
  const signs = [...text];
  const over = firstOver(signs, letters);
  return over < 0
    ? text
    : `${signs
        .slice(0, Math.max(1, over - 1))
        .join('')
        .trimEnd()}…${signs[0] === '\u2068' ? '\u2069' : ''}`;
}

/** As much of a name as has its place, without a sign that the rest is left out: for a name that is kept no longer than it is drawn. */
export function fittingText(text: string, letters: number): string {
  const signs = [...text];
  const over = firstOver(signs, letters);
  return over < 0 ? text : signs.slice(0, over).join('');
}

/**
 * Words in a figure in two lines at the most, a line end between them, broken where there is a space; what has no room in the second is cut.
 * @param letters room in each line, in small letters
 */
export function brokenText(text: string, [first, second]: readonly [number, number]): string {
  const over = firstOver([...text], first);
  if (over < 0) return text;
  const at = [...text]
    .slice(0, over + 1)
    .join('')
    .lastIndexOf(' ');
  return at < 1 ? cutText(text, first) : `${text.slice(0, at)}\n${cutText(text.slice(at + 1), second)}`;
}
