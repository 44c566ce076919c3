import { blankPoint, type PointEntries, type SheetEntries } from '../../sheet/entries.ts';
import { MOST_POINTS } from '../read/spec.ts';
import { changed, changedIn, freeId } from './changed.ts';

/** One point changed. */
export function editPoint(entries: SheetEntries, id: string, change: Partial<PointEntries>): SheetEntries {
  const points = changedIn(entries.points, id, (point) => changed(point, change));
  return points === entries.points ? entries : { ...entries, points };
}

/** A new point after the last one, with its specification and nothing read yet. */
export function addPoint(entries: SheetEntries): SheetEntries {
  const { points } = entries;
  if (points.length >= MOST_POINTS) return entries;
  const { specification, nominal, tolerance, above, below, lowest, highest } =
    points.at(-1) ?? blankPoint('');
  const demanded = { specification, nominal, tolerance, above, below, lowest, highest };
  return { ...entries, points: [...points, { ...blankPoint(unusedId(entries)), ...demanded }] };
}

/** An id that no point has, nor one had that the log still speaks of. */
const unusedId = ({ points, log }: SheetEntries): string =>
  freeId('point', [
    ...points,
    ...(log.read ?? []).filter((id) => !points.some((point) => point.id === id)).map((id) => ({ id })),
  ]);

/** Without one point; the last one stays. */
export function removePoint(entries: SheetEntries, id: string): SheetEntries {
  const points = entries.points.filter((point) => point.id !== id);
  return points.length === entries.points.length || points.length === 0 ? entries : { ...entries, points };
}
