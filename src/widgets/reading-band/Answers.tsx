import type { BandChain } from '../../sheet/chain.ts';
import { answersOf } from './words.ts';

/** The three answers in a row: level, watts, and what widens the band most. */
export function Answers({ chain }: { chain: BandChain }) {
  return (
    <dl class="answers">
      {answersOf(chain).map(({ figure, words }, index) => (
        <div key={['level', 'watts', 'most'][index]}>
          <dt>{figure}</dt>
          <dd>{words}</dd>
        </div>
      ))}
    </dl>
  );
}
