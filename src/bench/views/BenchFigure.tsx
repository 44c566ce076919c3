import { BandFigure } from '../../widgets/parts/BandFigure.tsx';
import { pulling } from '../../widgets/parts/pulling.ts';
import type { BenchChain } from '../results/chain.ts';
import { benchBand } from '../results/figure-rows.ts';
import { reachOfChain } from '../results/reach.ts';
import type { BenchAction, BenchState } from '../state/state.ts';
import { strings } from '../strings.ts';

interface BenchFigureProps {
  readonly chain: BenchChain;
  readonly before: BenchChain | undefined;
  /** The chain when a handle was grasped: the axis must not move under the pointer. */
  readonly held: BenchChain | undefined;
  readonly state: BenchState;
  readonly summary: string;
  readonly send: (action: BenchAction) => void;
}

/** The reading band of the sheet with its specification, and what of it is drawn. */
export function BenchFigure({ chain, before, held, state, summary, send }: BenchFigureProps) {
  const words = strings.result;
  const reach = held
    ? reachOfChain(held)
    : Math.max(reachOfChain(chain), before === undefined ? 0 : reachOfChain(before));
  const { showLimits, showCurve } = state;
  return (
    <>
      <BandFigure
        {...benchBand({ chain, before, showLimits, showCurve, handles: true }, reach)}
        name={words.figureName}
        description={words.figureDescription(summary)}
        {...pulling(send)}
        onPull={(id, expandedDb) => send({ type: 'pull', id, expandedDb })}
      />
      {chain.undrawn > 0 && (
        <p>{words.undrawn({ drawn: chain.rungs.length, all: chain.model.inputs.length })}</p>
      )}
      <div class="switches needs-script">
        <label class="switch">
          <input
            type="checkbox"
            checked={showLimits}
            onChange={(event) => send({ type: 'show', what: 'limits', on: event.currentTarget.checked })}
          />
          <span>{words.limits}</span>
        </label>
        <label class="switch">
          <input
            type="checkbox"
            checked={showCurve}
            onChange={(event) => send({ type: 'show', what: 'curve', on: event.currentTarget.checked })}
          />
          <span>{words.curve}</span>
        </label>
      </div>
    </>
  );
}
