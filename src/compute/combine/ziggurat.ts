import { ensure, type Words } from './words.ts';

const LAYERS = 256;
/** Where the tail begins, and the area of each layer, for 256 layers (Marsaglia and Tsang 2000, table in the text). */
const TAIL_FROM = 3.6541528853610088;
const AREA = 4.92867323399e-3;
/** Values whose layers come out of one word. */
const GROUP = 4;
const TO_UNIT = 2 ** -31;
const HALF_STEP = 2 ** -32;

/** Edges of the layers, widest first, and the part of each that lies wholly under the curve. */
export interface Ziggurat {
  readonly edge: Float64Array;
  readonly inside: Float64Array;
}

const height = (x: number) => Math.exp(-0.5 * x * x);

/** The layers; made on first use, never on import. */
export function zigguratTable(): Ziggurat {
  const edge = new Float64Array(LAYERS + 1);
  edge[0] = AREA / height(TAIL_FROM);
  edge[1] = TAIL_FROM;
  for (let k = 2; k < LAYERS; k++) {
    const x = edge[k - 1] as number;
    edge[k] = Math.sqrt(-2 * Math.log(AREA / x + height(x)));
  }
  const inside = edge.subarray(0, LAYERS).map((x, k) => (edge[k + 1] as number) / x);
  return { edge, inside };
}

/** A uniform number above 0 and below 1 from one word. */
function unit(supply: Words): number {
  ensure(supply, 1);
  return ((supply.words[supply.at++] as number) >>> 0) * (TO_UNIT / 2) + HALF_STEP / 2;
}

/** A value beyond the tail's start (Marsaglia 1964). */
function fromTail(supply: Words): number {
  for (;;) {
    const x = -Math.log(unit(supply)) / TAIL_FROM;
    if (-2 * Math.log(unit(supply)) >= x * x) return TAIL_FROM + x;
  }
}

/** The one value in a hundred that falls outside the inner part of its layer; undefined if it is to be drawn anew. */
function atTheRim({ edge }: Ziggurat, layer: number, u: number, supply: Words): number | undefined {
  if (layer === 0) return u < 0 ? -fromTail(supply) : fromTail(supply);
  const x = u * (edge[layer] as number);
  const [low, high] = [height(edge[layer] as number), height(edge[layer + 1] as number)];
  return low + unit(supply) * (high - low) < height(x) ? x : undefined;
}

/**
 * Fills a row with standard normal values by the ziggurat of G. Marsaglia and W. W. Tsang, J. Stat. Softw. 5 (2000),
 * issue 8, with a layer number drawn apart from the value (J. A. Doornik 2005: the original shares bits between both).
 * Values have 32 random bits. Math.log and Math.exp are used for one value in a hundred, at its rim and in the tail.
 */
export function fillNormal(out: Float64Array, supply: Words, table: Ziggurat): void {
  const { edge, inside } = table;
  const { words } = supply;
  const count = out.length;
  for (let k = 0; k < count; ) {
    ensure(supply, GROUP + 1);
    let at = supply.at;
    let layers = words[at++] as number;
    for (let part = 0; part < GROUP && k < count; part++) {
      const u = (words[at++] as number) * TO_UNIT + HALF_STEP;
      const layer = layers & 255;
      layers >>= 8;
      if (Math.abs(u) < (inside[layer] as number)) {
        out[k++] = u * (edge[layer] as number);
        continue;
      }
      supply.at = at;
      const value = atTheRim(table, layer, u, supply);
      if (value !== undefined) out[k++] = value;
      ensure(supply, GROUP);
      at = supply.at;
    }
    supply.at = at;
  }
}
