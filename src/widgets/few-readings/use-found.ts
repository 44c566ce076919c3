import { useEffect, useState } from 'preact/hooks';
import type { FoundMean } from '../../sheet/evaluated-readings.ts';
import type { Repeated } from '../../sheet/evening.ts';
import { whileOpening } from '../parts/opening.ts';

type Find = (use: Repeated) => FoundMean;

const same = (a: Repeated, b: Repeated): boolean =>
  a.count === b.count && a.known === b.known && a.limitsDb === b.limitsDb;

/**
 * What is known of a mean. What computes it is fetched with the first change; until it is there the last that was known is shown, which
 * says itself what it is of.
 */
export function useFoundMean(use: Repeated, prepared: FoundMean): FoundMean {
  const [find, setFind] = useState<Find | undefined>(undefined);
  const missing = !same(use, prepared.use) && find === undefined;
  useEffect(() => {
    if (!missing) return;
    // A function as state is handed over in a function: Preact would call it otherwise.
    void whileOpening(() =>
      import('../../sheet/evaluated-readings.ts').then(({ foundMeanOf }) => setFind(() => foundMeanOf)),
    );
  }, [missing]);
  return same(use, prepared.use) || find === undefined ? prepared : find(use);
}
