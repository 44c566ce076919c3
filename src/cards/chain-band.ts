import { halfSpanFor } from '../figures/reading-band.layout.ts';
import type { BandChain } from '../sheet/chain.ts';
import { bandRows } from '../widgets/parts/band-rows.ts';
import type { CardBand } from './content.ts';

/** The band of a chain for its card: what is drawn decides how far the axis reaches, a limit of the specification near by included. */
export function bandOf(chain: BandChain): CardBand {
  const { estimate, worstCase, propagation } = chain.result;
  const { lower = Number.NEGATIVE_INFINITY, upper = Number.POSITIVE_INFINITY } = chain.sheet.specification;
  const { interval } = worstCase.unlimited.length > 0 ? propagation : worstCase;
  const reach = Math.max(estimate - interval.lower, interval.upper - estimate);
  return {
    kind: 'band',
    rows: bandRows({ chain, showLimits: true, showCurve: false, handles: false }),
    centreDbm: estimate,
    halfSpanDb: halfSpanFor(reach),
    specification: { lower, upper },
  };
}
