import { countText } from '../../text/count-text.ts';
import { quantityText } from '../../text/quantity-text.ts';
import type { RunState } from './run-state.ts';
import { strings } from './strings.ts';

interface RunLineProps {
  readonly run: RunState;
  readonly onAgain: () => void;
  readonly onStop: () => void;
}

/** What is being tried or has been, and the button that stops it or tries again. How far it is goes by too fast to be spoken. */
export function RunLine({ run, onAgain, onStop }: RunLineProps) {
  const isRunning = run.kind === 'running';
  return (
    <>
      <p role="status">
        <span aria-hidden={isRunning}>{toldOf(run)}</span>
      </p>
      <p class="needs-script">
        <button type="button" onClick={isRunning ? onStop : onAgain}>
          {isRunning ? strings.run.stop : strings.run.again}
        </button>
      </p>
    </>
  );
}

/** How a run stands, in a sentence. */
export function toldOf({ kind, tried, message = '' }: RunState): string {
  const { run } = strings;
  const count = countText('shown', tried.trials);
  const seed = countText('shown', tried.order.seed);
  if (kind === 'running') return run.running(count);
  if (kind === 'stopped') return run.stopped(count);
  if (kind === 'failed') return run.failed(message);
  if (tried.tolerance === undefined) return run.done({ count, seed });
  if (!tried.settled) return run.unsettled({ count });
  const decimals = Math.max(0, Math.ceil(-Math.log10(tried.tolerance)));
  const tolerance = quantityText('shown', {
    value: tried.tolerance,
    decimals,
    unit: strings.units[tried.order.model],
  });
  return run.settled({ count, seed, tolerance });
}
