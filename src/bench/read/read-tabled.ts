import type { TabledCorrection } from '#compute';
import type { LinkEntries } from '../../sheet/entries.ts';
import type { TabledStatement } from '../../sheet/measurement.ts';
import { fewestDecimals } from '../../text/place.ts';
import { quantityText } from '../../text/quantity-text.ts';
import type { ReadSpec } from '../../text/read/quantity.ts';
import { readRows } from '../../text/read/rows.ts';
import type { LinkReader } from './link-reader.ts';
import { amountSpec, endSpec, LINK_SPECS } from './link-spec.ts';
import { POINT_SPECS } from './point-spec.ts';
import { problemStrings as strings } from './problem-strings.ts';
import { HZ_PER_MHZ, LEVEL } from './spec.ts';

/** Nobody states a frequency in megahertz, or a level, to more decimals than this. */
const PLACE_DECIMALS = 6;

/** A place in a table as text: `3.58 MHz`, `-10 dBm`. */
export function placeText(by: LinkEntries['by'], at: number): string {
  const value = by === 'frequency' ? at / HZ_PER_MHZ : at;
  const unit = by === 'frequency' ? 'MHz' : 'dBm';
  return quantityText('shown', { value, decimals: fewestDecimals(value, PLACE_DECIMALS), unit });
}

/** A certificate's table, a line for each frequency or level. */
export function readTabled(reader: LinkReader): TabledStatement {
  const { entries, number, optional } = reader;
  const degreesOfFreedom = optional('freedom', LINK_SPECS.freedom);
  return {
    form: 'corrections',
    by: entries.by,
    points: readPoints(reader),
    coverageFactor: number('factor', LINK_SPECS.factor),
    ...(degreesOfFreedom !== undefined && { degreesOfFreedom }),
  };
}

/** The lines of a table; the first thing that is wrong is told, since one field holds them all. */
function readPoints({ entries, tell }: LinkReader): readonly TabledCorrection[] {
  const { by, unit, table } = entries;
  const place: ReadSpec = by === 'frequency' ? POINT_SPECS.frequency : LEVEL;
  const { rows, problems } = readRows(table, [place, endSpec(unit), amountSpec(unit)]);
  const scale = by === 'frequency' ? HZ_PER_MHZ : 1;
  const points = rows.map(({ values: [at = 0, correction = 0, expanded = 0] }) => ({
    at: at * scale,
    correction,
    expanded,
  }));
  const twice = points.find(({ at }, index) => points.findIndex((other) => other.at === at) < index);
  const [first] = problems;
  if (first !== undefined)
    tell('table', strings.tableLine(first.line, first.problem ?? strings.tableCells(first.text)));
  else if (twice !== undefined) tell('table', strings.tableTwice(placeText(by, twice.at)));
  else if (points.length < 2) tell('table', strings.tableShort);
  return points;
}
