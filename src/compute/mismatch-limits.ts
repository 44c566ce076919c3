import { dbToPowerRatio } from './decibel.ts';
import { type GainDb, gainDb, rangeError } from './quantity.ts';
import { reflectionBelowOne } from './reflection.ts';

/** A pad or cable between source and load: reflection magnitudes of its two ends and its gain. */
export interface TwoPort {
  /** |S11|, the end towards the source. */
  readonly input: number;
  /** |S22|, the end towards the load. */
  readonly output: number;
  /** 20 lg |S21|, 0 dB or below. */
  readonly gain: GainDb;
}

/** Reflection magnitudes of source and load, and what may lie between them; all phases unknown. */
export interface MismatchMagnitudes {
  readonly source: number;
  readonly load: number;
  readonly between?: TwoPort;
}

/** The most that the terms beside 1 in the mismatch factor can come to: products of magnitudes. */
function terms(where: string, { source, load, between }: MismatchMagnitudes) {
  const s = reflectionBelowOne(where, 'source', source);
  const l = reflectionBelowOne(where, 'load', load);
  if (!between) return { atInput: 0, atOutput: 0, through: s * l };
  if (between.gain > 0) throw rangeError({ where, wish: 'between.gain must be <= 0', got: between.gain });
  return {
    atInput: s * reflectionBelowOne(where, 'between.input', between.input),
    atOutput: l * reflectionBelowOne(where, 'between.output', between.output),
    through: dbToPowerRatio(between.gain) * s * l,
  };
}

/** 20 lg(1 + x), to the last digits for small x too. */
const db = (x: number): GainDb => gainDb((20 / Math.LN10) * Math.log1p(x));

/**
 * Limits of the correction for mismatch to the power into an ideal load, in dB: 20 lg(1 -+ Gs Gl) for two magnitudes
 * with their phase unknown; with a two-port between, 20 lg of (1 -+ Gs S11)(1 -+ Gl S22) -+ S21^2 Gs Gl. Exact, not
 * the first-order 2 Gs Gl. The indication errs the other way. To a few units of the last digit, for the smallest magnitudes too.
 * @throws RangeError for a magnitude outside 0 to below 1, a two-port with gain, or a lower limit of no power at all.
 * Source: signal-flow analysis of source, two-port and load; the limits are reached when all phases fall together.
 */
export function mismatchLimits(magnitudes: MismatchMagnitudes): { lower: GainDb; upper: GainDb } {
  const where = 'mismatchLimits';
  const { atInput, atOutput, through } = terms(where, magnitudes);
  const both = atInput * atOutput;
  const off = atInput + atOutput + through;
  const least = 1 - (off - both);
  if (!(least > 0))
    throw rangeError({ where, wish: 'reflections must leave some power at the lower limit', got: least });
  return { lower: db(both - off), upper: db(off + both) };
}

/**
 * The largest reflection that a load can see looking back through a pad or cable at the source: |S22| + |S21|^2 Gs / (1 - |S11| Gs).
 * @throws RangeError for a magnitude outside 0 to below 1 or a two-port with gain.
 * Source: signal-flow analysis; common practice of "improving a match with a pad".
 */
export function reflectionThrough({ source, between }: { source: number; between: TwoPort }): number {
  const { atInput } = terms('reflectionThrough', { source, load: 0, between });
  const gain = dbToPowerRatio(between.gain);
  return between.output + (gain * source) / (1 - atInput);
}
