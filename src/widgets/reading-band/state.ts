import { halfSpanFor } from '../../figures/reading-band.layout.ts';
import { amountOf, linkUncertaintyPerAmount, withLinkAmount } from '../../sheet/amount.ts';
import { type BandChain, bandChainOf } from '../../sheet/chain.ts';
import { COVERAGE_FACTOR } from '../../sheet/coverage.ts';
import type { Sheet } from '../../sheet/sheet.ts';
import { AMOUNT, rangeOf } from './amount.ts';

export interface BandState {
  readonly sheet: Sheet;
  /** Sheet before the last change: what the ghost shows. */
  readonly before: Sheet | undefined;
  /** While a handle is held: the sheet to return to on cancel, and the axis, which must not move under the pointer. */
  readonly held: { readonly sheet: Sheet; readonly halfSpanDb: number } | undefined;
  readonly showLimits: boolean;
  readonly showCurve: boolean;
  /** Whether the reader has changed anything since the state was opened: only then does the address follow. */
  readonly touched: boolean;
}

export type BandAction =
  /** A rung's amount was typed, stepped or slid. */
  | { readonly type: 'set'; readonly id: string; readonly amount: number }
  | { readonly type: 'grasp' }
  /** The handle of a rung was dragged to where the expanded uncertainty is this wide. */
  | { readonly type: 'pull'; readonly id: string; readonly expandedDb: number }
  | { readonly type: 'release' }
  | { readonly type: 'cancel' }
  | { readonly type: 'show'; readonly what: 'limits' | 'curve'; readonly on: boolean }
  /** Another chain: the prepared one, or one that the reader builds. */
  | { readonly type: 'replace'; readonly sheet: Sheet }
  /** An address was read, by what is fetched for that: what it makes of the state as it is by now. */
  | { readonly type: 'open'; readonly onto: (state: BandState) => BandState };

export const initialState = ({
  sheet,
  showLimits = true,
  showCurve = false,
}: {
  sheet: Sheet;
  showLimits?: boolean;
  showCurve?: boolean;
}): BandState => ({
  sheet,
  before: undefined,
  held: undefined,
  showLimits,
  showCurve,
  touched: false,
});

/** Total and pure: an unknown rung or an impossible amount leaves the state as it is or at the nearest allowed one. */
export function reduceBand(state: BandState, action: BandAction): BandState {
  switch (action.type) {
    case 'set':
      return changed(
        state,
        withLinkAmount(state.sheet, action.id, allowed(action.amount, rangeIn(state.sheet, action.id))),
      );
    case 'grasp':
      return { ...state, before: state.sheet, held: { sheet: state.sheet, halfSpanDb: halfSpanOf(state) } };
    case 'pull':
      return withSheet(state, pulled(state.sheet, action));
    case 'release':
      return { ...state, held: undefined, touched: true };
    case 'cancel':
      return state.held ? { ...state, sheet: state.held.sheet, before: undefined, held: undefined } : state;
    case 'show':
      return {
        ...state,
        ...(action.what === 'limits' ? { showLimits: action.on } : { showCurve: action.on }),
        touched: true,
      };
    case 'replace':
      return changed({ ...state, held: undefined }, action.sheet);
    case 'open':
      return action.onto(state);
  }
}

/** The very same state where the sheet is: then nothing is drawn. */
const withSheet = (state: BandState, sheet: Sheet): BandState =>
  sheet === state.sheet ? state : { ...state, sheet };

const changed = (state: BandState, sheet: Sheet): BandState => ({
  ...state,
  sheet,
  touched: true,
  before: state.held ? state.before : state.sheet,
});

/** The nearest amount on the grid of steps within the limits; 0 for what is no number. */
export function allowed(amount: number, { min, max, step }: Range = AMOUNT): number {
  if (Number.isNaN(amount)) return min;
  const within = Math.min(max, Math.max(min, amount));
  return Math.round(within / step) / Math.round(1 / step);
}

type Range = ReturnType<typeof rangeOf>['range'];

/** What the amount of a rung may be; of a rung that there is not, whatever it may be in dB. */
function rangeIn({ links }: Sheet, id: string): Range {
  const link = links.find((candidate) => candidate.id === id);
  return link === undefined ? AMOUNT : rangeOf(link).range;
}

/** The amount that makes the band at this rung as wide as the handle says: what is above it cannot be undone below. */
function pulled(sheet: Sheet, { id, expandedDb }: { id: string; expandedDb: number }): Sheet {
  const { rungs } = bandChainOf(sheet);
  const index = rungs.findIndex((rung) => rung.id === id);
  const link = rungs[index]?.link;
  if (link === undefined || !Number.isFinite(expandedDb)) return sheet;
  const above = rungs[index - 1]?.cumulative.propagation.standardUncertainty ?? 0;
  const wanted = expandedDb / COVERAGE_FACTOR;
  const own = Math.sqrt(Math.max(0, wanted ** 2 - above ** 2));
  const amount = wanted <= 0 ? 0 : allowed(own / linkUncertaintyPerAmount(link), rangeOf(link).range);
  // a pointer often moves by less than a step of the amount
  return amount === amountOf(link.statement) ? sheet : withLinkAmount(sheet, id, amount);
}

/** Half of the axis that holds every band of the state and of its ghost. */
export function halfSpanOf({ sheet, before, held }: BandState): number {
  if (held) return held.halfSpanDb;
  return halfSpanFor(Math.max(reachOf(bandChainOf(sheet)), before ? reachOf(bandChainOf(before)) : 0));
}

/** How far from the estimate anything of a chain is drawn, in dB. */
export function reachOf({ result }: BandChain): number {
  const { lower, upper } = result.worstCase.interval;
  const ends = [lower, upper, result.propagation.interval.lower, result.propagation.interval.upper];
  return Math.max(0.1, ...ends.map((end) => Math.abs(end - result.estimate)));
}
