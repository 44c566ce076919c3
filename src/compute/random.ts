import type { Random } from './distribution/distribution.ts';
import { rangeError } from './quantity.ts';

/** A seeded generator: call it for one uniform number, 0 <= x < 1 with 53 bits, or let it fill whole words of 32 random bits. */
export interface SeededRandom extends Random {
  fill(words: Int32Array): void;
}

/** Increment of SplitMix64, 2^64 over the golden ratio, and what keeps its sums to 64 bits. */
const GOLDEN = 0x9e3779b97f4a7c15n;
const MASK = 0xffffffffffffffffn;

/** Four words from a seed by SplitMix64 (G. Steele, D. Lea, C. Flood 2014), as the authors of the generator advise. */
function stateFrom(seed: number): Int32Array {
  const state = new Int32Array(4);
  let z = BigInt(seed);
  for (let k = 0; k < 4; k += 2) {
    z = (z + GOLDEN) & MASK;
    let mixed = z;
    mixed = ((mixed ^ (mixed >> 30n)) * 0xbf58476d1ce4e5b9n) & MASK;
    mixed = ((mixed ^ (mixed >> 27n)) * 0x94d049bb133111ebn) & MASK;
    mixed ^= mixed >> 31n;
    state[k] = Number(mixed & 0xffffffffn);
    state[k + 1] = Number(mixed >> 32n);
  }
  return state;
}

/** The state lives in locals while a whole row is filled: several times faster than word by word. */
function fillFrom(state: Int32Array, words: Int32Array): void {
  let [a, b, c, d] = state as unknown as [number, number, number, number];
  for (let k = 0; k < words.length; k++) {
    const times5 = Math.imul(b, 5);
    words[k] = Math.imul((times5 << 7) | (times5 >>> 25), 9);
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = (d << 11) | (d >>> 21);
  }
  state.set([a, b, c, d]);
}

/**
 * A generator of uniform random numbers from a whole number, 0 to 2^53 - 1: xoshiro128** (D. Blackman and S. Vigna,
 * "Scrambled linear pseudorandom number generators", ACM Trans. Math. Softw. 47, 2021), period 2^128 - 1. Only 32-bit
 * integer arithmetic, so that one seed gives the same numbers in every engine. @throws RangeError for any other seed.
 */
export function randomFrom(seed: number): SeededRandom {
  if (!(Number.isSafeInteger(seed) && seed >= 0))
    throw rangeError({ where: 'randomFrom', wish: 'seed must be a whole number >= 0', got: seed });
  const state = stateFrom(seed);
  const pair = new Int32Array(2);
  const draw = () => {
    fillFrom(state, pair);
    return (((pair[0] as number) >>> 5) * 2 ** 26 + ((pair[1] as number) >>> 6)) / 2 ** 53;
  };
  return Object.assign(draw, { fill: (words: Int32Array) => fillFrom(state, words) });
}
