import { type Lettering, type Weight, widthOf } from './face.ts';

/** Text in rows of one size. */
export interface Fitted extends Lettering {
  readonly rows: readonly string[];
}

/** A wish: this size in at most so many rows. */
export interface Size {
  readonly size: number;
  readonly most: number;
}

/** Words in rows of at most a width; a word that is wider stands in a row of its own. A no-break space holds. */
function wrapped(text: string, lettering: Lettering, width: number): readonly string[] {
  const rows: string[] = [];
  let current = '';
  for (const word of text.split(' ')) {
    const longer = current === '' ? word : `${current} ${word}`;
    if (current === '' || widthOf(longer, lettering) <= width) current = longer;
    else {
      rows.push(current);
      current = word;
    }
  }
  return [...rows, current];
}

/** As few rows as can be, but of nearly one length, so that no single word is left to the last. */
function balanced(text: string, lettering: Lettering, width: number): readonly string[] {
  let rows = wrapped(text, lettering, width);
  for (let narrower = width * 0.96; narrower > width / 2; narrower *= 0.96) {
    const next = wrapped(text, lettering, narrower);
    if (next.length > rows.length) break;
    if (next.every((row) => widthOf(row, lettering) <= narrower)) rows = next;
  }
  return rows;
}

/**
 * A text in the first of some sizes in which it fits into a width.
 * @throws RangeError where it fits in none: a shorter text is wanted, not a smaller one.
 */
export function fitted(
  text: string,
  {
    sizes,
    weight,
    width,
  }: { readonly sizes: readonly Size[]; readonly weight: Weight; readonly width: number },
): Fitted {
  for (const { size, most } of sizes) {
    const rows = wrapped(text, { size, weight }, width);
    if (rows.length <= most && rows.every((row) => widthOf(row, { size, weight }) <= width))
      return { rows: balanced(text, { size, weight }, width), size, weight };
  }
  throw new RangeError(`fitted: a text must fit into ${width} units, got ${JSON.stringify(text)}`);
}
