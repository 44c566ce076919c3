import type { PowerKind } from '#compute';
import type { Plane } from '../../sheet/keyed.ts';
import type { KeyedState } from './spec.ts';
import { strings } from './strings.ts';
import { powerThere, watts } from './words.ts';

const KINDS: readonly PowerKind[] = ['mean', 'peakEnvelope', 'carrier'];
const PLANES: readonly Plane[] = ['socket', 'load'];
const DELIVERIES = ['incident', 'delivered'] as const;

/** Every power that could be meant, at once; the row that is meant says so by its weight and its line. */
export function PowersTable({ state }: { state: KeyedState }) {
  const { columns } = strings;
  const text = (power: number | undefined): string =>
    power === undefined ? strings.none : watts('shown', power);
  return (
    <table class="rungs slips">
      <caption>{strings.table}</caption>
      <thead>
        <tr>
          <th scope="col">{columns.power}</th>
          {DELIVERIES.map((delivery) => (
            <th key={delivery} scope="col" class="number">
              {columns[delivery]}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {PLANES.flatMap((plane) =>
          KINDS.map((kind) => (
            <tr
              key={plane + kind}
              class={plane === state.plane && kind === state.kind ? 'looked-at' : undefined}
            >
              <th scope="row">
                {strings.row({ kind: strings.kinds[kind], place: strings.shares.places[plane] })}
              </th>
              {DELIVERIES.map((delivery) => (
                <td key={delivery} class="number" data-label={columns[delivery]}>
                  {text(powerThere(state, { kind, plane, delivery }))}
                </td>
              ))}
            </tr>
          )),
        )}
      </tbody>
    </table>
  );
}
