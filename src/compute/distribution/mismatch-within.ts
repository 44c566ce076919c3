import { mismatchLimits } from '../mismatch-limits.ts';
import { dilogarithm } from '../special/dilogarithm.ts';
import { type Node, unitNodes } from '../special/integrate.ts';
import { constant } from './constant.ts';
import type { Distribution } from './distribution.ts';
import { mismatch } from './mismatch.ts';
import { numeric } from './numeric.ts';
import { DB_PER_LOG, levelAt, randomCosine, shareOfPhases, slopeOfPhases } from './phase.ts';

/**
 * What is known of a reflection besides that its phase is not: its magnitude; only that the point lies in the disc of that
 * radius, every area alike; or that the magnitude lies anywhere up to it, every magnitude alike.
 */
export type Knowledge = 'magnitude' | 'disc' | 'uniformMagnitude';

/** Of the magnitude as a part w of its greatest: E w^(2k), and w itself from a uniform value. */
const MOMENT: Record<Knowledge, (k: number) => number> = {
  magnitude: () => 1,
  disc: (k) => 1 / (k + 1),
  uniformMagnitude: (k) => 1 / (2 * k + 1),
};
const FROM_UNIFORM: Record<Knowledge, (u: number) => number> = {
  magnitude: () => 1,
  disc: Math.sqrt,
  uniformMagnitude: (u) => u,
};

/** Density of the product w of both parts, 0 < w < 1, from the densities 2 w (disc) and 1 (uniform magnitude). */
function productDensity(source: Knowledge, load: Knowledge): (w: number) => number {
  const kinds = new Set([source, load]);
  if (kinds.has('magnitude')) return kinds.has('disc') ? (w) => 2 * w : () => 1;
  if (kinds.size === 2) return (w) => 2 * (1 - w);
  return source === 'disc' ? (w) => -4 * w * Math.log(w) : (w) => -Math.log(w);
}

/** The product w, how likely each is, and the nodes at which it is looked at. */
interface Product {
  readonly greatest: number;
  readonly density: (w: number) => number;
  readonly nodes: readonly Node[];
}

/** Share below and density at a level: the mean over w, from where a phase reaches the level at all. */
function averages({ greatest, density, nodes }: Product, level: number) {
  const amplitude = Math.exp(level / (2 * DB_PER_LOG));
  const from = Math.min(1, Math.abs(1 - amplitude) / greatest);
  let value = 0;
  let slope = 0;
  let seen = 0;
  for (const { u, complement, weight } of nodes) {
    const w = from + (1 - from) * u;
    // Below the smallest numbers the radius would vanish; such nodes carry nothing.
    if (!(w > 1e-300) || complement === 0) continue;
    const share = weight * (1 - from) * density(Math.min(w, 1 - 2 ** -53));
    seen += share;
    value += share * shareOfPhases(greatest * w, amplitude);
    slope += share * slopeOfPhases(greatest * w, amplitude);
  }
  return { value: value + (amplitude > 1 ? 1 - seen : 0), slope };
}

/**
 * Correction in dB for mismatch, 20 lg|1 - Gs Gl|, where phases are unknown and magnitudes only bounded: `source` and
 * `load` are the greatest magnitudes, and `knowledge` says for each what is taken to be likely below them. In units of
 * the product of both, the standard deviation of the power ratio is 1/sqrt(2) for two discs and sqrt(2)/3 for two uniform
 * magnitudes, against sqrt(2) for known magnitudes (common practice, derived from the moments).
 *
 * Shares below within 1e-6. @throws RangeError as `mismatchLimits`.
 */
export function mismatchWithin({
  source,
  load,
  knowledge,
}: {
  source: number;
  load: number;
  knowledge: { readonly source: Knowledge; readonly load: Knowledge };
}): Distribution {
  if (knowledge.source === 'magnitude' && knowledge.load === 'magnitude') return mismatch({ source, load });
  const limits = mismatchLimits({ source, load });
  const greatest = source * load;
  if (greatest === 0) return constant(0);
  const density = productDensity(knowledge.source, knowledge.load);
  let product: Product | undefined;
  const moment = (k: number) => MOMENT[knowledge.source](k) * MOMENT[knowledge.load](k);
  return numeric({
    shape: 'mismatch',
    mean: 0,
    standardDeviation: DB_PER_LOG * Math.sqrt(2 * dilogarithm(greatest * greatest, moment)),
    limits,
    middle: 0,
    at: (level) => {
      product ??= { greatest, density, nodes: unitNodes() };
      return averages(product, level);
    },
    sample: (random) => {
      const part = FROM_UNIFORM[knowledge.source](random()) * FROM_UNIFORM[knowledge.load](random());
      return levelAt(greatest * part, randomCosine(random));
    },
  });
}
