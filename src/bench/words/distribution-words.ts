import type { WholeDistribution } from '#compute';
import { addedShare, probabilityText, shareText } from '../../text/probability-text.ts';
import type { Style } from '../../text/style.ts';
import { decidedByWords } from '../../text/words.ts';
import type { BenchResult } from '../results/result.ts';
import { resultStrings } from './result-strings.ts';

const strings = resultStrings.distribution;

/** The whole distribution of a result, where it can be had. */
export const wholeOf = ({ chain }: Pick<BenchResult, 'chain'>): WholeDistribution | undefined =>
  'symmetric' in chain.result.whole ? chain.result.whole : undefined;

/** How much of a distribution lies inside, below and above the limits of the specification, in one sentence. */
export function sharesSentence(style: Style, whole: WholeDistribution, { chain }: BenchResult): string {
  const { lower, upper } = chain.sheet.specification;
  const below = lower === undefined ? 0 : addedShare(whole.shareBelow(lower));
  const above = upper === undefined ? 0 : addedShare(1 - whole.shareBelow(upper));
  return strings.shares({
    inside: probabilityText(style, addedShare(1 - below - above)),
    ...(lower !== undefined && { below: probabilityText(style, below) }),
    ...(upper !== undefined && { above: probabilityText(style, above) }),
  });
}

/** Which interval the strip under the curve is. */
export function stripSentence(style: Style, { chain, judgement }: BenchResult): string {
  if (!judgement.hasUndecidedZone) return strings.stripPlain;
  const share = shareText(style, chain.result.propagation.coverageProbability);
  return strings.strip(decidedByWords[judgement.decidedBy], share);
}
