import { dbText } from '../../text/quantity-text.ts';
import { apartDb } from './apart.ts';
import { ComparedTable } from './ComparedTable.tsx';
import type { SimulationProps } from './Simulation.tsx';
import { SimulationRun } from './SimulationRun.tsx';
import { strings } from './strings.ts';

/** The simulation, begun at once, and its interval beside the computed ones. */
export function SimulationTried({ sheet, whole, propagated }: SimulationProps) {
  return (
    <SimulationRun of={{ sheet }} about={undefined} begun>
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
  );
}
