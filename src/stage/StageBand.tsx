import { useState } from 'preact/hooks';
import type { BandRow } from '../figures/reading-band.types.ts';
import { amountOf } from '../sheet/amount.ts';
import { bandChainOf } from '../sheet/chain.ts';
import type { LinkUnit } from '../sheet/method.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { numberText, quantityText } from '../text/quantity-text.ts';
import { amountText, statedDecimals } from '../text/statement-text.ts';
import { Announcer } from '../widgets/parts/Announcer.tsx';
import { BandFigure } from '../widgets/parts/BandFigure.tsx';
import { bandRows, SOCKET_ID } from '../widgets/parts/band-rows.ts';
import { pulling } from '../widgets/parts/pulling.ts';
import { readerOf } from '../widgets/parts/read-amount.ts';
import { AMOUNT, rangeOf } from '../widgets/reading-band/amount.ts';
import { halfSpanOf, initialState, reduceBand } from '../widgets/reading-band/state.ts';
import { strings as bandStrings } from '../widgets/reading-band/strings.ts';
import { summarise } from '../widgets/reading-band/words.ts';
import { useMirrored } from './mirror.ts';
import { StageTable } from './StageTable.tsx';
import { strings } from './strings.ts';
import { WhatIf } from './WhatIf.tsx';

export interface StageBandProps {
  /** The prepared chain. */
  readonly sheet: Sheet;
  /** The one rung whose amount the speaker changes. */
  readonly rung: string;
  /** Rungs at its beginning that are shown as one. */
  readonly others?: readonly string[];
}

/** One press of plus or minus, in dB or in percent: large enough to be seen from the back row. */
const PRESS = { dB: 0.1, percent: 1 } as const;
const READERS = {
  dB: readerOf({ kind: 'halfWidthDb', ...AMOUNT }),
  percent: readerOf({ kind: 'percent', ...rangeOf({ unit: 'percentOfPower' }).range }),
} as const;

/** What the percentage of a rung's amount is of; the wall says it. */
const PERCENT_OF: Readonly<Partial<Record<LinkUnit, string>>> = strings.percentOf;

/** Rows with the first ones taken together: what has come of all of them stands in the row of the last. */
function taken(rows: readonly BandRow[], others: readonly string[]): readonly BandRow[] {
  const last = others.at(-1);
  return rows
    .filter(({ id }) => id === last || !others.includes(id))
    .map((row) =>
      row.id === last
        ? {
            ...row,
            label: strings.others(numberText('shown', { value: others.length, decimals: 0 })),
            handle: false,
          }
        : row,
    );
}

/** The reading band on the wall, with one number that answers "what if it were ...?" in one press. */
export default function StageBand({ sheet, rung, others = [] }: StageBandProps) {
  const [state, send] = useMirrored(reduceBand, initialState({ sheet }));
  const [written] = useState(state);
  const chain = bandChainOf(state.sheet);
  const link = state.sheet.links.find(({ id }) => id === rung);
  if (link === undefined) throw new RangeError(`StageBand: rung must be in the preset, got ${rung}`);
  const amount = amountOf(link.statement);
  const { unit } = rangeOf(link);
  const press = PRESS[unit];
  // a figure more that says the same must not take the ghost of the answer before away
  const set = (value: number): void => {
    if (value !== amount) send({ type: 'set', id: rung, amount: value });
  };
  const rows = bandRows({
    chain,
    before: state.before && bandChainOf(state.before),
    showLimits: true,
    showCurve: false,
    handles: true,
  });
  const summary = summarise(chain);
  return (
    <div class="stage-band">
      <BandFigure
        place="stage"
        rows={taken(rows, others).map((row) =>
          row.id === SOCKET_ID || row.id === rung ? row : { ...row, number: '' },
        )}
        centreDbm={chain.result.estimate}
        halfSpanDb={halfSpanOf(state)}
        name={bandStrings.name}
        description={bandStrings.description(summary)}
        asWritten={state === written}
        {...pulling(send)}
        onPull={(id, expandedDb) => send({ type: 'pull', id, expandedDb })}
      />
      <WhatIf
        legend={strings.whatIf(link.label)}
        press={quantityText('spoken', { value: press, decimals: statedDecimals(press), unit })}
        field={{
          label: bandStrings.field(link.said ?? link.label),
          shown: amountText(amount),
          unit,
          of: PERCENT_OF[link.unit],
          read: READERS[unit],
          onValue: set,
        }}
        onLess={() => set(amount - press)}
        onMore={() => set(amount + press)}
        onReset={() => send({ type: 'replace', sheet })}
        answer={rows.at(-1)?.number}
      />
      <StageTable chain={chain} />
      <Announcer summary={summary} />
    </div>
  );
}
