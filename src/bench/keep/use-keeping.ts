import { useEffect, useRef, useState } from 'preact/hooks';
import type { StoreProblem } from '../../store/kept.ts';
import type { KeptLineProps } from './KeptLine.tsx';
import type { Keeper } from './keeper.ts';
import { type KeepingState, UNCHANGED } from './place.ts';
import { startKeeping } from './start-keeping.ts';

export interface Keeping {
  /** Nothing before it is known what the bench opens with. */
  readonly keeper: Keeper | undefined;
  readonly told: KeepingState;
  /** Why the kept sheet that was asked for is not open. */
  readonly problem: StoreProblem | undefined;
}

/** Opens what is kept, and keeps what stands on the bench from then on. */
export function useKeeping({ state, send, begun }: KeptLineProps): Keeping {
  const { sheet, entries } = state;
  const [told, setTold] = useState<KeepingState>(UNCHANGED);
  const [problem, setProblem] = useState<StoreProblem | undefined>(undefined);
  const [keeper, setKeeper] = useState<Keeper | undefined>(undefined);
  const latest = useRef({ sheet, entries });
  latest.current = { sheet, entries };
  useEffect(
    () =>
      startKeeping({
        begun,
        send,
        latest: () => latest.current,
        onState: setTold,
        onArrived(made, arrived) {
          setKeeper(made);
          setProblem(arrived.problem);
        },
      }),
    [send, begun],
  );
  useEffect(() => keeper?.show(sheet, entries), [keeper, sheet, entries]);
  return { keeper, told, problem };
}
