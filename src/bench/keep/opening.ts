import type { SheetEntries } from '../../sheet/entries.ts';
import type { Kept, KeptHead, KeptStore, StoreProblem } from '../../store/kept.ts';
import type { BenchAction } from '../state/actions.ts';
import { idIn, type KeptMark } from './mark.ts';

/** What a page that is opened has to go by. */
export interface Arrival {
  readonly hash: string;
  /** What the history entry says, if it says anything. */
  readonly mark: KeptMark | undefined;
}

/** What the bench opens with. */
export type Opening =
  /** A kept sheet. */
  | { readonly kind: 'kept'; readonly kept: Kept<SheetEntries> }
  /** What the address holds of a kept sheet, which was changed after it was kept last. */
  | { readonly kind: 'ahead'; readonly head: KeptHead; readonly entries: SheetEntries }
  /** The address alone, or the demonstration where it has none; with why nothing that is kept, if that was asked for. */
  | { readonly kind: 'address'; readonly problem?: StoreProblem };

/** Reading addresses, fetched where there is one to read. */
const codec = () => import('../address/fragment.ts');

/** What the address carries, if it carries anything. */
async function carriedBy(hash: string): Promise<BenchAction | undefined> {
  if (hash === '') return undefined;
  const { openingOf } = await codec();
  return openingOf(hash);
}

type Store = Pick<KeptStore<SheetEntries>, 'get' | 'list'>;

/**
 * Finds what to open: the kept sheet that is asked for; else what the address carries, which is never taken for a kept one; else
 * the sheet that was kept last.
 */
export async function openingAt(store: Store, { hash, mark }: Arrival): Promise<Opening> {
  // what was noted in the entry counts: its address may still name another
  const id = mark?.id ?? idIn(hash);
  if (id !== undefined) return asked(store, id, { hash, mark });
  if ((await carriedBy(hash)) !== undefined) return { kind: 'address' };
  const list = await store.list();
  const [last] = list.ok ? list.value.items : [];
  return last === undefined ? { kind: 'address' } : { kind: 'kept', kept: last };
}

async function asked(store: Store, id: string, { hash, mark }: Arrival): Promise<Opening> {
  const found = await store.get(id);
  if (!found.ok) return { kind: 'address', problem: found.problem };
  const kept = found.value;
  const carried = mark?.id === id && mark.ahead ? await carriedBy(hash) : undefined;
  if (mark === undefined || carried?.type !== 'open') return { kind: 'kept', kept };
  const { fragmentOf } = await codec();
  if (fragmentOf(carried.entries) === fragmentOf(kept.value)) return { kind: 'kept', kept };
  const { value: _, ...head } = kept;
  return { kind: 'ahead', head: { ...head, revision: mark.revision }, entries: carried.entries };
}
