import { amountOf } from '../../sheet/amount.ts';
import type { BandChain, Cumulative, Rung } from '../../sheet/chain.ts';
import { percentText, quantityText } from '../../text/quantity-text.ts';
import { amountText, statedDecimals, statementText } from '../../text/statement-text.ts';
import { bandText } from '../parts/band-rows.ts';
import { NumberField } from '../parts/NumberField.tsx';
import { readerOf } from '../parts/read-amount.ts';
import { Slider } from '../parts/Slider.tsx';
import { rangeOf } from './amount.ts';
import type { BandAction } from './state.ts';
import { strings } from './strings.ts';

interface RungControlsProps {
  readonly chain: BandChain;
  readonly send: (action: BandAction) => void;
}

const readerFor = (unit: 'dB' | 'percentOfPower') => {
  const { kind, range } = rangeOf({ unit });
  return readerOf({ kind, ...range });
};
/** One reader each, so that a field keeps its own from drawing to drawing. */
const READERS = { dB: readerFor('dB'), percent: readerFor('percentOfPower') } as const;

/** The figure's twin as a table: every rung with a slider and a field for what it adds, the band it leaves and its share. */
export function RungControls({ chain, send }: RungControlsProps) {
  return (
    <table class="rungs">
      <caption>{strings.controls}</caption>
      <thead>
        <tr>
          <th scope="col">{strings.rungColumn}</th>
          <th scope="col">{strings.addsColumn}</th>
          <th scope="col" class="number">
            {strings.bandColumn}
          </th>
          <th scope="col" class="number">
            {strings.shareColumn}
          </th>
        </tr>
      </thead>
      <tbody>
        {chain.rungs.map((rung) => (
          <RungRow key={rung.id} rung={rung} chain={chain} send={send} />
        ))}
      </tbody>
    </table>
  );
}

/** A share that is there but rounds to nothing is said to be small, not to be none. */
function shareText(share: number): string {
  const least = percentText('shown', { percent: 0.1, decimals: 1 });
  if (share > 0 && share < 0.0005) return `< ${least}`;
  return percentText('shown', { percent: 100 * share, decimals: share > 0 && share < 0.01 ? 1 : 0 });
}

function RungRow({ rung, chain, send }: RungControlsProps & { rung: Rung<Cumulative> }) {
  const { link, id, cumulative } = rung;
  const share = chain.result.propagation.budget.find((row) => row.id === id)?.share ?? 0;
  if (link === undefined) return null;
  const amount = amountOf(link.statement);
  const set = (value: number): void => send({ type: 'set', id, amount: value });
  const { unit, range } = rangeOf(link);
  const spoken = quantityText('spoken', { value: amount, decimals: statedDecimals(amount), unit });
  return (
    <tr>
      <th scope="row">{link.label}</th>
      <td>
        <span class="print-only">{statementText('shown', link)}</span>
        <div class="rung-control">
          <Slider
            label={strings.slider(link.said ?? link.label)}
            {...range}
            value={amount}
            valueText={spoken}
            onValue={set}
          />
          <NumberField
            label={strings.field(link.said ?? link.label)}
            shown={amountText(amount)}
            unit={unit}
            read={READERS[unit]}
            onValue={set}
          />
        </div>
      </td>
      <td class="number" data-label={strings.bandColumn}>
        {bandText(cumulative)}
      </td>
      <td class="number" data-label={strings.shareColumn}>
        {shareText(share)}
      </td>
    </tr>
  );
}
