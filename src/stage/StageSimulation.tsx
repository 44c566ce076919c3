import { useEffect } from 'preact/hooks';
import type { Interval } from '#compute';
import type { Sheet } from '../sheet/sheet.ts';
import { countText } from '../text/count-text.ts';
import { levelText, numberText } from '../text/quantity-text.ts';
import { strings as simulationStrings } from '../widgets/simulation/strings.ts';
import { useSimulation } from '../widgets/simulation/use-simulation.ts';
import { useMirrored } from './mirror.ts';
import { strings } from './strings.ts';

export interface StageSimulationProps {
  readonly sheet: Sheet;
  /** The interval of the whole distribution, computed. */
  readonly whole: Interval;
}

/** Enough for the two decimals that are shown. */
const TRIALS = 1_000_000;
const DECIMALS = 2;

const between = ({ lower, upper }: Interval, style: 'shown' | 'spoken' = 'shown'): string =>
  strings.between(
    numberText(style, { value: lower, decimals: DECIMALS }),
    levelText(style, { levelDbm: upper, decimals: DECIMALS }),
  );

/** What was asked of the trials since they were reset; each window that shows them does it by itself. */
interface Asked {
  readonly round: number;
  /** Of the last run; 0 before the first. The same presses give the same numbers. */
  readonly seed: number;
  readonly isStopped: boolean;
}

const ASKED: Asked = { round: 0, seed: 0, isStopped: false };

function asked({ round, seed }: Asked, what: 'run' | 'stop' | 'reset'): Asked {
  if (what === 'reset') return { ...ASKED, round: round + 1 };
  return { round, seed: what === 'run' ? seed + 1 : seed, isStopped: what === 'stop' };
}

/** A run of trials on the wall. */
function Run({ sheet, of, ask }: { sheet: Sheet; of: Asked; ask: (what: 'run' | 'stop' | 'reset') => void }) {
  const { state, start, cancel } = useSimulation();
  useEffect(() => {
    if (of.seed > 0) start({ sheet, seed: of.seed, stop: { kind: 'trials', trials: TRIALS } });
  }, [of.seed]);
  useEffect(() => {
    if (of.isStopped) cancel();
  }, [of.isStopped]);
  const isRunning = state.kind === 'running';
  return (
    <>
      <p>
        {state.kind === 'done' && (
          <>
            {strings.byTrials} <b class="key-number">{between(state.result.symmetric)}</b>
          </>
        )}
        {isRunning && simulationStrings.running(countText('shown', state.trials))}
        {state.kind === 'failed' && simulationStrings.failed(state.message)}
      </p>
      {/* the end alone is spoken, not each of the counts on the way */}
      <p class="visually-hidden" role="status">
        {state.kind === 'done' && `${strings.byTrials} ${between(state.result.symmetric, 'spoken')}`}
        {state.kind === 'failed' && simulationStrings.failed(state.message)}
      </p>
      <p class="stage-trials needs-script">
        <button type="button" onClick={() => ask(isRunning ? 'stop' : 'run')}>
          {isRunning ? simulationStrings.cancel : strings.runTrials}
        </button>
        <button type="button" class="plain" data-deck="prepared" onClick={() => ask('reset')}>
          {strings.prepared}
        </button>
      </p>
    </>
  );
}

/** The sum on the wall, and beside it what a million trials come to when they are asked for. */
export default function StageSimulation({ sheet, whole }: StageSimulationProps) {
  const [of, ask] = useMirrored(asked, ASKED);
  return (
    <div class="stage-simulation">
      <p>
        {strings.byShape} <b class="key-number">{between(whole)}</b>
      </p>
      <Run key={of.round} sheet={sheet} of={of} ask={ask} />
    </div>
  );
}
