import { useState } from 'preact/hooks';
import type { Interval } from '#compute';
import type { Sheet } from '../../sheet/sheet.ts';
import { dbText, levelText, numberText } from '../../text/quantity-text.ts';
import type { SimulatedSheet } from './messages.ts';
import { strings } from './strings.ts';
import { useSimulation } from './use-simulation.ts';

export interface SimulationProps {
  readonly sheet: Sheet;
  /** The same interval by the two computed ways, to stand beside the tried one. */
  readonly whole: Interval;
  readonly propagated: Interval;
}

/** Enough trials for three steady digits, and done in about a second. */
const TRIALS = 1_000_000;

const count = (trials: number): string => numberText('shown', { value: trials, decimals: 0 });
const level = (levelDbm: number): string => levelText('shown', { levelDbm, decimals: 3 });

/**
 * The sum by trials. After using it a reader has seen that the computed interval is what a million random measurements
 * do, and that other random numbers move it only in the last digits.
 */
export default function Simulation({ sheet, whole, propagated }: SimulationProps) {
  const { state, start, cancel } = useSimulation();
  const [seed, setSeed] = useState(1);
  const run = (next: number): void => {
    setSeed(next);
    start({ sheet, seed: next, stop: { kind: 'trials', trials: TRIALS } });
  };
  return (
    <div class="simulation needs-script">
      <p class="measure">{strings.intro}</p>
      {state.kind === 'running' ? (
        <p class="simulation-running">
          <progress max={TRIALS} value={state.trials} aria-label={strings.progressLabel} />
          <button type="button" onClick={cancel}>
            {strings.cancel}
          </button>
        </p>
      ) : (
        <button type="button" onClick={() => run(state.kind === 'idle' ? seed : seed + 1)}>
          {state.kind === 'idle' ? strings.start : strings.again}
        </button>
      )}
      <p role="status">
        {state.kind === 'cancelled' && strings.cancelled(count(state.trials))}
        {state.kind === 'failed' && strings.failed(state.message)}
        {state.kind === 'done' && strings.done({ trials: count(state.result.trials), seed })}
      </p>
      {state.kind === 'done' && <Compared result={state.result} whole={whole} propagated={propagated} />}
    </div>
  );
}

function Compared({
  result,
  whole,
  propagated,
}: {
  result: SimulatedSheet;
  whole: Interval;
  propagated: Interval;
}) {
  const { symmetric } = result;
  const rows = [
    [strings.simulated, symmetric],
    [strings.whole, whole],
    [strings.propagated, propagated],
  ] as const;
  const apart = Math.max(Math.abs(symmetric.lower - whole.lower), Math.abs(symmetric.upper - whole.upper));
  return (
    <>
      <table>
        <caption>{strings.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{strings.way}</th>
            <th scope="col" class="number">
              {strings.lower}
            </th>
            <th scope="col" class="number">
              {strings.upper}
            </th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, { lower, upper }]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td class="number">{level(lower)}</td>
              <td class="number">{level(upper)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>{strings.agrees(dbText('shown', { db: apart, decimals: 3 }))}</p>
    </>
  );
}
