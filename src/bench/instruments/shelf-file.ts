import { INSTRUMENT_KINDS, type InstrumentEntries } from '../../instruments/instrument.ts';
import type { Shelf } from './shelf.ts';
import { shelfFileStrings as strings } from './shelf-file-strings.ts';
import type { Known } from './take.ts';

/** The ids that this site gives: others are not taken over. */
const ID = /^[0-9a-f]{24}$/;

/** What becomes of the instruments of a file. */
export interface Placing {
  /** What comes onto the shelf. */
  readonly items: readonly Known[];
  /** So many of them come beside another state of the same instrument. */
  readonly beside: number;
  /** So many stand there already as they are in the file. */
  readonly same: number;
}

const isSame = (one: InstrumentEntries, other: InstrumentEntries): boolean => {
  const texts = new Map<string, string>(Object.entries(other));
  return Object.entries(one).every(([key, text]) => texts.get(key) === text);
};

/**
 * Where the instruments of a file go: nothing that is there is overwritten. One that has the id of another comes beside it under an id of
 * its own; one that is there letter by letter is left out.
 * @param freshId gives an id that nothing else has.
 */
export function placed(
  opened: readonly Known[],
  { items = [], removed }: Pick<Shelf, 'items' | 'removed'>,
  freshId: () => string,
): Placing {
  const there = new Map(items.map(({ id, value }) => [id, value]));
  // what was deleted may be brought back
  const used = new Set([...there.keys(), ...(removed === undefined ? [] : [removed.item.id])]);
  const news: Known[] = [];
  let beside = 0;
  let same = 0;
  for (const { id, value } of opened) {
    const own = there.get(id);
    if (own !== undefined && isSame(own, value)) {
      same += 1;
      continue;
    }
    if (own !== undefined) beside += 1;
    const given = ID.test(id) && !used.has(id) ? id : freshId();
    used.add(given);
    news.push({ id: given, value });
  }
  return { items: news, beside, same };
}

/** Why the shelf cannot take them; undefined where it can. */
export const noRoom = ({ items }: Placing, room: number): string | undefined =>
  items.length > room ? strings.noRoom({ count: items.length, room }) : undefined;

/** Instruments without names, numbers, notes, and who calibrated them; called by their kinds. Every statement and day stays. */
export function nameless(instruments: readonly Known[]): readonly Known[] {
  const counted = new Map(INSTRUMENT_KINDS.map((kind) => [kind, 0]));
  return instruments.map(({ value }) => {
    const number = (counted.get(value.kind) ?? 0) + 1;
    counted.set(value.kind, number);
    const label = strings.unnamed({ kind: value.kind, number });
    return { id: '', value: { ...value, label, serial: '', from: '', notes: '' } };
  });
}
