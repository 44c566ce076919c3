/**
 * Rows of a table kept as lines of words, so that it can be read beside the print: the first word of a line is the row's
 * key, the others its cells. `·` stands for an empty cell.
 */
export const printedRows = (text: string): { key: string; printed: string[] }[] =>
  text
    .trim()
    .split('\n')
    .map((line) => {
      const [key = '', ...printed] = line.trim().split(/\s+/);
      return { key, printed: printed.map((cell) => (cell === '·' ? '' : cell)) };
    });
