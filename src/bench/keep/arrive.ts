import type { SheetEntries } from '../../sheet/entries.ts';
import type { KeptStore, StoreProblem } from '../../store/kept.ts';
import type { BenchAction } from '../actions.ts';
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

/**
 * Opens what the address, or the history entry, asks for, or else what was kept last. What was typed meanwhile is not lost: undo
 * brings it back, and where no sheet was asked for, none is opened over it. Answers with why a kept sheet could not be opened.
 */
export async function arrive({ store, keeper, send, isUntouched }: Bench): Promise<StoreProblem | undefined> {
  const { hash } = location;
  const mark = markIn(history.state);
  const isAsked = idIn(hash) !== undefined || mark !== undefined;
  const opening = await openingAt(store, { hash, mark });
  const open = (entries: SheetEntries): void =>
    send(isUntouched() ? { type: 'resume', entries } : { type: 'open', entries, problems: [] });
  switch (opening.kind) {
    case 'kept':
      if (!isAsked && !isUntouched()) return undefined;
      keeper.expect(opening.kept);
      open(opening.kept.value);
      return undefined;
    case 'ahead':
      keeper.expectAhead(opening.head, opening.entries);
      open(opening.entries);
      return undefined;
    case 'address':
      if (isAsked) await openAddress(send); // nobody else does where a kept sheet is asked for
      return opening.problem;
  }
}
