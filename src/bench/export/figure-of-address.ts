import type { Picture } from '../../exchange/picture.ts';
import type { Decimal } from '../../text/style.ts';
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
}

/**
 * The first point of a sheet as a picture that stands alone. Needs a document.
 * @throws RangeError for a sheet that cannot be used, or whose method is out of range.
 */
export function figureOfAddress({ fragment, assumptions, ...words }: FigureWish): Picture {
  const { measurement } = readMeasurement(decodeEntries(fragment).entries);
  const first = measurement?.points[0];
  if (measurement === undefined || first === undefined)
    throw new RangeError(`figureOfAddress: the sheet must be usable, got ${fragment.slice(0, 40)}`);
  const shown = pointResult(measurement, first.id);
  if (!shown.inRange)
    throw new RangeError(`figureOfAddress: the method must be in range, got ${shown.reason.code}`);
  return pictureOf(measurement, shown, { ...words, assumes: strings.assumed(assumptions), showCurve: true });
}
