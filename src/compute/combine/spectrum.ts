import type { Distribution } from '../distribution/distribution.ts';
import { isMember } from '../distribution/standard.ts';
import { type Cells, cellCharacteristics } from './cells.ts';
import { characteristicAlong } from './characteristic.ts';
import { type Extent, FINENESS, MOST_CELLS, spreadOf } from './extent.ts';
import type { Complex } from './fourier.ts';
import type { Reference } from './reference.ts';

/** Cells for each frequency used; with two, the upper half of the frequencies would be off by up to a tenth. */
const CELLS_PER_FREQUENCY = 4;
/** At least so many, however little there is to see. */
const FEWEST_CELLS = 2 ** 9;
/** A sum of a few parts with sharp edges needs these. */
const USUAL_CELLS = 2 ** 13;
/** Cells are doubled while more than this may be left of the sum at the last frequency used. */
const FADED = 1e-8;
/** The series stops after this many terms in a row below `NEGLIGIBLE`. */
const QUIET_RUN = 8;
const NEGLIGIBLE = 1e-11;

/** Terms of the Fourier series at w_j = 2 pi j/period, j from 1; entry 0 is unused. */
export interface Spectrum extends Complex {
  readonly count: number;
  readonly period: number;
}

/**
 * A bound of what is left of a part at frequency w. A U shape fades slowest of the bounded ones, as sqrt(2/(pi w a)) with
 * a = sqrt(2) times its standard deviation; t with one degree of freedom slowest of the smooth ones, as exp(-w s).
 */
function boundOf(part: Distribution, w: number): number {
  const turns = w * spreadOf(part);
  const bounded = Number.isFinite(part.limits.upper - part.limits.lower);
  return bounded ? Math.min(1, Math.sqrt(Math.SQRT2 / (Math.PI * turns))) : Math.exp(-turns / 2);
}

const boundAt = (parts: readonly Distribution[], w: number) =>
  parts.reduce((bound, part) => bound * boundOf(part, w), 1);

/** Enough cells for the frequencies that matter, and fine against the sum's spread however long its tails. */
function cellsFor(parts: readonly Distribution[], { period, spread }: Extent): Cells {
  let size = FEWEST_CELLS;
  while (size < USUAL_CELLS && boundAt(parts, (2 * Math.PI * size) / (CELLS_PER_FREQUENCY * period)) > FADED)
    size *= 2;
  while (size < MOST_CELLS && period / size > spread / FINENESS) size *= 2;
  return { period, size };
}

/** A characteristic function that multiplies entry j of a product, in place. */
type Factor = (product: { re: number; im: number }, j: number) => void;

/** By the formula of its shape, where that has one. */
function byFormula(part: Distribution, step: number): Factor | undefined {
  const along = isMember(part) ? characteristicAlong(part.standard, part.scale * step) : undefined;
  return (
    along &&
    ((product, j) => {
      const value = along(j);
      product.re *= value;
      product.im *= value;
    })
  );
}

function byCells({ re, im }: Complex): Factor {
  return (product, j) => {
    const a = product.re;
    const b = product.im;
    const c = re[j] as number;
    const d = im[j] as number;
    product.re = a * c - b * d;
    product.im = a * d + b * c;
  };
}

/** Flat to the eighth power, then down to 1e-16: rids a series that was cut off of most of its ripple. */
function taper(spectrum: Complex, count: number): void {
  for (let j = 1; j <= count; j++) {
    const factor = Math.exp(-36 * (j / count) ** 8);
    spectrum.re[j] = (spectrum.re[j] as number) * factor;
    spectrum.im[j] = (spectrum.im[j] as number) * factor;
  }
}

/** Characteristic function of the sum about its centre, less the reference's, for as many frequencies as matter. */
export function spectrumOf(
  parts: readonly Distribution[],
  extent: Extent,
  reference: Reference | undefined,
): Spectrum {
  const cells = cellsFor(parts, extent);
  const most = cells.size / CELLS_PER_FREQUENCY;
  const known = parts.map((part) => byFormula(part, (2 * Math.PI) / cells.period));
  const others = parts.filter((_, index) => known[index] === undefined);
  const factors = [
    ...known.filter((factor) => factor !== undefined),
    ...cellCharacteristics(others, cells, most).map(byCells),
  ];
  const re = new Float64Array(most + 1);
  const im = new Float64Array(most + 1);
  const product = { re: 1, im: 0 };
  const standIn = reference?.characteristicAlong((2 * Math.PI) / extent.period);
  let quiet = 0;
  let count = 0;
  while (count < most && quiet < QUIET_RUN) {
    count++;
    product.re = 1;
    product.im = 0;
    for (const factor of factors) factor(product, count);
    if (standIn) product.re -= standIn(count);
    re[count] = product.re;
    im[count] = product.im;
    quiet = Math.abs(product.re) + Math.abs(product.im) < NEGLIGIBLE ? quiet + 1 : 0;
  }
  if (quiet < QUIET_RUN) taper({ re, im }, count);
  return { re, im, count, period: extent.period };
}
