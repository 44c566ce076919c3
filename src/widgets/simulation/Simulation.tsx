import type { Interval } from '#compute';
import type { Sheet } from '../../sheet/sheet.ts';
import { dbText } from '../../text/quantity-text.ts';
import { apartDb } from './apart.ts';
import { ComparedTable } from './ComparedTable.tsx';
import { SimulationRun } from './SimulationRun.tsx';
import { strings } from './strings.ts';

export interface SimulationProps {
  readonly sheet: Sheet;
  /** The same interval by the two computed ways, to stand beside the tried one. */
  readonly whole: Interval;
  readonly propagated: Interval;
}

/**
 * The sum by trials. After using it a reader has seen that the computed interval is what a million random measurements
 * do, and that other random numbers move it only in the last digits.
 */
export default function Simulation({ sheet, whole, propagated }: SimulationProps) {
  return (
    <div class="simulation needs-script">
      <p class="measure">{strings.intro}</p>
      <SimulationRun of={{ sheet }} about={undefined}>
        {({ symmetric }) => (
          <>
            <ComparedTable
              ways={[
                { name: strings.simulated, interval: symmetric },
                { name: strings.whole, interval: whole },
                { name: strings.propagated, interval: propagated },
              ]}
            />
            <p>{strings.agrees(dbText('shown', { db: apartDb(symmetric, whole), decimals: 3 }))}</p>
          </>
        )}
      </SimulationRun>
    </div>
  );
}
