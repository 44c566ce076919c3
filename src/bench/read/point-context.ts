import type { PointEntries, SheetEntries } from '../../sheet/entries.ts';
import { isolated } from '../../text/isolate.ts';
import { strings } from '../strings.ts';
import type { Collector } from './collector.ts';

/** What a reader of a point's fields is given. */
export interface PointContext {
  readonly entries: PointEntries;
  readonly sheet: SheetEntries;
  /** Place among the points, from 1. */
  readonly position: number;
  readonly collect: Collector;
}

/** Name of a field in the list of all problems: with the point's own name where there are several. */
export function pointFieldLabel(
  { entries, sheet, position }: Omit<PointContext, 'collect'>,
  label: string,
): string {
  if (sheet.points.length === 1) return label;
  return strings.point.fieldOf(isolated(entries.label.trim()) || strings.point.unnamed(position), label);
}
