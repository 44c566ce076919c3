import type { SheetEntries } from '../../sheet/entries.ts';
import type { Measurement, Point, StatedLink, TabledStatement } from '../../sheet/measurement.ts';
import { placeIn } from '../../sheet/resolve-corrections.ts';
import { isolated } from '../../text/isolate.ts';
import { linkPath } from '../form/keys.ts';
import { strings } from '../strings.ts';
import type { EntryProblem } from './collector.ts';
import { linkLabel } from './link-reader.ts';
import { problemStrings } from './problem-strings.ts';
import { placeText } from './read-tabled.ts';

type Tabled = StatedLink & { readonly stated: TabledStatement };

const isTabled = (link: StatedLink): link is Tabled => link.stated.form === 'corrections';

/**
 * The first table of corrections that says nothing at a point: because its frequency is not known, or because it lies beyond the ends.
 * Undefined where there is none.
 * @throws RangeError for readings that no level exists of.
 */
export function tabledProblem(
  measurement: Measurement,
  point: Point,
  { links }: SheetEntries,
): EntryProblem | undefined {
  for (const link of measurement.links) {
    const problem = link.off || !isTabled(link) ? undefined : problemOf(measurement, point, link);
    if (problem === undefined) continue;
    const index = links.findIndex(({ id }) => id === link.id);
    const entries = links[index];
    const name = entries ? linkLabel(entries, index + 1) : link.label;
    const label = strings.link.fieldOf(isolated(name), strings.link.labels.table);
    return { path: linkPath(link.id, 'table'), label, problem };
  }
  return undefined;
}

function problemOf(measurement: Measurement, point: Point, { stated }: Tabled): string | undefined {
  const { setup, measurand, points } = measurement;
  const { columns, frequencyHz } = point;
  const reading = { setup, columns, ...(frequencyHz !== undefined && { frequencyHz }) };
  const at = placeIn(stated, reading, measurand.delivery ?? 'intoIdeal');
  const name = points.length > 1 ? isolated(point.label) : problemStrings.thisPoint;
  if (at === undefined) return problemStrings.tableNoFrequency(name);
  const places = stated.points.map((each) => each.at);
  const [from, to] = [Math.min(...places), Math.max(...places)];
  if (at >= from && at <= to) return undefined;
  const text = (place: number): string => placeText(stated.by, place);
  return problemStrings.tableEnds({ point: name, at: text(at), from: text(from), to: text(to) });
}
