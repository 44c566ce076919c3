import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { countText } from '../../text/count-text.ts';
import type { Simulable, SimulatedSheet } from './messages.ts';
import { strings } from './strings.ts';
import { useSimulation } from './use-simulation.ts';

interface SimulationRunProps<About> {
  /** What is simulated when it is asked for. */
  readonly of: Simulable;
  /** What belongs to it and does not travel; handed back with a result, when something else may be shown already. */
  readonly about: About;
  /** Whether it starts by itself when it is first there. */
  readonly begun?: boolean;
  /** What is to be said of a run while it goes on and after it. */
  readonly note?: (about: About) => ComponentChildren;
  readonly children: (result: SimulatedSheet, about: About) => ComponentChildren;
}

/** Enough trials for three steady digits, and done in about a second. */
const TRIALS = 1_000_000;

const count = (trials: number): string => countText('shown', trials);

/** Buttons that start and stop a simulation, its progress, and its result; each run takes the next seed. */
export function SimulationRun<About>({
  of,
  about,
  begun = false,
  note,
  children,
}: SimulationRunProps<About>) {
  const { state, start, cancel } = useSimulation();
  const [last, setLast] = useState({ about, seed: 0 });
  const run = (): void => {
    const seed = last.seed + 1;
    setLast({ about, seed });
    start({ ...of, seed, stop: { kind: 'trials', trials: TRIALS } });
  };
  useEffect(() => {
    if (begun) run();
  }, []);
  return (
    <>
      {state.kind === 'running' ? (
        <p class="simulation-running">
          <progress max={TRIALS} value={state.trials} aria-label={strings.progressLabel} />
          <button type="button" onClick={cancel}>
            {strings.cancel}
          </button>
        </p>
      ) : (
        <p>
          <button type="button" onClick={run}>
            {state.kind === 'idle' ? strings.start : strings.again}
          </button>
        </p>
      )}
      <p role="status">
        {state.kind === 'cancelled' && strings.cancelled(count(state.trials))}
        {state.kind === 'failed' && strings.failed(state.message)}
        {state.kind === 'done' && strings.done({ trials: count(state.result.trials), seed: last.seed })}
      </p>
      {(state.kind === 'running' || state.kind === 'done') && note?.(last.about)}
      {state.kind === 'done' && children(state.result, last.about)}
    </>
  );
}
