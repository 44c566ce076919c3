import type { Style } from '../style.ts';

/**
 * A part of a line: words of this site's own in ASCII, words of the reader's, a number that each style writes its own way, or a whole
 * sentence with numbers in it, which may break at any space.
 */
export type Piece =
  | { readonly own: string }
  | { readonly foreign: string }
  | { readonly write: (style: Style) => string }
  | { readonly sentence: (style: Style) => string };

/** One statement of a result; `kind` lets a page or a sentence pick what it needs. */
export interface Line {
  readonly kind: LineKind;
  readonly pieces: readonly Piece[];
}

export type LineKind =
  | 'measured'
  | 'method'
  | 'demand'
  | 'agreed'
  | 'notes'
  | 'checks'
  | 'result'
  | 'whole'
  | 'known'
  | 'sum'
  | 'readings'
  | 'taken'
  | 'worst'
  | 'dominant'
  | 'verdict'
  | 'caution'
  | 'assumes'
  | 'made';

/** A result in lines, ready for every format, with the address under which it opens again. */
export interface Summary {
  readonly lines: readonly Line[];
  readonly link: string | undefined;
}

/**
 * A line from a template: plain parts are this site's own words (ASCII), `{ foreign }` the reader's, functions are numbers.
 */
export function line(
  kind: LineKind,
  ...parts: readonly (string | Piece | ((style: Style) => string))[]
): Line {
  const pieces = parts.map((part): Piece => {
    if (typeof part === 'string') return { own: part };
    return typeof part === 'function' ? { write: part } : part;
  });
  return { kind, pieces };
}

/** Items with a separator between them. */
export const joined = <T>(items: readonly T[], separator: string): readonly (T | string)[] =>
  items.flatMap((item, index) => (index === 0 ? [item] : [separator, item]));
