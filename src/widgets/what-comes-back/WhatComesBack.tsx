import { useMemo } from 'preact/hooks';
import { PowerShares } from '../../figures/PowerShares.tsx';
import { LineBandWidget } from '../parts/LineBandWidget.tsx';
import { NumbersTable } from '../parts/NumbersTable.tsx';
import { type Start, startingAt } from '../parts/starting.ts';
import { useFields } from '../parts/use-fields.ts';
import { figureOf, shareRows } from './figure.ts';
import { type BackState, backSpec, lineOf } from './spec.ts';
import { strings } from './strings.ts';
import { answersOf, cautionText, powerRows, summarise } from './words.ts';

export interface WhatComesBackProps {
  /** Name of this widget in the address, where two share a page. */
  readonly instance?: string;
  /** What it begins with where a page has numbers of its own. */
  readonly start?: Start;
}

/**
 * A line with an antenna at its end. After using it a reader can go from reflection to standing-wave ratio and return loss, say how
 * much of the power comes back and what becomes of it, and why a lossy line makes a bad antenna look good.
 */
export default function WhatComesBack({ instance, start }: WhatComesBackProps) {
  const spec = useMemo(() => startingAt(backSpec, start), [start]);
  const use = useFields(spec, instance);
  const { state } = use;
  const { values } = state;
  const summary = summarise(values);
  return (
    <LineBandWidget
      {...use}
      spec={spec}
      instance={instance}
      draw={() => figureOf(state)}
      pulls="loss"
      axes={strings.axes}
      answers={answersOf(values)}
      between={
        <>
          <PowerShares
            rows={shareRows(lineOf(values))}
            spoken={shareRows(lineOf(values), 'spoken')}
            name={strings.shares.name}
          />
          <p class="small">
            <strong>{strings.cautionHead}</strong> {cautionText(values)}
          </p>
        </>
      }
      show={['swr', 'loss', 'match', 'level', 'directivity']}
      below={<PowersTable state={values} />}
      words={strings}
      note={strings.note}
      summary={summary}
    />
  );
}

/** Every power along the line. */
function PowersTable({ state }: { state: BackState }) {
  const { what, power, share } = strings.columns;
  const rows = powerRows(state).map((row) => ({ id: row.id, name: row.name, cells: [row.power, row.share] }));
  return <NumbersTable caption={strings.table} columns={[what, power, share]} rows={rows} folds />;
}
