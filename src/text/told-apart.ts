/** Digits more than usual that two numbers may be given, so that one sees which is the larger. */
const MOST_MORE = 3;

/**
 * Two numbers as texts of which a sentence says that one is beyond the other: with as few digits more than usual as tell them apart, three
 * at the most. `write` makes both texts with so many digits more.
 */
export function toldApart(write: (more: number) => readonly [string, string]): readonly [string, string] {
  for (let more = 0; more < MOST_MORE; more++) {
    const pair = write(more);
    if (pair[0] !== pair[1]) return pair;
  }
  return write(MOST_MORE);
}
