import type { BenchAction } from './actions.ts';

/** The action with the time at which it was sent, where a change of what was agreed may be logged with it. */
export function stamped(action: BenchAction, at: string): BenchAction {
  switch (action.type) {
    case 'edit':
    case 'editPoint':
      return { ...action, at };
    default:
      return action;
  }
}
