import type { PowerKind } from '#compute';
import type { Plane } from '../../sheet/keyed.ts';
import { NumbersTable } from '../parts/NumbersTable.tsx';
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
  const rows = PLANES.flatMap((plane) =>
    KINDS.map((kind) => ({
      id: plane + kind,
      name: strings.row({ kind: strings.kinds[kind], place: strings.shares.places[plane] }),
      cells: DELIVERIES.map((delivery) => text(powerThere(state, { kind, plane, delivery }))),
      isLookedAt: plane === state.plane && kind === state.kind,
    })),
  );
  return (
    <NumbersTable
      caption={strings.table}
      columns={[columns.power, ...DELIVERIES.map((delivery) => columns[delivery])]}
      rows={rows}
      folds
    />
  );
}
