import type { Distribution } from '../distribution/distribution.ts';
import { quantileFromAbove } from '../distribution/standard.ts';
import { unitNodes } from '../special/integrate.ts';
import { sinc } from '../special/sinc.ts';
import { centreOf, spreadOf } from './extent.ts';
import { type Complex, halfTurn, transformPair } from './fourier.ts';

/** Cells of one width that cover one period; `size` is a power of two. */
export interface Cells {
  readonly period: number;
  readonly size: number;
}

/** The part to be cut into cells, and where the middle of the cells is put. */
interface Placed {
  readonly part: Distribution;
  readonly centre: number;
  readonly cells: Cells;
}

/** Shares below this are not worth a cell. */
const LEAST_SHARE = 1e-10;
/** A smooth density this many cells wide is known from its values at their middles. */
const SMOOTH_WIDTH = 3;
const FEWEST_PANELS = 64;
/** Places of the two nodes of Gauss in a panel of 0 to 2: 1 -+ this, less the node's own number. */
const GAUSS = Math.sqrt(1 / 3);

/** Shares from the density at the middle of each cell: quick, and right to rounding where the density is smooth. */
function fillByDensity({ part, centre, cells: { period, size } }: Placed, into: Float64Array): void {
  const width = period / size;
  const first = Math.max(-size / 2, Math.floor((part.quantile(LEAST_SHARE) - centre) / width));
  const last = Math.min(size / 2 - 1, Math.ceil((part.quantile(1 - LEAST_SHARE) - centre) / width));
  let total = 0;
  for (let k = first; k <= last; k++) {
    const density = part.density(centre + k * width);
    into[k & (size - 1)] = density;
    total += density;
  }
  // what lies beyond the cells is taken to lie at their ends
  const below = part.shareBelow(centre + (first - 0.5) * width);
  const above = 1 - part.shareBelow(centre + (last + 0.5) * width);
  for (let k = 0; k < size; k++) into[k] = ((into[k] as number) / total) * (1 - below - above);
  into[first & (size - 1)] = (into[first & (size - 1)] as number) + below;
  into[last & (size - 1)] = (into[last & (size - 1)] as number) + above;
}

/** Spreads a share over the four cells around `place` (in cells from the middle) by a cubic B-spline. */
function deposit(into: Float64Array, place: number, share: number): void {
  const cell = Math.floor(place);
  const t = place - cell;
  const r = 1 - t;
  const mask = into.length - 1;
  const add = (k: number, weight: number) => {
    into[k & mask] = (into[k & mask] as number) + share * weight;
  };
  add(cell - 1, (r * r * r) / 6);
  add(cell, 2 / 3 - t * t * (1 - t / 2));
  add(cell + 1, 2 / 3 - r * r * (1 - r / 2));
  add(cell + 2, (t * t * t) / 6);
}

/** Shares from the quantile function: panels of two Gauss nodes for what is bounded, nodes that follow the tails otherwise. */
function fillByQuantile({ part, centre, cells: { period, size } }: Placed, into: Float64Array): void {
  const width = period / size;
  const { lower, upper } = part.limits;
  if (Number.isFinite(upper - lower)) {
    const panels = Math.max(FEWEST_PANELS, Math.ceil((upper - lower) / width));
    for (let k = 0; k < 2 * panels; k++) {
      const t = (k + (k % 2 === 0 ? 1 - GAUSS : GAUSS)) / (2 * panels);
      // Ranks crowd at both ends, where quantiles may run like a square root: in t they are smooth.
      const share = t * t * (3 - 2 * t);
      deposit(into, (part.quantile(share) - centre) / width, (3 * t * (1 - t)) / panels);
    }
    return;
  }
  for (const { u, complement, weight } of unitNodes()) {
    const x = u < 0.5 ? part.quantile(u) : quantileFromAbove(part, complement);
    const place = Math.min(size / 2 - 3, Math.max(3 - size / 2, (x - centre) / width));
    if (!Number.isNaN(place)) deposit(into, place, weight);
  }
}

/** Divides out what spreading the shares over cells by splines has multiplied in: (sin x / x)^4. */
function undoSpline({ re, im }: Complex, size: number): void {
  for (let j = 1; j < re.length; j++) {
    const gain = sinc((Math.PI * j) / size) ** -4;
    re[j] = (re[j] as number) * gain;
    im[j] = (im[j] as number) * gain;
  }
}

/** Fills cells with the shares of a part; says whether splines spread them. */
function fill(part: Distribution, cells: Cells): { shares: Float64Array; spread: boolean } {
  const shares = new Float64Array(cells.size);
  const placed = { part, centre: centreOf(part), cells };
  const unbounded = !Number.isFinite(part.limits.upper - part.limits.lower);
  const smooth = unbounded && spreadOf(part) > (SMOOTH_WIDTH * cells.period) / cells.size;
  if (smooth) fillByDensity(placed, shares);
  else fillByQuantile(placed, shares);
  return { shares, spread: !smooth };
}

/**
 * Characteristic functions of parts, each about its centre, at the first `count` whole multiples of 2 pi/period, by
 * Fourier transforms of shares in cells (where the nodes are not the cells', the method of the non-uniform Fourier
 * transform: A. Dutt and V. Rokhlin, SIAM J. Sci. Comput. 14 (1993), 1368 to 1393). Two parts share one transform.
 */
export function cellCharacteristics(parts: readonly Distribution[], cells: Cells, count: number): Complex[] {
  const turn = halfTurn(parts.length > 0 ? cells.size : 0);
  const results: Complex[] = [];
  for (let k = 0; k < parts.length; k += 2) {
    const first = fill(parts[k] as Distribution, cells);
    const next = parts[k + 1];
    const second = next ? fill(next, cells) : { shares: new Float64Array(cells.size), spread: false };
    const pair = transformPair(first.shares, second.shares, { turn, count });
    if (first.spread) undoSpline(pair[0], cells.size);
    if (second.spread) undoSpline(pair[1], cells.size);
    results.push(...pair.slice(0, next ? 2 : 1));
  }
  return results;
}
