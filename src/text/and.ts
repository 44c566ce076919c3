/** Names in a row: `a`, `a and b`, `a, b and c`. */
export const namesAnd = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
