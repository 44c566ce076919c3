import { gainDb } from '#compute';
import { type LinePart, lineSteps } from '../../sheet/line.ts';
import { NumbersTable } from '../parts/NumbersTable.tsx';
import { type LineState, lineOf } from './spec.ts';
import { strings } from './strings.ts';
import { againstDamage, cautionsFor, change, dbm, heatIn, inputOf, ratedText, watts } from './words.ts';

/** The figure's twin as a table: every part with its gain, the level behind it, its heat and what it takes. */
export function AlongTable({ state }: { state: LineState }) {
  const { part, gain, after, heat, rated } = strings.columns;
  const cautions = cautionsFor(state);
  const rows = lineSteps(lineOf(state)).map((step) => {
    const warms = heatIn(cautions, step.id);
    return {
      id: step.id,
      name: strings.parts[step.id],
      cells: [
        change('shown', step.gain),
        dbm('shown', step.to),
        warms ? watts('shown', warms.heat) : strings.none,
        ratedText(step.id),
      ],
    };
  });
  return (
    <NumbersTable caption={strings.table} columns={[part, gain, after, heat, rated]} rows={rows} folds />
  );
}

const LEFT: readonly Exclude<LinePart, 'amplifier'>[] = ['first', 'coax', 'second'];

/** What the sum says if one part were left out. A calculation, and it says so. */
export function LeftOutTable({ state }: { state: LineState }) {
  const { leftColumns } = strings;
  return (
    <table class="rungs slips">
      <caption>{strings.leftTable}</caption>
      <thead>
        <tr>
          <th scope="col">{leftColumns.part}</th>
          <th scope="col" class="number">
            {leftColumns.level}
          </th>
          <th scope="col">{leftColumns.against}</th>
        </tr>
      </thead>
      <tbody>
        {LEFT.map((id) => {
          const input = inputOf(cautionsFor(state, id));
          const over = (input.margin ?? gainDb(0)) < 0;
          return (
            <tr key={id} class={id === state.without ? 'looked-at' : undefined}>
              <th scope="row">{strings.parts[id]}</th>
              <td class="number" data-label={leftColumns.level}>
                {dbm('shown', input.level)}
              </td>
              <td>
                {over ? <strong>{againstDamage('shown', input)}</strong> : againstDamage('shown', input)}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
