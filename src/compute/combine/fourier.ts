/** Real and imaginary parts, of equal length. */
export interface Complex {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** Cosines (re) and sines (im) of the first half turn, in `size` steps to the turn, a multiple of four: all from the sines of its first quarter. */
export function halfTurn(size: number): Complex {
  const quarter = size / 4;
  const re = new Float64Array(2 * quarter);
  const im = new Float64Array(2 * quarter);
  for (let k = 0; k < quarter; k++) {
    const sine = Math.sin((2 * Math.PI * k) / size);
    im[k] = sine;
    re[quarter + k] = -sine;
    if (k > 0) {
      re[quarter - k] = sine;
      im[2 * quarter - k] = sine;
    }
  }
  re[0] = 1;
  im[quarter] = 1;
  return { re, im };
}

function swap(values: Float64Array, i: number, j: number): void {
  const kept = values[i] as number;
  values[i] = values[j] as number;
  values[j] = kept;
}

/** Puts entries in the order of their reversed binary index. */
function reorder({ re, im }: Complex): void {
  const size = re.length;
  for (let i = 1, j = 0; i < size; i++) {
    let bit = size >> 1;
    for (; j & bit; bit >>= 1) j ^= bit;
    j ^= bit;
    if (i >= j) continue;
    swap(re, i, j);
    swap(im, i, j);
  }
}

/** One round of butterflies over groups of 2 x half entries. */
function round({ re, im }: Complex, turn: Complex, half: number): void {
  const size = re.length;
  const stride = size / (2 * half);
  for (let start = 0; start < size; start += 2 * half)
    for (let k = 0; k < half; k++) {
      const c = turn.re[k * stride] as number;
      const s = turn.im[k * stride] as number;
      const a = start + k;
      const b = a + half;
      const br = re[b] as number;
      const bi = im[b] as number;
      const tr = br * c - bi * s;
      const ti = br * s + bi * c;
      re[b] = (re[a] as number) - tr;
      im[b] = (im[a] as number) - ti;
      re[a] = (re[a] as number) + tr;
      im[a] = (im[a] as number) + ti;
    }
}

/**
 * Fast Fourier transform in place, with the sign of a characteristic function: X_j = sum over k of x_k exp(+2 pi i j k/N).
 * The length N must be a power of two and `turn` be halfTurn(N). Cooley and Tukey, Math. Comp. 19 (1965), 297 to 301.
 */
export function transformInPlace(values: Complex, turn: Complex): void {
  reorder(values);
  for (let half = 1; half < values.re.length; half <<= 1) round(values, turn, half);
}

/**
 * Transforms of two real rows by one complex transform, entries 0 to `count` of each. The rows serve as room to work in.
 */
export function transformPair(
  first: Float64Array,
  second: Float64Array,
  { turn, count }: { turn: Complex; count: number },
): [Complex, Complex] {
  const both = { re: first, im: second };
  transformInPlace(both, turn);
  const empty = (): Complex => ({ re: new Float64Array(count + 1), im: new Float64Array(count + 1) });
  const one = empty();
  const other = empty();
  const mask = first.length - 1;
  for (let j = 0; j <= count; j++) {
    const a = both.re[j] as number;
    const b = both.im[j] as number;
    const mirroredA = both.re[-j & mask] as number;
    const mirroredB = both.im[-j & mask] as number;
    one.re[j] = (a + mirroredA) / 2;
    one.im[j] = (b - mirroredB) / 2;
    other.re[j] = (b + mirroredB) / 2;
    other.im[j] = (mirroredA - a) / 2;
  }
  return [one, other];
}
