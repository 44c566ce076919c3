import type { SheetEntries } from '../../sheet/entries.ts';
import type { KeptStore, StoreProblem } from '../../store/kept.ts';
import type { BenchAction } from '../state/actions.ts';
import { openAddress } from '../use-address.ts';
import type { Keeper } from './keeper.ts';
import { idIn, markIn } from './mark.ts';
import { openingAt } from './opening.ts';

/** A bench that may have something to open. */
export interface Bench {
  readonly store: Pick<KeptStore<SheetEntries>, 'get' | 'list'>;
  readonly keeper: Pick<Keeper, 'expect' | 'expectAhead'>;
  readonly send: (action: BenchAction) => void;
  /** Whether nothing was typed on the page yet, and nothing opened: asked when it is known what to open. */
  readonly isUntouched: () => boolean;
}

/** What came of an arrival. */
export interface Arrived {
  /** Whether something was opened, which the page is about to show. */
  readonly opened: boolean;
  /** Why the kept sheet that was asked for could not be opened. */
  readonly problem: StoreProblem | undefined;
}

/**
 * Opens what the address, or the history entry, asks for, or else what was kept last. What was typed meanwhile is not lost: undo
 * brings it back, and where no sheet was asked for, none is opened over it.
 */
export async function arrive({ store, keeper, send, isUntouched }: Bench): Promise<Arrived> {
  const { hash } = location;
  const mark = markIn(history.state);
  const isAsked = idIn(hash) !== undefined || mark !== undefined;
  const opening = await openingAt(store, { hash, mark });
  if (opening.kind === 'address') {
    // nobody else reads the address where a kept sheet is asked for
    const opened = isAsked && (await openAddress(send));
    return { opened, problem: opening.problem };
  }
  if (!isAsked && !isUntouched()) return { opened: false, problem: undefined };
  if (opening.kind === 'kept') keeper.expect(opening.kept);
  else keeper.expectAhead(opening.head, opening.entries);
  const entries = opening.kind === 'kept' ? opening.kept.value : opening.entries;
  send(isUntouched() ? { type: 'resume', entries } : { type: 'open', entries, problems: [] });
  return { opened: true, problem: undefined };
}
