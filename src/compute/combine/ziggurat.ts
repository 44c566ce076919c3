import { solveSign } from '../special/solve.ts';
import type { Bell } from './bell.ts';
import { freshWords, nextWord, type Words } from './words.ts';

const LAYERS = 256;
/** Half of all words: a word and a half step is -HALF to HALF, never 0 and never either end. */
const HALF = 2 ** 31;
/** Place of the tail, relative: some last digits of the layers' areas hang on it, and nothing else. */
const CLOSE = 1e-13;

/** A bell cut into layers of equal area, widest first; the lowest one holds the tail as well. */
export interface Ziggurat {
  readonly bell: Bell;
  /** Half-width of each layer, that of the lowest as if it were a rectangle too; 0 above the last. */
  readonly edge: Float64Array;
  /** Height at the edge of each layer. */
  readonly height: Float64Array;
  /** Half-width that one unit of a word stands for. */
  readonly unit: Float64Array;
  /** A value of fewer units lies under the curve wherever in the layer it is. */
  readonly inside: Int32Array;
}

/** Half-widths of the layers over a tail, and how many layers too many reach up to the peak; negative if they do not reach it. */
function layersOver(bell: Bell, tailFrom: number): { edge: Float64Array; excess: number } {
  const edge = new Float64Array(LAYERS + 1);
  const height = Math.exp(bell.logHeight(tailFrom));
  const area = tailFrom * height + bell.areaBeyond(tailFrom);
  edge[0] = area / height;
  edge[1] = tailFrom;
  let last = 1;
  let thick = area / tailFrom;
  let top = height + thick;
  while (top < 1 && last < LAYERS - 1) {
    const x = bell.place(top);
    edge[++last] = x;
    thick = area / x;
    top += thick;
  }
  return { edge, excess: (top - 1) / thick + (LAYERS - 1 - last) };
}

/** Cuts a bell into layers: the tail begins where the last layer ends at the peak. */
export function zigguratOf(bell: Bell): Ziggurat {
  // The tail holds less than a layer, and a layer is a little more than this part: the curve leaves rims free.
  const least = bell.farPlace(0.5 / LAYERS);
  const short = (tailFrom: number) => -layersOver(bell, tailFrom).excess;
  const tailFrom = solveSign(short, { lower: least, upper: 2 * least, tolerance: CLOSE * least });
  const { edge } = layersOver(bell, tailFrom);
  return {
    bell,
    edge,
    height: edge.map((x) => Math.exp(bell.logHeight(x))),
    unit: edge.subarray(0, LAYERS).map((x) => x / HALF),
    inside: Int32Array.from({ length: LAYERS }, (_, k) =>
      Math.floor((HALF * (edge[k + 1] as number)) / (edge[k] as number) - 0.5),
    ),
  };
}

/** A uniform number above 0 and below 1 from one word. */
function uniform(supply: Words): number {
  return ((nextWord(supply) >>> 0) + 0.5) / (2 * HALF);
}

/**
 * A value beyond the tail's start: from a tail x^-a as steep there as the bell and above it everywhere, since the
 * bell's logarithm is concave in ln x; taken with the ratio of both.
 */
function fromTail({ bell, edge }: Ziggurat, supply: Words): number {
  const from = edge[1] as number;
  const a = bell.steepness(from);
  const start = bell.logHeight(from);
  for (;;) {
    const logRatio = -Math.log(uniform(supply)) / (a - 1);
    const x = from * Math.exp(logRatio);
    if (Math.log(uniform(supply)) < bell.logHeight(x) - start + a * logRatio) return x;
  }
}

/** Whether a word lies in the inner part of its layer, both sides alike: complementing turns -1, -2 ... into 0, 1 ... */
const isInside = (word: number, inside: number) => (word ^ (word >> 31)) < inside;

/** The layer of the k-th value: one word holds four. */
const layerOf = (word: number, k: number) => (word >> ((k & 3) << 3)) & (LAYERS - 1);

/** The value for an x outside the inner part of its layer, one in a hundred: at the rim or in the tail, or drawn anew. */
function outside(ziggurat: Ziggurat, layer: number, x: number, supply: Words): number {
  const { bell, unit, height, inside } = ziggurat;
  if (layer === 0) return x < 0 ? -fromTail(ziggurat, supply) : fromTail(ziggurat, supply);
  const [low, high] = [height[layer] as number, height[layer + 1] as number];
  if (low + uniform(supply) * (high - low) < Math.exp(bell.logHeight(x))) return x;
  const again = nextWord(supply) & (LAYERS - 1);
  const word = nextWord(supply);
  const next = (word + 0.5) * (unit[again] as number);
  return isInside(word, inside[again] as number) ? next : outside(ziggurat, again, next, supply);
}

/**
 * Fills a row with values of a bell, its scale 1, by the ziggurat of G. Marsaglia and W. W. Tsang, J. Stat. Softw. 5 (2000),
 * issue 8, with a layer number drawn apart from the value (J. A. Doornik 2005: the original shares bits between both).
 * Values have 32 random bits. Logarithms are used for one value in a hundred, at its rim and in the tail.
 */
export function fillBell(out: Float64Array, supply: Words, ziggurat: Ziggurat): void {
  const { unit, inside } = ziggurat;
  const count = out.length;
  // The words of the values, then those of the layers.
  const words = freshWords(supply, count + Math.ceil(count / 4));
  // Those outside wait until all are seen, in words used already: without a call the loop is twice as fast.
  let waiting = 0;
  for (let k = 0; k < count; k++) {
    const word = words[k] as number;
    const layer = layerOf(words[count + (k >> 2)] as number, k);
    out[k] = (word + 0.5) * (unit[layer] as number);
    if (!isInside(word, inside[layer] as number)) words[waiting++] = k;
  }
  for (let i = 0; i < waiting; i++) {
    const k = words[i] as number;
    out[k] = outside(ziggurat, layerOf(words[count + (k >> 2)] as number, k), out[k] as number, supply);
  }
}
