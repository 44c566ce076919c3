import type { Chain } from '../../sheet/chain.ts';
import { Scroll } from './Scroll.tsx';
import { waysOf, whyTheyDiffer } from './ways.ts';

/** The ways to add up side by side, and one sentence on why they differ. */
export function WaysTable({ chain }: { chain: Chain }) {
  return (
    <section class="ways-of-adding" aria-label="Ways to add up">
      <Scroll label="Ways to add up, as a table">
        <table>
          <thead>
            <tr>
              <th scope="col">Way to add up</th>
              <th scope="col">Band</th>
              <th scope="col">In watts</th>
              <th scope="col">What it says</th>
            </tr>
          </thead>
          <tbody>
            {waysOf('shown', chain).map(({ id, name, band, watts, says }) => (
              <tr key={id}>
                <th scope="row">{name}</th>
                <td class="nowrap">{band}</td>
                <td class="nowrap">{watts}</td>
                <td>{says}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
      <p class="measure">{whyTheyDiffer('shown', chain)}</p>
    </section>
  );
}
