import { notNegative, positive, rangeError } from './quantity.ts';

/** Loss of a stated length of cable at one frequency, as a table gives it. */
export interface CableLoss {
  readonly frequencyHz: number;
  readonly lossDb: number;
}

/**
 * Loss of that length of cable at another frequency, in dB, a positive number: k1 sqrt(f) + k2 f (skin effect and
 * dielectric) through two entries of a table. Times length over stated length for another length. Between the entries it is always a
 * loss; far beyond them only if they grow at least as the root of frequency does, as those of cables do.
 * @throws RangeError unless frequencies are above zero and different, and losses not negative.
 * Source: skin and dielectric loss of a line; RG-58 fits 0.4439 sqrt(f/MHz) + 0.00129 f/MHz dB per 100 ft.
 */
export function cableLossDb({
  known: [first, second],
  frequencyHz,
}: {
  known: readonly [CableLoss, CableLoss];
  frequencyHz: number;
}): number {
  const where = 'cableLossDb';
  const f = positive(where, 'frequencyHz', frequencyHz);
  const [f1, f2] = [first, second].map((entry) =>
    positive(where, 'known.frequencyHz', entry.frequencyHz),
  ) as [number, number];
  // Per root of frequency both terms are a straight line in the root of frequency: k1 + k2 sqrt(f).
  const at = (entry: CableLoss) =>
    notNegative(where, 'known.lossDb', entry.lossDb) / Math.sqrt(entry.frequencyHz);
  if (f1 === f2) throw rangeError({ where, wish: 'known must be at two frequencies', got: f1 });
  const slope = (at(second) - at(first)) / (Math.sqrt(f2) - Math.sqrt(f1));
  return Math.sqrt(f) * (at(first) + slope * (Math.sqrt(f) - Math.sqrt(f1)));
}

/**
 * What a capacitance across a line of equal source and load takes, in dB, a positive number: 10 lg(1 + (w C R/2)^2).
 * 100 pF of open cable at 30 MHz across 50 ohm: 0.87 dB.
 * @throws RangeError unless resistanceOhm is above zero and the others not negative.
 * Source: low-pass of source and load in parallel with the capacitance.
 */
export function shuntCapacitanceLossDb({
  capacitanceF,
  frequencyHz,
  resistanceOhm,
}: {
  capacitanceF: number;
  frequencyHz: number;
  resistanceOhm: number;
}): number {
  const where = 'shuntCapacitanceLossDb';
  const c = notNegative(where, 'capacitanceF', capacitanceF);
  const f = notNegative(where, 'frequencyHz', frequencyHz);
  const half = positive(where, 'resistanceOhm', resistanceOhm) / 2;
  return (10 / Math.LN10) * Math.log1p((2 * Math.PI * f * c * half) ** 2);
}
