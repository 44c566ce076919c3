import { useEffect, useRef, useState } from 'preact/hooks';
import { replaceAddress } from '../address/replace-address.ts';
import type { SheetEntries } from '../sheet/entries.ts';
import { LOST_ADDRESS, tellUnfetched, whileOpening } from '../widgets/parts/opening.ts';
import { catchUp, keepUnwritten } from './address/unwritten.ts';
import type { BenchAction } from './state/actions.ts';

/** Rest after the last change before the address follows: some browsers refuse more than a hundred changes in half a minute. */
const REST_MS = 300;

/** Reading and writing addresses, once it is there: a page that is being left waits for nothing. */
let fetched: typeof import('./address/fragment.ts') | undefined;

/** The same, fetched when there is an address to read or to write. */
async function codec() {
  fetched = await import('./address/fragment.ts');
  return fetched;
}

if (!import.meta.env.SSR) {
  catchUp(); // before anything looks at the address
  // ahead of the first letter: a reader may leave before the rest after that is over. Where it cannot be fetched, writing tells it
  addEventListener('focusin', () => void codec().catch(() => undefined), { once: true });
}

/**
 * The whole address that opens a sheet as it was typed, with what was agreed and checked; the demonstration's too: what a text
 * carries must open the same when the demonstration has changed. Undefined where an address cannot hold it.
 */
export async function sheetAddress(entries: SheetEntries): Promise<string | undefined> {
  const { encodeEntries } = await import('./address/address.ts');
  const fragment = encodeEntries(entries);
  return fragment === undefined ? undefined : `${location.href.split('#')[0]}#${fragment}`;
}

/** Whether this entry of the history names a kept sheet (`keep/mark.ts`): then that is opened, not what the address carries. */
const isMarked = (): boolean => history.state?.kept !== undefined || location.hash.startsWith('#kept-');

/** Opens the sheet that the address carries; false where it carries none. What could not be read is told: it may be one. */
export async function openAddress(
  send: (action: BenchAction) => void,
  { hash } = location, // as it is now: it may be another when the codec is there
): Promise<boolean> {
  const action = await codec().then(
    ({ openingOf }) => openingOf(hash),
    () => ({ type: 'refuse', problems: [LOST_ADDRESS] }) as const,
  );
  if (action) send(action);
  return action !== undefined;
}

/**
 * Keeps the sheet in the fragment of the address, and opens the sheet that an address brings: when the page wakes, and when
 * the reader goes back or follows another link. A place on the page (`#main`) is no sheet, and what was there comes back.
 * Returns whether the present sheet is too long for an address.
 */
export function useBenchAddress(entries: SheetEntries, send: (action: BenchAction) => void): boolean {
  const woken = useRef(false);
  const latest = useRef(entries);
  latest.current = entries;
  /** How many addresses have come: one that comes while a change still rests has the last word. */
  const arrivals = useRef(0);
  const [tooLong, setTooLong] = useState(false);
  useEffect(() => {
    const open = async (): Promise<void> => {
      const first = !woken.current;
      woken.current = true;
      if (!first) arrivals.current += 1;
      if (isMarked() || (first && location.hash === '')) return;
      await whileOpening(async () => {
        if (!(await openAddress(send)) && !first) await writeAddress(latest.current);
      });
    };
    void open();
    addEventListener('hashchange', open);
    return () => removeEventListener('hashchange', open);
  }, [send]);
  const first = useRef(entries);
  useEffect(() => {
    if (entries === first.current) return undefined;
    let gone = false;
    const arrived = arrivals.current;
    const isGone = (): boolean => gone || arrivals.current !== arrived;
    const write = async (): Promise<void> => {
      if (isGone()) return;
      const fits = await writeAddress(entries, isGone);
      removeEventListener('pagehide', leave);
      if (!gone) setTooLong(!fits);
    };
    const timer = setTimeout(() => write().catch(tellUnfetched), REST_MS);
    const leave = (): void => {
      const fragment = isGone() ? undefined : fetched?.fragmentOf(entries);
      if (fragment !== undefined) keepUnwritten(urlOf(fragment));
    };
    addEventListener('pagehide', leave);
    return () => {
      gone = true;
      clearTimeout(timer);
      removeEventListener('pagehide', leave);
    };
  }, [entries]);
  return tooLong;
}

/** Puts a sheet into the address, unless another one has taken its place meanwhile. Resolves to whether an address can hold it. */
export async function writeAddress(entries: SheetEntries, isGone = () => false): Promise<boolean> {
  const { fragmentOf, aheadOf } = await codec();
  const fragment = fragmentOf(entries);
  if (fragment === undefined) return false;
  if (isGone() || location.hash.replace(/^#/, '') === fragment) return true;
  replaceAddress(urlOf(fragment), aheadOf);
  return true;
}

/** This page with another fragment. */
const urlOf = (fragment: string): string =>
  `${location.pathname}${location.search}${fragment === '' ? '' : `#${fragment}`}`;
