import { openBroadcast } from '../store/broadcast.ts';

/** What the windows of one talk tell each other: the step in sight and whether the wall is blank, or that one asks for both. */
export type Told = { readonly step: number; readonly blank: boolean } | { readonly asks: true };

/** Whether what came over the line is one of ours. */
export function isTold(data: unknown): data is Told {
  if (typeof data !== 'object' || data === null) return false;
  const { step, blank, asks } = data as Readonly<Record<string, unknown>>;
  return asks === true || (Number.isSafeInteger(step) && typeof blank === 'boolean');
}

/** What the line of an address is called: the same for the wall and for its notes. */
export function lineName({ pathname, search }: Pick<Location, 'pathname' | 'search'>): string {
  const query = new URLSearchParams(search);
  query.delete('notes');
  return `how-sure-is-a-watt:stage:${pathname}?${query}`;
}

/**
 * What the line of this window is called. A step within a talk has one for each of its places there: two steps of one lesson
 * are changed apart, and apart from those of another talk.
 */
export function windowLine(): string {
  const turn = new URLSearchParams(location.search).get('part');
  return turn === null ? lineName(location) : `${lineName(parent.location)}:${turn}`;
}

export interface Line<Of> {
  tell(told: Of): void;
  close(): void;
}

/** A line that nobody hears. */
export const silent: Line<unknown> = { tell: () => undefined, close: () => undefined };

/** The line between the wall and the notes of one address; where the browser gives none, each window stands alone. */
export function openLine<Of>(
  name: string,
  isOf: (data: unknown) => data is Of,
  onTold: (told: Of) => void,
): Line<Of> {
  const line = openBroadcast(name);
  if (line === undefined) return silent;
  line.addEventListener('message', ({ data }) => {
    if (isOf(data)) onTold(data);
  });
  return { tell: (told) => line.postMessage(told), close: () => line.close() };
}
