import type { FoundMean } from '../../sheet/evaluated-readings.ts';
import type { Repeated } from '../../sheet/evening.ts';
import { useFetched } from '../parts/use-fetched.ts';

const fetched = async () => (await import('../../sheet/evaluated-readings.ts')).foundMeanOf;

const same = (a: Repeated, b: Repeated): boolean =>
  a.count === b.count && a.known === b.known && a.limitsDb === b.limitsDb;

/**
 * What is known of a mean. What computes it is fetched with the first change; until it is there the last that was known is shown, which
 * says itself what it is of.
 */
export function useFoundMean(use: Repeated, prepared: FoundMean): FoundMean {
  const isPrepared = same(use, prepared.use);
  const find = useFetched(!isPrepared, fetched, use);
  return isPrepared || find === undefined ? prepared : find(use);
}
