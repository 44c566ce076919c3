import type { Sheet } from '../../sheet/sheet.ts';
import { readQuery, writeQuery } from '../parts/address.ts';
import { bandSpec, fromAddressState, type Shown, toAddressState } from './spec.ts';
import type { BandState } from './state.ts';

type Prepared = Shown & { readonly sheet: Sheet };
type Named = Readonly<Record<string, unknown>>;

/** What of a state is not as prepared. */
function changedIn(prepared: Named, state: Named): Named {
  const text = (value: unknown): string => JSON.stringify(value);
  return Object.fromEntries(
    Object.entries(state).filter(([name, value]) => text(value) !== text(prepared[name])),
  );
}

/** The band as an address brought it; what was changed before it was read stays as it was changed, and a held handle in the hand. */
const opened =
  (prepared: Prepared, brought: Named) =>
  (now: BandState): BandState => {
    const { sheet, held, touched } = now;
    const asPrepared = toAddressState(prepared.sheet, prepared.sheet, prepared);
    const own = touched || held ? changedIn(asPrepared, toAddressState(prepared.sheet, sheet, now)) : {};
    return {
      ...fromAddressState(prepared.sheet, { ...brought, ...own }),
      before: undefined,
      held: held && { ...held, sheet: fromAddressState(prepared.sheet, brought).sheet },
      touched,
    };
  };

/** What a query says about a band that was prepared so, with what was wrong in it as sentences. Never throws. */
export function readBand(prepared: Prepared, query: string, instance: string | undefined) {
  const { carried, state, problems } = readQuery(bandSpec(prepared.sheet, prepared), query, instance);
  return {
    opened: carried ? opened(prepared, state) : undefined,
    problems: problems.map(({ sentence }) => sentence),
  };
}

/** Brings the band's part of the address up to date. */
export function writeBand({
  prepared,
  state,
  instance,
}: {
  prepared: Prepared;
  state: Prepared;
  instance: string | undefined;
}): void {
  const spec = bandSpec(prepared.sheet, prepared);
  writeQuery({ spec, state: toAddressState(prepared.sheet, state.sheet, state), instance });
}
