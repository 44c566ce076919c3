import { controlId } from '../../bench/form/keys.ts';
import { isolated } from '../../text/isolate.ts';
import { SelectField } from '../../widgets/parts/SelectField.tsx';
import { TextField } from '../../widgets/parts/TextField.tsx';
import { FEWEST_ROWS, MOST_ROWS } from '../entries.ts';
import type { CompareAction, CompareState } from '../state.ts';
import { strings } from '../strings.ts';
import { nameOf } from '../words.ts';

export interface PartProps {
  readonly state: CompareState;
  readonly send: (action: CompareAction) => void;
}

/** Lines of an address. */
const ROWS = 2;

/** The sheets: an address each, and the point that is meant where there are several. */
export function SheetsPart({ state, send }: PartProps) {
  const { rows } = state.entries;
  return (
    <fieldset class="bench-part">
      <legend>{strings.sheets}</legend>
      <ol class="places">
        {rows.map((row, index) => (
          <Sheet key={row.id} state={state} send={send} index={index} />
        ))}
      </ol>
      <p class="point-actions">
        <button
          type="button"
          class="plain"
          disabled={rows.length >= MOST_ROWS}
          onClick={() => send({ type: 'add', address: '' })}
        >
          {strings.add}
        </button>
      </p>
    </fieldset>
  );
}

function Sheet({ state, send, index }: PartProps & { readonly index: number }) {
  const row = state.entries.rows[index];
  const read = state.comparison.rows[index];
  if (row === undefined || read === undefined) return null;
  const { result, problem, points } = read;
  const options = points.map((_, place) => String(place + 1));
  return (
    <li>
      <fieldset class="link">
        <legend>{result === undefined ? strings.sheet(index + 1) : nameOf(result)}</legend>
        <div class="link-body">
          <TextField
            id={controlId(`${row.id}.address`)}
            label={strings.address}
            value={row.address}
            rows={ROWS}
            help={strings.addressHelp}
            problem={problem}
            onText={(address) => send({ type: 'edit', id: row.id, change: { address } })}
          />
          {points.length > 1 && (
            <SelectField
              id={controlId(`${row.id}.point`)}
              label={strings.point}
              value={row.point === '' ? '1' : row.point}
              options={options}
              words={Object.fromEntries(points.map((label, place) => [String(place + 1), label]))}
              onChoice={(point) => send({ type: 'edit', id: row.id, change: { point } })}
            />
          )}
          {state.entries.rows.length > FEWEST_ROWS && (
            <p class="point-actions">
              <button type="button" class="plain" onClick={() => send({ type: 'remove', id: row.id })}>
                {strings.remove(index + 1)}
              </button>
            </p>
          )}
        </div>
      </fieldset>
    </li>
  );
}

/** What may be one and the same thing in several of them. */
export function SharedPart({ state, send }: PartProps) {
  const { shared } = strings;
  const { candidates } = state.comparison;
  return (
    <fieldset class="bench-part">
      <legend>{shared.heading}</legend>
      <p class="field-help measure">{shared.help}</p>
      {candidates.length === 0 && <p class="measure">{shared.none}</p>}
      {candidates.map((candidate) => (
        <p key={`${candidate.kind} ${candidate.name}`} class="shared-mark">
          <label class="switch">
            <input
              type="checkbox"
              checked={candidate.shared}
              onChange={() => send({ type: 'turn', candidate })}
            />{' '}
            {shared[candidate.kind](isolated(candidate.name), candidate.sheets)}
          </label>
        </p>
      ))}
    </fieldset>
  );
}
