import type { BandChain } from '../sheet/chain.ts';
import { statementText } from '../text/statement-text.ts';
import { bandText } from '../widgets/parts/band-rows.ts';
import { strings } from './strings.ts';

/** The state of the figure as a table, for paper: on the wall the figure has to be enough. */
export function StageTable({ chain }: { chain: BandChain }) {
  return (
    <table class="stage-states">
      <caption>{strings.states}</caption>
      <thead>
        <tr>
          <th scope="col">{strings.rung}</th>
          <th scope="col">{strings.adds}</th>
          <th scope="col" class="number">
            {strings.band}
          </th>
        </tr>
      </thead>
      <tbody>
        {chain.rungs.map(
          ({ id, link, cumulative }) =>
            link && (
              <tr key={id}>
                <th scope="row">{link.label}</th>
                <td>{statementText('shown', link)}</td>
                <td class="number">{bandText(cumulative)}</td>
              </tr>
            ),
        )}
      </tbody>
    </table>
  );
}
