import { useEffect, useRef, useState } from 'preact/hooks';
import { whileOpening } from '../widgets/parts/opening.ts';

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

/**
 * Keeps what stands in a form in the fragment of the address, and opens what an address brings: when the page wakes, and when the
 * reader follows another link. A place on the page (`#main`) is nothing of the kind. Returns whether it is too long for an address.
 */
export function useFragment<Entries>({ entries, codec, open, refuse }: FragmentUse<Entries>): boolean {
  const [tooLong, setTooLong] = useState(false);
  const calls = useRef({ open, refuse });
  calls.current = { open, refuse };
  // what undo brings back is the first object again, and no longer what the address says
  const first = useRef<Entries | undefined>(entries);
  useEffect(() => {
    const follow = async (): Promise<void> => {
      if (location.hash === '') return;
      const found = (await codec()).read(location.hash.slice(1));
      if (found.entries) calls.current.open(found.entries, found.problems);
      else if (found.problems.length > 0) calls.current.refuse(found.problems);
    };
    const arrive = (): void => void whileOpening(follow);
    arrive();
    addEventListener('hashchange', arrive);
    return () => removeEventListener('hashchange', arrive);
  }, [codec]);
  useEffect(() => {
    if (entries === first.current) return undefined;
    first.current = undefined;
    let gone = false;
    const timer = setTimeout(async () => {
      const fragment = (await codec()).write(entries);
      if (gone) return;
      setTooLong(fragment === undefined);
      if (fragment === undefined || location.hash.replace(/^#/, '') === fragment) return;
      const url = `${location.pathname}${location.search}${fragment === '' ? '' : `#${fragment}`}`;
      history.replaceState(history.state, '', url);
    }, REST_MS);
    return () => {
      gone = true;
      clearTimeout(timer);
    };
  }, [entries, codec]);
  return tooLong;
}
