/** Longest line that old boards and quoted mail leave whole (common practice). */
export const COLUMNS = 72;
const INDENT = '  ';

/** Stands for a space at which no line may end. */
export const HELD_SPACE = '\u00a0';

/** A word cut into pieces no longer than a line. */
const cut = (word: string, length: number): readonly string[] =>
  word.length <= length ? [word] : (word.match(new RegExp(`.{1,${length}}`, 'gu')) ?? []);

/** Lines of at most 72 columns, broken at spaces, following lines set in by two; held spaces come out as ordinary ones. */
export function wrapped(text: string): readonly string[] {
  const lines: string[] = [];
  let current = '';
  for (const word of text.split(' ').flatMap((part) => cut(part, COLUMNS - INDENT.length))) {
    const longer = current === '' ? word : `${current} ${word}`;
    if (longer.length <= COLUMNS) current = longer;
    else {
      lines.push(current);
      current = `${INDENT}${word}`;
    }
  }
  return [...lines, current].map((line) => line.replaceAll(HELD_SPACE, ' '));
}
