import type { Picture } from '../../exchange/picture.ts';
import { measurementOf, sheetAt } from '../../sheet/at-point.ts';
import type { Measurement } from '../../sheet/measurement.ts';
import type { Decimal } from '../../text/style.ts';
import { readBand } from '../../widgets/reading-band/band-address.ts';
import { decodeEntries } from '../address/address.ts';
import { readMeasurement } from '../read/read-measurement.ts';
import { pointResult } from '../results/point-result.ts';
import { pictureOf } from './picture.ts';
import { pictureStrings as strings } from './picture-strings.ts';

/** A worked example whose figure is wanted, as its page writes it down. */
export interface FigureWish {
  /** The part of the bench's address after `#`. */
  readonly fragment: string;
  readonly assumptions: readonly string[];
  /** Where the page is found, without `https://`. */
  readonly address: string;
  /** Version of the site that works it out. */
  readonly version: string;
  readonly decimal?: Decimal;
  /** What stands behind the page's address, with what a reader has changed in the figure. */
  readonly query?: string;
  /** The page's own names of the links, in their order: by them the query says what it changes. */
  readonly linkIds?: readonly string[];
}

/** The sheet with what the query changes in it. The figure of a page and its picture must not say two things. */
function changedBy(query: string, linkIds: readonly string[], measurement: Measurement): Measurement {
  const [first] = measurement.points;
  if (first === undefined || measurement.links.length !== linkIds.length) return measurement;
  const plain = sheetAt(measurement, first.id);
  const links = plain.links.map((link, at) => ({ ...link, id: linkIds[at] ?? link.id }));
  const prepared = { sheet: { ...plain, links }, showLimits: true, showCurve: false };
  const { opened } = readBand(prepared, query, undefined);
  const untouched = { ...prepared, before: undefined, held: undefined, touched: false };
  return opened === undefined ? measurement : measurementOf(opened(untouched).sheet);
}

/**
 * The first point of a sheet as a picture that stands alone. Needs a document.
 * @throws RangeError for a sheet that cannot be used, or whose method is out of range.
 */
export function figureOfAddress({
  fragment,
  assumptions,
  query = '',
  linkIds = [],
  ...words
}: FigureWish): Picture {
  const read = readMeasurement(decodeEntries(fragment).entries).measurement;
  const measurement = read && changedBy(query, linkIds, read);
  const first = measurement?.points[0];
  if (measurement === undefined || first === undefined)
    throw new RangeError(`figureOfAddress: the sheet must be usable, got ${fragment.slice(0, 40)}`);
  const shown = pointResult(measurement, first.id);
  if (!shown.inRange)
    throw new RangeError(`figureOfAddress: the method must be in range, got ${shown.reason.code}`);
  return pictureOf(measurement, shown, { ...words, assumes: strings.assumed(assumptions), showCurve: true });
}
