/** Counts of values in bins of equal width, between ends fixed by the first values seen. */
export interface Histogram {
  add(values: Float64Array): void;
  /** Middle of each bin and density there, per unit of x. */
  curve(): { x: number; density: number }[];
}

/** Bins between the ends. */
const BINS = 200;
/** The ends leave this share of the first values outside, then are moved out by a tenth of the width. */
const TAIL = 0.002;
const ROOM = 0.1;

/** Ends from the first row of values. */
function endsOf(first: Float64Array): { from: number; width: number } {
  const sorted = first.slice().sort();
  const at = (share: number) => sorted[Math.round(share * (sorted.length - 1))] as number;
  const [low, high] = [at(TAIL), at(1 - TAIL)];
  const room = ROOM * (high - low) || 1;
  return { from: low - room, width: (high - low + 2 * room) / BINS };
}

/** An empty histogram whose ends follow from the first row added. Values beyond them count, but are not drawn. */
export function histogramOf(): Histogram {
  const counts = new Float64Array(BINS);
  let ends: ReturnType<typeof endsOf> | undefined;
  let total = 0;
  return {
    add: (values) => {
      ends ??= endsOf(values);
      const { from, width } = ends;
      total += values.length;
      const [count, perWidth] = [values.length, 1 / width];
      for (let k = 0; k < count; k++) {
        const bin = Math.floor(((values[k] as number) - from) * perWidth);
        if (bin >= 0 && bin < BINS) counts[bin] = (counts[bin] as number) + 1;
      }
    },
    curve: () => {
      if (ends === undefined) return [];
      const { from, width } = ends;
      return Array.from(counts, (count, k) => ({
        x: from + (k + 0.5) * width,
        density: count / (total * width),
      }));
    },
  };
}
