import { quantityText } from '../../text/quantity-text.ts';
import { amountText } from '../../text/statement-text.ts';
import { NumberField } from '../parts/NumberField.tsx';
import { readerOf } from '../parts/read-amount.ts';
import { Slider } from '../parts/Slider.tsx';
import { type TileKind, VALUE } from './spec.ts';
import type { LineAction, PlacedTile } from './state.ts';
import { strings } from './strings.ts';
import { tilesOf } from './words.ts';

const KINDS: readonly TileKind[] = ['level', 'gain', 'less'];
const readers = {
  level: readerOf({ kind: 'level', min: VALUE.min, max: VALUE.max, decimals: 0 }),
  gain: readerOf({ kind: 'gain', min: VALUE.min, max: VALUE.max, decimals: 0 }),
};

interface RowProps {
  readonly tile: PlacedTile;
  readonly index: number;
  readonly running: string;
  readonly send: (action: LineAction) => void;
}

/** One tile with its kind, its number, its place in the line, and what the line comes to up to it. */
export function TileRow({ tile, index, running, send }: RowProps) {
  const { id, kind, value } = tile;
  const [drawn] = tilesOf([tile]);
  const unit = kind === 'gain' ? 'dB' : 'dBm';
  const set = (next: number): void => send({ type: 'value', id, value: next });
  return (
    <tr>
      <th scope="row">{strings.tile(index)}</th>
      <td>
        <span class="print-only">{drawn && `${drawn.word} ${drawn.number}\u00a0${drawn.unit}`}</span>
        <div class="rung-control tile-control">
          <select
            class="needs-script"
            aria-label={strings.kind(index)}
            value={kind}
            onChange={(event) => {
              const chosen = KINDS.find((candidate) => candidate === event.currentTarget.value);
              if (chosen) send({ type: 'kind', id, kind: chosen });
            }}
          >
            {KINDS.map((code) => (
              <option key={code} value={code} selected={code === kind}>
                {strings.kinds[code]}
              </option>
            ))}
          </select>
          <Slider
            label={strings.slide(index)}
            {...VALUE}
            value={value}
            valueText={quantityText('spoken', { value, decimals: VALUE.decimals, unit })}
            onValue={set}
          />
          <NumberField
            label={strings.value(index)}
            shown={amountText(value)}
            unit={unit}
            read={kind === 'gain' ? readers.gain : readers.level}
            onValue={set}
          />
          <TileMoves id={id} index={index} send={send} />
        </div>
      </td>
      <td class="number" data-label={strings.runningColumn}>
        {running}
      </td>
    </tr>
  );
}

function TileMoves({ id, index, send }: Pick<RowProps, 'index' | 'send'> & { id: string }) {
  const button = (words: string, sign: string, action: LineAction) => (
    <button
      type="button"
      aria-label={strings.ofTile(words, index)}
      title={words}
      onClick={() => send(action)}
    >
      {sign}
    </button>
  );
  return (
    <span class="tile-moves needs-script">
      {button(strings.earlier, '\u2190', { type: 'move', id, to: index - 1 })}
      {button(strings.later, '\u2192', { type: 'move', id, to: index + 1 })}
      {button(strings.remove, '\u00d7', { type: 'remove', id })}
    </span>
  );
}
