import { halfSpanFor } from '../../figures/reading-band.layout.ts';
import type { BandRow } from '../../figures/reading-band.types.ts';
import { BandFigure } from '../../widgets/parts/BandFigure.tsx';
import { bandRows } from '../../widgets/parts/band-rows.ts';
import type { BenchChain } from '../chain.ts';
import { inputLabel } from '../input-labels.ts';
import { drawnSpecification, reachOfChain } from '../reach.ts';
import type { BenchAction, BenchState } from '../state.ts';
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

/** Longest name and longest statement that a row of the figure has room for, in characters. */
const LONGEST = { label: 28, detail: 44 } as const;

const cut = (text: string, length: number): string =>
  text.length > length ? `${text.slice(0, length - 1).trimEnd()}…` : text;

/** A row with its own name and with words that fit: in full they stand in the form and in the table. */
const fitted = (row: BandRow, { sheet, rungs }: BenchChain): BandRow => ({
  ...row,
  label: cut(rungs.some(({ id }) => id === row.id) ? inputLabel(sheet, row.id) : row.label, LONGEST.label),
  detail: cut(row.detail, LONGEST.detail),
});

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
        rows={bandRows({ chain, before, showLimits, showCurve, handles: true }).map((row) =>
          fitted(row, chain),
        )}
        centreDbm={chain.result.estimate}
        halfSpanDb={halfSpanFor(reach)}
        specification={drawnSpecification(chain)}
        name={words.figureName}
        description={words.figureDescription(summary)}
        onGrasp={() => send({ type: 'grasp' })}
        onPull={(id, expandedDb) => send({ type: 'pull', id, expandedDb })}
        onRelease={() => send({ type: 'release' })}
        onCancel={() => send({ type: 'cancel' })}
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
