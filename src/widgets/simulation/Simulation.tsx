import { useState } from 'preact/hooks';
import type { Interval } from '#compute';
import type { Sheet } from '../../sheet/sheet.ts';
import { openingStrings as strings } from './opening-strings.ts';

export interface SimulationProps {
  readonly sheet: Sheet;
  /** The same interval by the two computed ways, to stand beside the tried one. */
  readonly whole: Interval;
  readonly propagated: Interval;
}

type Tried = typeof import('./SimulationTried.tsx');

/**
 * The sum by trials, fetched when it is asked for. After using it a reader has seen that the computed interval is what a million
 * random measurements do, and that other random numbers move it only in the last digits.
 */
export default function Simulation(props: SimulationProps) {
  const [tried, setTried] = useState<Tried | undefined>(undefined);
  const [failed, setFailed] = useState(false);
  const begin = (): void => {
    setFailed(false);
    import('./SimulationTried.tsx').then(
      (module) => setTried(module),
      () => setFailed(true),
    );
  };
  return (
    <div class="simulation needs-script">
      <p class="measure">{strings.intro}</p>
      {tried ? (
        <tried.SimulationTried {...props} />
      ) : (
        <>
          <p>
            <button type="button" onClick={begin}>
              {strings.start}
            </button>
          </p>
          <p role="status">{failed && strings.failed(strings.notFetched)}</p>
        </>
      )}
    </div>
  );
}
