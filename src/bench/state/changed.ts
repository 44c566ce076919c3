/** The same thing with something changed; itself if nothing differs, so that nobody takes it for a change. */
export function changed<Of extends object>(of: Of, change: Partial<Of>): Of {
  const keys = Object.keys(change) as (keyof Of)[];
  return keys.every((key) => Object.is(of[key], change[key])) ? of : { ...of, ...change };
}

/** A list with the items of one id changed; itself if nothing differs. */
export function changedIn<Item extends { readonly id: string }>(
  list: readonly Item[],
  id: string,
  change: (item: Item) => Item,
): readonly Item[] {
  const next = list.map((item) => (item.id === id ? change(item) : item));
  return next.every((item, index) => item === list[index]) ? list : next;
}

/** The first of `link7`, `link8` ... from one more than there are, that no item has. */
export function freeId(stem: string, list: readonly { readonly id: string }[]): string {
  const used = new Set(list.map(({ id }) => id));
  let number = list.length + 1;
  while (used.has(`${stem}${number}`)) number++;
  return `${stem}${number}`;
}
