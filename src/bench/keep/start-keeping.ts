import type { SheetEntries } from '../../sheet/entries.ts';
import type { KeptStore } from '../../store/kept.ts';
import { LOST_ADDRESS } from '../../widgets/parts/opening.ts';
import type { BenchState } from '../state/state.types.ts';
import { writeAddress } from '../use-address.ts';
import { type Arrived, arrive } from './arrive.ts';
import type { KeptLineProps } from './KeptLine.tsx';
import { type Keeper, keeper } from './keeper.ts';
import { keptSheets } from './kept-sheets.ts';
import { idIn, markIn } from './mark.ts';
import type { KeepingState } from './place.ts';
import { type Standing, setMark } from './set-mark.ts';

interface PageKeeping extends Pick<KeptLineProps, 'begun' | 'send'> {
  /** What stands on the page now. */
  readonly latest: () => Pick<BenchState, 'sheet' | 'entries'>;
  readonly onState: (state: KeepingState) => void;
  /** It is known what the page opens with: from now on what stands there is to be shown to the keeper. */
  readonly onArrived: (keeper: Keeper, arrived: Arrived) => void;
}

/** Opens what is kept, and from then on keeps what stands on the page and follows its history. Answers with what ends it. */
export function startKeeping({ begun, send, latest, onState, onArrived }: PageKeeping): () => void {
  const store = keptSheets();
  let standing: Standing | undefined;
  const onStanding = (now: Standing): void => {
    standing = now;
    setMark(now);
  };
  const made = keeper({ store, onState, onStanding });
  made.begin(0, begun);
  const isUntouched = (): boolean => latest().entries === begun;
  const come = async (): Promise<Arrived> => {
    const arrived = await arrive({ store, keeper: made, send, isUntouched }).catch(() => {
      // what reads addresses could not be fetched: what is typed from now on is kept all the same
      send({ type: 'refuse', problems: [LOST_ADDRESS] });
      return { opened: false, problem: undefined };
    });
    onArrived(made, arrived);
    return arrived;
  };
  const turn = async (): Promise<void> => {
    made.leave();
    if (await turned(standing, latest().entries, come)) return; // what was opened is shown as soon as it stands there
    const { sheet, entries } = latest();
    made.show(sheet, entries);
  };
  void come();
  addEventListener('hashchange', turn);
  const stop = listen(store, made);
  return () => {
    removeEventListener('hashchange', turn);
    stop();
  };
}

/** Follows the page to another entry of its history. Resolves to whether another sheet is opened with it. */
async function turned(
  standing: Standing | undefined,
  entries: SheetEntries,
  come: () => Promise<Arrived>,
): Promise<boolean> {
  const mark = markIn(history.state);
  if (mark === undefined && idIn(location.hash) === undefined) {
    const { openingOf } = await import('../address/fragment.ts');
    return openingOf(location.hash)?.type === 'open'; // which the address does by itself
  }
  if (mark === undefined || mark.id !== standing?.id) return (await come()).opened;
  await writeAddress(entries); // the same sheet, which may have been changed since
  return false;
}

/** Hears of other tabs, and keeps at once what is waiting when the page is left. Answers with what ends it. */
function listen(store: KeptStore<SheetEntries>, made: Keeper): () => void {
  const stop = new AbortController();
  const { signal } = stop;
  const onSight = (): void => void (document.visibilityState === 'hidden' ? made.flush() : made.check());
  const onReturn = ({ persisted }: PageTransitionEvent): void => {
    if (persisted) void made.check();
  };
  document.addEventListener('visibilitychange', onSight, { signal });
  addEventListener('pagehide', () => void made.flush(), { signal });
  addEventListener('pageshow', onReturn, { signal });
  const unwatch = store.watch(made.heard);
  return () => {
    stop.abort();
    unwatch();
    made.stop();
    store.close();
  };
}
