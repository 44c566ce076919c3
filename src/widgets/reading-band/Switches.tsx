import type { BandChain } from '../../sheet/chain.ts';
import { COVERAGE_FACTOR } from '../../sheet/coverage.ts';
import type { BandAction, BandState } from './state.ts';
import { strings } from './strings.ts';

/** What is drawn beyond the strip, and what each part of the drawing means. */
export function Switches({
  state,
  chain,
  send,
}: {
  state: BandState;
  chain: BandChain;
  send: (action: BandAction) => void;
}) {
  const open = chain.result.worstCase.unlimited.length > 0;
  return (
    <div class="switches">
      {(['limits', 'curve'] as const).map((what) => (
        <label key={what} class="switch needs-script">
          <input
            type="checkbox"
            checked={what === 'limits' ? state.showLimits : state.showCurve}
            onChange={(event) => send({ type: 'show', what, on: event.currentTarget.checked })}
          />
          <span>{strings[what]}</span>
        </label>
      ))}
      <p class="small muted">
        {strings.stripNote(COVERAGE_FACTOR)} {state.showLimits && strings.limitsNote(open)}{' '}
        {state.showCurve && strings.curveNote}
      </p>
    </div>
  );
}
