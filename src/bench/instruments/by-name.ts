/**
 * Orders names as a reader looks them up: capitals and small letters alike, numbers in them by size ("Pad 9" before "Pad 10"). The same
 * on every machine, whatever its language.
 */
export function byName(one: string, other: string): number {
  const [mine, theirs] = [partsOf(one), partsOf(other)];
  for (let index = 0; index < Math.max(mine.length, theirs.length); index++) {
    const order = orderOf(mine[index] ?? '', theirs[index] ?? '');
    if (order !== 0) return order;
  }
  return 0;
}

/** Text and numbers by turns. */
const partsOf = (name: string): readonly string[] => name.trim().toLowerCase().split(/(\d+)/);

function orderOf(one: string, other: string): number {
  if (/^\d/.test(one) && /^\d/.test(other)) return Number(one) - Number(other);
  return one < other ? -1 : Number(one > other);
}
