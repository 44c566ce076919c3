import { useState } from 'preact/hooks';
import { isolated } from '../../text/isolate.ts';
import { SelectField } from '../../widgets/parts/SelectField.tsx';
import { MOST_ROWS } from '../entries.ts';
import { strings } from '../strings.ts';
import { useKept } from '../use-kept.ts';
import type { PartProps } from './SheetsPart.tsx';

/** Takes a sheet that is kept in this browser; the store is opened when it is asked for. */
export function KeptPart({ state, send }: PartProps) {
  const { list, open, take, told } = useKept((address) => send({ type: 'add', address }));
  const [chosen, setChosen] = useState<string>();
  const { kept } = strings;
  const sheet = list?.find(({ id }) => id === chosen) ?? list?.[0];
  const { rows } = state.entries;
  const full = rows.length >= MOST_ROWS && rows.every(({ address }) => address.trim() !== '');
  return (
    <div class="needs-script">
      {sheet === undefined || list === undefined ? (
        <p class="point-actions">
          <button type="button" class="plain" onClick={open}>
            {kept.open}
          </button>
        </p>
      ) : (
        <>
          <div class="fields">
            <SelectField
              id="kept-which"
              class="field-double"
              label={kept.which}
              value={sheet.id}
              options={list.map(({ id }) => id)}
              words={Object.fromEntries(list.map(({ id, name }) => [id, isolated(name) || kept.unnamed]))}
              onChoice={setChosen}
            />
          </div>
          <p class="point-actions">
            <button type="button" class="plain" disabled={full} onClick={() => take(sheet)}>
              {kept.take}
            </button>
          </p>
        </>
      )}
      <p role="status" class="measure">
        {told}
      </p>
    </div>
  );
}
