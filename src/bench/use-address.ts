import { useEffect, useRef } from 'preact/hooks';
import type { SheetEntries } from '../sheet/entries.ts';
import type { BenchAction } from './actions.ts';
import { decodeEntries, encodeEntries } from './address.ts';
import { demonstrationEntries } from './fresh.ts';

/** Rest after the last change before the address follows: some browsers refuse more than a hundred changes in half a minute. */
const REST_MS = 300;

const fragments = new WeakMap<SheetEntries, { readonly fragment: string | undefined }>();
let bare: string | undefined;

/** What stands after `#` for these entries: nothing for the demonstration; undefined where an address cannot hold them. */
export function fragmentOf(entries: SheetEntries): string | undefined {
  const known = fragments.get(entries);
  if (known !== undefined) return known.fragment;
  const own = encodeEntries(entries);
  bare ??= encodeEntries(demonstrationEntries());
  const fragment = own === bare ? '' : own;
  fragments.set(entries, { fragment });
  return fragment;
}

/**
 * The whole address that opens a sheet as it was typed, with what was agreed and checked; the demonstration's too: what a text
 * carries must open the same when the demonstration has changed. Undefined where an address cannot hold it.
 */
export function sheetAddress(entries: SheetEntries): string | undefined {
  const fragment = encodeEntries(entries);
  return fragment === undefined ? undefined : `${location.href.split('#')[0]}#${fragment}`;
}

/**
 * Keeps the sheet in the fragment of the address, and opens the sheet that an address brings: when the page wakes, and when
 * the reader goes back or follows another link. A place on the page (`#main`) is no sheet, and what was there comes back.
 */
export function useBenchAddress(entries: SheetEntries, send: (action: BenchAction) => void): void {
  const woken = useRef(false);
  const latest = useRef(entries);
  latest.current = entries;
  useEffect(() => {
    const open = (): void => {
      const action = openingOf(location.hash);
      if (action) send(action);
      else if (woken.current) write(latest.current);
      woken.current = true;
    };
    open();
    addEventListener('hashchange', open);
    return () => removeEventListener('hashchange', open);
  }, [send]);
  const first = useRef(entries);
  useEffect(() => {
    if (entries === first.current) return undefined;
    const timer = setTimeout(() => write(entries), REST_MS);
    return () => clearTimeout(timer);
  }, [entries]);
}

/** What to do about the fragment of an address; undefined if it carries no sheet. */
export function openingOf(hash: string): BenchAction | undefined {
  const { entries, problems, carried } = decodeEntries(hash);
  const empty =
    entries.links.length === 0 &&
    entries.points.every(({ readings, nominal }) => readings === '' && nominal === '');
  if (carried && !(empty && problems.length > 0)) return { type: 'open', entries, problems };
  return problems.length > 0 ? { type: 'refuse', problems } : undefined;
}

function write(entries: SheetEntries): void {
  const fragment = fragmentOf(entries);
  if (fragment === undefined || location.hash.replace(/^#/, '') === fragment) return;
  const url = `${location.pathname}${location.search}${fragment === '' ? '' : `#${fragment}`}`;
  history.replaceState(history.state, '', url);
}
