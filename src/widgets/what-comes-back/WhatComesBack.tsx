import { useMemo } from 'preact/hooks';
import { PowerShares } from '../../figures/PowerShares.tsx';
import { FieldsWidget } from '../parts/FieldsWidget.tsx';
import { LineBandFigure } from '../parts/LineBandFigure.tsx';
import { type Start, startingAt } from '../parts/starting.ts';
import { useFields } from '../parts/use-fields.ts';
import { figureOf, shareRows } from './figure.ts';
import { backSpec, lineOf } from './spec.ts';
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
  const { state, send } = use;
  const { values } = state;
  const summary = summarise(values);
  return (
    <FieldsWidget
      {...use}
      kind="plain-widget"
      spec={spec}
      instance={instance}
      figure={
        <LineBandFigure
          figure={figureOf(state)}
          words={strings.axes}
          name={strings.name}
          description={strings.description(summary)}
          onGrasp={() => send({ type: 'grasp' })}
          onPull={(value) => send({ type: 'set', name: 'loss', value })}
          onRelease={() => send({ type: 'release' })}
          onCancel={() => send({ type: 'cancel' })}
        />
      }
      answers={answersOf(values)}
      between={
        <>
          <PowerShares rows={shareRows(lineOf(values))} name={strings.shares.name} description={summary} />
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
function PowersTable({ state }: { state: Parameters<typeof powerRows>[0] }) {
  const { columns } = strings;
  return (
    <table class="rungs slips">
      <caption>{strings.table}</caption>
      <thead>
        <tr>
          <th scope="col">{columns.what}</th>
          <th scope="col" class="number">
            {columns.power}
          </th>
          <th scope="col" class="number">
            {columns.share}
          </th>
        </tr>
      </thead>
      <tbody>
        {powerRows(state).map(({ id, name, power, share }) => (
          <tr key={id}>
            <th scope="row">{name}</th>
            <td class="number" data-label={columns.power}>
              {power}
            </td>
            <td class="number" data-label={columns.share}>
              {share}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
