import type { Tried } from '../../sheet/tried.ts';
import type { TriesNews } from './messages.ts';

/** How a run stands, with the last thing that came of it: what is shown always says itself what it is of. */
export interface RunState {
  readonly kind: 'still' | 'running' | 'stopped' | 'failed';
  readonly tried: Tried;
  readonly message?: string;
}

export type RunAction =
  | { readonly kind: 'start' }
  | { readonly kind: 'stop' }
  /** Back to what was made beforehand. */
  | { readonly kind: 'prepared'; readonly tried: Tried }
  | TriesNews;

/** Total and pure. News that arrives when nothing runs any more changes nothing. */
export function reduceRun(state: RunState, action: RunAction): RunState {
  if (action.kind === 'start') return { kind: 'running', tried: state.tried };
  if (action.kind === 'prepared') return { kind: 'still', tried: action.tried };
  if (state.kind !== 'running') return state;
  switch (action.kind) {
    case 'stop':
      return { kind: 'stopped', tried: state.tried };
    case 'far':
      return { kind: 'running', tried: action.tried };
    case 'done':
      return { kind: 'still', tried: action.tried };
    case 'failed':
      return { kind: 'failed', tried: state.tried, message: action.message };
  }
}
