import { notNegative, positive } from './quantity.ts';

/**
 * How many readings still pay? The smallest number from which on all further ones together would lower the combined standard
 * uncertainty by less than `worthwhile` (0.05: a twentieth). Undefined if nothing else is uncertain: then every one pays.
 * @param standardDeviation of a single reading, >= 0; `otherUncertainty` of everything else, >= 0, same unit.
 * @throws RangeError for a negative number or a `worthwhile` not above zero.
 * Source: GUM 4.2.3 (the variance of a mean falls as 1/n).
 */
export function readingsThatPay({
  standardDeviation,
  otherUncertainty,
  worthwhile = 0.05,
}: {
  standardDeviation: number;
  otherUncertainty: number;
  worthwhile?: number;
}): number | undefined {
  notNegative('readingsThatPay', 'standardDeviation', standardDeviation);
  notNegative('readingsThatPay', 'otherUncertainty', otherUncertainty);
  positive('readingsThatPay', 'worthwhile', worthwhile);
  if (standardDeviation === 0) return 1;
  if (otherUncertainty === 0) return undefined;
  const ratio = (standardDeviation / otherUncertainty) ** 2;
  return Math.max(1, Math.ceil(ratio / ((1 + worthwhile) ** 2 - 1)));
}
