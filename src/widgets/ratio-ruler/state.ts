import { amplitudeRatioToDb, powerRatioToDb } from '#compute';
import { GAIN, PREPARED_DB, type Slip } from './spec.ts';

export interface RatioState {
  readonly gainDb: number;
  readonly slip: Slip;
  /** While the line is held: where it was, to return to on cancel. */
  readonly held: number | undefined;
  /** Whether the reader has changed anything since the state was opened: only then does the address follow. */
  readonly touched: boolean;
}

export type RatioAction =
  /** Decibels were typed, stepped, slid or dragged to. */
  | { readonly type: 'set'; readonly gainDb: number }
  /** A ratio was typed. */
  | { readonly type: 'ratio'; readonly of: 'power' | 'volts'; readonly ratio: number }
  | { readonly type: 'grasp' }
  | { readonly type: 'pull'; readonly gainDb: number }
  | { readonly type: 'release' }
  | { readonly type: 'cancel' }
  | { readonly type: 'slip'; readonly slip: Slip }
  /** Back to what was prepared: a change like any other, which the address follows. */
  | { readonly type: 'reset'; readonly gainDb: number }
  /** What an address brought: what was changed before it was read stays as it was changed. */
  | { readonly type: 'open'; readonly gainDb: number; readonly slip: Slip };

export const initialState = (gainDb: number): RatioState => ({
  gainDb: allowed(gainDb, PRECISION),
  slip: 'none',
  held: undefined,
  touched: false,
});

/** Typed ratios are kept to a hundredth of a decibel; a pointer goes by the slider's steps. */
const PRECISION = 0.01;

/** The nearest allowed gain on a grid; what is no number leaves nothing to go by, and the middle stands. */
export function allowed(gainDb: number, step: number): number {
  if (Number.isNaN(gainDb)) return 0;
  const within = Math.min(GAIN.max, Math.max(GAIN.min, gainDb));
  // The sum turns a negative zero into zero.
  return Math.round(within / step) / Math.round(1 / step) + 0;
}

/** Total and pure: an impossible ratio leaves the state as it is, one beyond the ruler stops at its end. */
export function reduceRatio(state: RatioState, action: RatioAction): RatioState {
  switch (action.type) {
    case 'set':
      return { ...state, gainDb: allowed(action.gainDb, PRECISION), touched: true };
    case 'ratio':
      return fromRatio(state, action);
    case 'grasp':
      return { ...state, held: state.gainDb };
    case 'pull':
      return Number.isNaN(action.gainDb) ? state : { ...state, gainDb: allowed(action.gainDb, GAIN.step) };
    case 'release':
      return { ...state, held: undefined, touched: true };
    case 'cancel':
      return state.held === undefined ? state : { ...state, gainDb: state.held, held: undefined };
    case 'slip':
      return { ...state, slip: action.slip, touched: true };
    case 'reset':
      return { ...initialState(action.gainDb), touched: true };
    case 'open':
      return opened(state, { ...initialState(action.gainDb), slip: action.slip });
  }
}

function opened(state: RatioState, brought: RatioState): RatioState {
  const { gainDb, slip, held, touched } = state;
  if (!touched && held === undefined) return brought;
  return {
    gainDb: gainDb === PREPARED_DB ? brought.gainDb : gainDb,
    slip: slip === 'none' ? brought.slip : slip,
    held: held === undefined ? held : brought.gainDb,
    touched,
  };
}

function fromRatio(state: RatioState, { of, ratio }: { of: 'power' | 'volts'; ratio: number }): RatioState {
  if (!(Number.isFinite(ratio) && ratio > 0)) return state;
  const gainDb = of === 'power' ? powerRatioToDb(ratio) : amplitudeRatioToDb(ratio);
  return { ...state, gainDb: allowed(gainDb, PRECISION), touched: true };
}

/** What somebody who takes the wrong factor before the logarithm would call this ratio, in dB. */
export function slippedDb({ gainDb, slip }: Pick<RatioState, 'gainDb' | 'slip'>): number | undefined {
  if (slip === 'none') return undefined;
  return slip === 'tenForVolts' ? gainDb / 2 : gainDb * 2;
}
