import { halfSpanFor } from '../figures/reading-band.layout.ts';
import type { BandChain } from '../sheet/chain.ts';
import { bandRows } from '../widgets/parts/band-rows.ts';
import { levelAnswer, wattsAnswer } from '../widgets/reading-band/words.ts';
import type { CardBand, CardContent } from './content.ts';
import { cardStrings as strings } from './strings.ts';

/** The card of a chain: its level and the same in watts, end by end, above the band. `called` is how the words for it begin. */
export function bandCard(
  chain: BandChain,
  { key, title, called = title }: Pick<CardContent, 'key' | 'title'> & { readonly called?: string },
): CardContent {
  const [big, small] = [levelAnswer('shown', chain), wattsAnswer('shown', chain)];
  const alt = strings.bandAlt({ title: called, level: big, watts: small });
  return { key, title, big, small, drawn: bandOf(chain), alt };
}

/** The band of a chain for its card: what is drawn decides how far the axis reaches, a limit of the specification near by included. */
function bandOf(chain: BandChain): CardBand {
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
