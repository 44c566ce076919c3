import { useEffect, useRef, useState } from 'preact/hooks';
import { replaceAddress } from '../address/replace-address.ts';
import { LOST_ADDRESS, tellUnfetched, whileOpening } from '../widgets/parts/opening.ts';

/** Rest after the last change before the address follows: some browsers refuse more than a hundred changes in half a minute. */
const REST_MS = 300;

/** Reading and writing fragments, fetched when there is one to read or to write. */
export interface FragmentCodec<Entries> {
  /** Undefined where an address cannot hold them. */
  write(entries: Entries): string | undefined;
  read(fragment: string): { readonly entries: Entries | undefined; readonly problems: readonly string[] };
}

interface FragmentUse<Entries> {
  readonly entries: Entries;
  /** The same function on every call. */
  readonly codec: () => Promise<FragmentCodec<Entries>>;
  readonly open: (entries: Entries, problems: readonly string[]) => void;
  readonly refuse: (problems: readonly string[]) => void;
}

/** Puts entries into the address, unless another has taken its place meanwhile. Resolves to whether an address can hold them. */
async function put<Entries>(
  codec: FragmentUse<Entries>['codec'],
  entries: Entries,
  isGone = () => false,
): Promise<boolean> {
  const fragment = (await codec()).write(entries);
  if (fragment === undefined) return false;
  if (isGone() || location.hash.replace(/^#/, '') === fragment) return true;
  const url = `${location.pathname}${location.search}${fragment === '' ? '' : `#${fragment}`}`;
  replaceAddress(url);
  return true;
}

/**
 * Opens what an address brings: when the page wakes, and when the reader follows another link. A place on the page (`#main`) is nothing of
 * the kind, and what stood in the address before comes back. Returns how many addresses have come, as they come.
 */
function useArrivals<Entries>({ entries, codec, open, refuse }: FragmentUse<Entries>): { current: number } {
  const latest = useRef({ entries, open, refuse });
  latest.current = { entries, open, refuse };
  const arrivals = useRef(0);
  useEffect(() => {
    let isAwake = false;
    const follow = async (): Promise<void> => {
      const isFirst = !isAwake;
      isAwake = true;
      const { hash } = location; // as it is now: a change that rests might be written over it before it is read
      if (isFirst && hash === '') return;
      arrivals.current += 1;
      const found = (await codec()).read(hash.slice(1));
      const now = latest.current;
      if (found.entries) now.open(found.entries, found.problems);
      else if (found.problems.length > 0) now.refuse(found.problems);
      else if (!isFirst) await put(codec, now.entries);
    };
    const arrive = (): void => void whileOpening(follow).catch(() => latest.current.refuse([LOST_ADDRESS]));
    arrive();
    addEventListener('hashchange', arrive);
    return () => removeEventListener('hashchange', arrive);
  }, [codec]);
  return arrivals;
}

/** Keeps what stands in a form in the fragment of the address, and opens what an address brings. Returns whether it is too long for one. */
export function useFragment<Entries>(use: FragmentUse<Entries>): boolean {
  const { entries, codec } = use;
  const [tooLong, setTooLong] = useState(false);
  // one that comes while a change still rests has the last word
  const arrivals = useArrivals(use);
  // what undo brings back is the first object again, and no longer what the address says
  const first = useRef<Entries | undefined>(entries);
  useEffect(() => {
    if (entries === first.current) return undefined;
    first.current = undefined;
    let gone = false;
    const arrived = arrivals.current;
    const isGone = (): boolean => gone || arrivals.current !== arrived;
    const write = async (): Promise<void> => {
      if (isGone()) return;
      const fits = await put(codec, entries, isGone);
      if (!gone) setTooLong(!fits);
    };
    const timer = setTimeout(() => write().catch(tellUnfetched), REST_MS);
    return () => {
      gone = true;
      clearTimeout(timer);
    };
  }, [entries, codec]);
  return tooLong;
}
