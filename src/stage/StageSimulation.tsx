import { useState } from 'preact/hooks';
import type { Interval } from '#compute';
import type { Sheet } from '../sheet/sheet.ts';
import { countText } from '../text/count-text.ts';
import { levelText, numberText } from '../text/quantity-text.ts';
import { strings as simulationStrings } from '../widgets/simulation/strings.ts';
import { useSimulation } from '../widgets/simulation/use-simulation.ts';
import { strings } from './strings.ts';

export interface StageSimulationProps {
  readonly sheet: Sheet;
  /** The interval of the whole distribution, computed. */
  readonly whole: Interval;
}

/** Enough for the two decimals that are shown. */
const TRIALS = 1_000_000;
const DECIMALS = 2;

const between = ({ lower, upper }: Interval): string =>
  strings.between(
    numberText('shown', { value: lower, decimals: DECIMALS }),
    levelText('shown', { levelDbm: upper, decimals: DECIMALS }),
  );

/** A run of trials on the wall; the same presses give the same numbers. */
function Run({ sheet, onReset }: { readonly sheet: Sheet; readonly onReset: () => void }) {
  const { state, start, cancel } = useSimulation();
  const [seed, setSeed] = useState(1);
  const run = (): void => {
    start({ sheet, seed, stop: { kind: 'trials', trials: TRIALS } });
    setSeed(seed + 1);
  };
  const isRunning = state.kind === 'running';
  return (
    <>
      <p role="status">
        {state.kind === 'done' && (
          <>
            {strings.byTrials} <b class="key-number">{between(state.result.symmetric)}</b>
          </>
        )}
        {isRunning && simulationStrings.running(countText('shown', state.trials))}
        {state.kind === 'failed' && simulationStrings.failed(state.message)}
      </p>
      <p class="stage-trials needs-script">
        <button type="button" onClick={isRunning ? cancel : run}>
          {isRunning ? simulationStrings.cancel : strings.runTrials}
        </button>
        <button type="button" class="plain" data-deck="prepared" onClick={onReset}>
          {strings.prepared}
        </button>
      </p>
    </>
  );
}

/** The sum on the wall, and beside it what a million trials come to when they are asked for. */
export default function StageSimulation({ sheet, whole }: StageSimulationProps) {
  const [round, setRound] = useState(0);
  return (
    <div class="stage-simulation">
      <p>
        {strings.byShape} <b class="key-number">{between(whole)}</b>
      </p>
      <Run key={round} sheet={sheet} onReset={() => setRound(round + 1)} />
    </div>
  );
}
