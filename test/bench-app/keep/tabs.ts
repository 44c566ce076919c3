import { type Keeper, keeper } from '../../../src/bench/keep/keeper.ts';
import { keptSheets } from '../../../src/bench/keep/kept-sheets.ts';
import { type KeepingState, UNCHANGED } from '../../../src/bench/keep/place.ts';
import type { Standing } from '../../../src/bench/keep/set-mark.ts';
import { demonstration } from '../../../src/bench/state/demonstration.ts';
import { type BenchAction, type BenchState, reduceBench } from '../../../src/bench/state/state.ts';
import type { SheetEntries } from '../../../src/sheet/entries.ts';
import type { Kept, KeptStore } from '../../../src/store/kept.ts';

/** One tab with the bench open, as far as keeping goes: what is sent is reduced and shown, as the page does it. */
export interface Tab {
  readonly store: KeptStore<SheetEntries>;
  readonly keeper: Keeper;
  state: BenchState;
  told: KeepingState;
  standing: Standing | undefined;
  send(action: BenchAction): void;
  type(title: string): void;
  /** Types, and keeps it at once. */
  keep(title: string): Promise<void>;
  close(): void;
}

export function tab(now?: () => string): Tab {
  const store = keptSheets(now);
  const made: Tab = {
    store,
    keeper: keeper({
      store,
      onState(told) {
        made.told = told;
      },
      onStanding(standing) {
        made.standing = standing;
      },
    }),
    state: demonstration(),
    told: UNCHANGED,
    standing: undefined,
    send(action) {
      made.state = reduceBench(made.state, action);
      made.keeper.show(made.state.sheet, made.state.entries);
    },
    type: (title) => made.send({ type: 'edit', path: 'title', change: { title } }),
    async keep(title) {
      made.type(title);
      await made.keeper.flush();
    },
    close() {
      made.keeper.stop();
      store.close();
    },
  };
  made.keeper.begin(0, made.state.entries);
  made.keeper.show(0, made.state.entries);
  const unwatch = store.watch(made.keeper.heard);
  const { close } = made;
  made.close = () => {
    unwatch();
    close();
  };
  return made;
}

/** Everything that is kept, by name. */
export async function keptIn({ store }: Tab): Promise<readonly string[]> {
  const list = await store.list();
  return list.ok ? list.value.items.map(({ name }) => name) : [list.problem];
}

/** Opens a kept sheet in a tab, as the page does when it wakes. */
export async function opened(of: Tab, id: string): Promise<Kept<SheetEntries>> {
  const found = await of.store.get(id);
  if (!found.ok) throw new Error(found.problem);
  of.keeper.expect(found.value);
  of.send({ type: 'resume', entries: found.value.value });
  return found.value;
}
