import { gainDb } from '#compute';
import { type LinePart, lineSteps } from '../../sheet/line.ts';
import { type LineState, lineOf } from './spec.ts';
import { strings } from './strings.ts';
import { againstDamage, cautionsFor, change, dbm, heatIn, inputOf, ratedText, watts } from './words.ts';

/** The figure's twin as a table: every part with its gain, the level behind it, its heat and what it takes. */
export function PartsTable({ state }: { state: LineState }) {
  const { columns } = strings;
  const cautions = cautionsFor(state);
  return (
    <table class="rungs slips">
      <caption>{strings.table}</caption>
      <thead>
        <tr>
          <th scope="col">{columns.part}</th>
          {[columns.gain, columns.after, columns.heat, columns.rated].map((head) => (
            <th key={head} scope="col" class="number">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {lineSteps(lineOf(state)).map(({ id, gain, to }) => {
          const heat = heatIn(cautions, id);
          return (
            <tr key={id}>
              <th scope="row">{strings.parts[id]}</th>
              <Cell head={columns.gain} text={change('shown', gain)} />
              <Cell head={columns.after} text={dbm('shown', to)} />
              <Cell head={columns.heat} text={heat ? watts('shown', heat.heat) : strings.none} />
              <Cell head={columns.rated} text={ratedText(id)} />
            </tr>
          );
        })}
      </tbody>
    </table>
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
              <Cell head={leftColumns.level} text={dbm('shown', input.level)} />
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

function Cell({ head, text }: { head: string; text: string }) {
  return (
    <td class="number" data-label={head}>
      {text}
    </td>
  );
}
