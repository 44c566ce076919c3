import type { PointEntries } from '../../sheet/entries.ts';
import type { Point } from '../../sheet/measurement.ts';
import { COLUMNS_OF } from '../../sheet/method.ts';
import { fewestDecimals } from '../../text/place.ts';
import { quantityText } from '../../text/quantity-text.ts';
import { pointPath } from '../form/keys.ts';
import { strings } from '../strings.ts';
import { collector, type EntryProblem } from './collector.ts';
import { type PointContext, pointFieldLabel } from './point-context.ts';
import { POINT_SPECS } from './point-spec.ts';
import { problemStrings } from './problem-strings.ts';
import { readColumns } from './read-columns.ts';
import { readOnce } from './read-once.ts';
import { readSpecification } from './read-specification.ts';
import { FREQUENCY_DECIMALS, HZ_PER_MHZ } from './spec.ts';

/** Whether nothing was read at a point while something was at another: it waits for its turn and holds nothing up. */
function isWaiting({ entries, sheet }: PointContext): boolean {
  const isEmpty = (point: PointEntries): boolean =>
    COLUMNS_OF[sheet.method].every((column) => point[column].trim() === '');
  return isEmpty(entries) && !sheet.points.every(isEmpty);
}

/**
 * The point that the entries stand for; what is wrong with them goes to the collector. Undefined where nothing was read at it yet
 * while something was at another.
 */
export function readPoint(context: PointContext): Point | undefined {
  const { entries, sheet, position, collect } = context;
  const { method, delivery, points } = sheet;
  const waiting = isWaiting(context);
  const key = `${method} ${delivery} ${position} ${points.length === 1} ${waiting}`;
  const { point, problems } = pointOnce(entries, key, () => {
    const own = collector();
    return { point: readOne({ ...context, collect: own }, waiting), problems: own.problems };
  });
  for (const problem of problems) collect.add(problem);
  return point;
}

const pointOnce = readOnce<
  PointEntries,
  { readonly point: Point | undefined; readonly problems: readonly EntryProblem[] }
>();

function readOne(context: PointContext, waiting: boolean): Point | undefined {
  const { entries, sheet, position, collect } = context;
  const at = {
    path: pointPath(entries.id, 'frequency'),
    label: pointFieldLabel(context, strings.point.labels.frequency),
  };
  const megahertz = collect.optional({ ...at, text: entries.frequency, spec: POINT_SPECS.frequency });
  if (!waiting && sheet.method === 'oscilloscope' && entries.frequency.trim() === '')
    collect.add({ ...at, problem: problemStrings.noFrequency });
  const specification = readSpecification(context);
  if (waiting) return undefined;
  const columns = readColumns(context);
  return {
    id: entries.id,
    label: labelOf(entries.label, megahertz, position),
    ...(entries.label.trim() === '' && { unnamed: true as const }),
    ...(megahertz !== undefined && { frequencyHz: megahertz * HZ_PER_MHZ }),
    specification,
    ...(entries.specification === 'licence' && { licence: true as const }),
    columns,
  };
}

/** The reader's own name, else the frequency, else the place. */
function labelOf(label: string, megahertz: number | undefined, position: number): string {
  if (label.trim() !== '') return label.trim();
  if (megahertz === undefined) return strings.point.unnamed(position);
  const decimals = fewestDecimals(megahertz, FREQUENCY_DECIMALS);
  return quantityText('shown', { value: megahertz, decimals, unit: 'MHz' });
}
