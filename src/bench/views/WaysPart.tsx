import type { BenchResult } from '../results/result.ts';
import { resultStrings } from '../words/result-strings.ts';
import { waysOf, whyWaysDiffer } from '../words/ways.ts';
import { DistributionPart } from './DistributionPart.tsx';

const strings = resultStrings.ways;

/** The three ways to add up side by side, why they differ, and the distribution that the last of them is. */
export function WaysPart({ result }: { result: BenchResult }) {
  return (
    <section aria-labelledby="ways">
      <h2 id="ways">{strings.heading}</h2>
      <dl class="ways">
        {waysOf('shown', result).map(({ name, level, power, says }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd class="ways-level">{level}</dd>
            <dd class="ways-power">{power}</dd>
            <dd>{says}</dd>
          </div>
        ))}
      </dl>
      <p class="measure">{whyWaysDiffer('shown', result)}</p>
      <DistributionPart result={result} />
    </section>
  );
}
