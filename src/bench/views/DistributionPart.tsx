import { DistributionCurve } from '../../figures/DistributionCurve.tsx';
import { drawnCurve } from '../results/drawn-curve.ts';
import type { BenchResult } from '../results/result.ts';
import { sharesSentence, stripSentence, wholeOf } from '../words/distribution-words.ts';
import { resultStrings } from '../words/result-strings.ts';

const strings = resultStrings.distribution;
const FRAMES = ['wide', 'narrow'] as const;

/** The whole distribution with the specification's limits and the interval that decided, and its shares in words. */
export function DistributionPart({ result }: { result: BenchResult }) {
  const whole = wholeOf(result);
  const curve = whole === undefined ? [] : drawnCurve(whole);
  if (whole === undefined || curve.length < 2) return null;
  const { chain, judgement } = result;
  const { lower, upper } = chain.sheet.specification;
  const shares = sharesSentence('shown', whole, result);
  return (
    <figure class="figure-place">
      {FRAMES.map((frame) => (
        <DistributionCurve
          key={frame}
          frame={frame}
          curve={curve}
          interval={judgement.interval}
          estimate={chain.result.estimate}
          specification={{
            lower: lower ?? Number.NEGATIVE_INFINITY,
            upper: upper ?? Number.POSITIVE_INFINITY,
          }}
          names={{ inside: strings.inside, outside: strings.outside }}
          name={strings.name}
          description={strings.description(sharesSentence('spoken', whole, result))}
        />
      ))}
      <figcaption class="measure">
        {shares} {stripSentence('shown', result)}
      </figcaption>
    </figure>
  );
}
