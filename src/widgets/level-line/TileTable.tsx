import { MOST_TILES } from '../../figures/tile-line.layout.ts';
import { runningMeanings } from './meaning.ts';
import type { LineAction, LineState } from './state.ts';
import { strings } from './strings.ts';
import { TileRow } from './TileRow.tsx';
import { meaningText } from './words.ts';

interface TableProps {
  readonly state: LineState;
  readonly send: (action: LineAction) => void;
}

/** The figure's twin as a table: each tile with its kind, its number, its place, and the line up to it. */
export function TileTable({ state, send }: TableProps) {
  const running = runningMeanings(state.tiles);
  return (
    <>
      <table class="rungs">
        <caption>{strings.controls}</caption>
        <thead>
          <tr>
            <th scope="col">{strings.tileColumn}</th>
            <th scope="col">{strings.setColumn}</th>
            <th scope="col" class="number">
              {strings.runningColumn}
            </th>
          </tr>
        </thead>
        <tbody>
          {state.tiles.map((tile, index) => {
            const meaning = running[index];
            return (
              <TileRow
                key={tile.id}
                tile={tile}
                index={index}
                running={meaning ? meaningText('shown', meaning) : ''}
                send={send}
              />
            );
          })}
        </tbody>
      </table>
      <p class="needs-script tile-actions">
        {(['level', 'gain'] as const).map((kind) => (
          <button
            key={kind}
            type="button"
            disabled={state.tiles.length >= MOST_TILES}
            onClick={() => send({ type: 'add', kind })}
          >
            {kind === 'level' ? strings.addLevel : strings.addGain}
          </button>
        ))}
        <button type="button" onClick={() => send({ type: 'reset' })}>
          {strings.reset}
        </button>
        {state.tiles.length >= MOST_TILES && <span role="status">{strings.full}</span>}
      </p>
    </>
  );
}
