import type { SimulatedSheet, SimulationNews } from './messages.ts';

export type SimulationState =
  | { readonly kind: 'idle' }
  | { readonly kind: 'running'; readonly trials: number; readonly wanted: number | undefined }
  | { readonly kind: 'cancelled'; readonly trials: number }
  | { readonly kind: 'failed'; readonly message: string }
  | { readonly kind: 'done'; readonly result: SimulatedSheet };

export type SimulationAction = { readonly kind: 'start' } | { readonly kind: 'cancel' } | SimulationNews;

export const idle: SimulationState = { kind: 'idle' };

/** Total and pure. News that arrives when nothing runs any more (a cancelled worker's last word) changes nothing. */
export function reduceSimulation(state: SimulationState, action: SimulationAction): SimulationState {
  if (action.kind === 'start') return { kind: 'running', trials: 0, wanted: undefined };
  if (state.kind !== 'running') return state;
  switch (action.kind) {
    case 'cancel':
      return { kind: 'cancelled', trials: state.trials };
    case 'progress':
      return { kind: 'running', trials: action.trials, wanted: action.wanted };
    case 'done':
      return { kind: 'done', result: action.result };
    case 'failed':
      return { kind: 'failed', message: action.message };
  }
}
