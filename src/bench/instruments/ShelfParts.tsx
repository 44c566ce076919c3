import { useState } from 'preact/hooks';
import { blankInstrument } from '../../instruments/blank.ts';
import { clubInstruments } from '../../instruments/club.ts';
import { INSTRUMENT_KINDS, type InstrumentKind } from '../../instruments/instrument.ts';
import { newId } from '../../store/kept.ts';
import { fieldTexts } from '../../text/field-texts.ts';
import { Problem } from '../../widgets/parts/Problem.tsx';
import { SelectField } from '../../widgets/parts/SelectField.tsx';
import { useDecimal } from '../../widgets/parts/use-decimal.ts';
import { controlId } from '../form/keys.ts';
import { choiceStrings } from './choice-strings.ts';
import { fieldPath } from './read-instrument.ts';
import { roomOn, type Shelf } from './shelf.ts';
import { shelfStrings as strings } from './shelf-strings.ts';
import { instrumentStrings } from './strings.ts';
import type { ShelfTools } from './use-shelf.ts';

/** Id of the field with the name in the form that is open. */
export const LABEL = controlId(fieldPath('label'));

/** Whether what stands on the page is kept. */
export function ShelfStatus({ shelf, waiting }: ShelfTools) {
  const words = statusOf(shelf, waiting);
  return (
    <>
      <Problem>
        {shelf.problem !== undefined && strings.nothingKept(choiceStrings.problems[shelf.problem])}
      </Problem>
      <Problem>{shelf.unreadable > 0 && strings.unreadable(shelf.unreadable)}</Problem>
      <p role="status" class="small">
        {words}
      </p>
    </>
  );
}

function statusOf({ items, problem }: Shelf, waiting: boolean): string {
  if (items === undefined || problem !== undefined || items.length === 0) return '';
  if (waiting) return strings.being;
  return items.some((item) => item.problem !== undefined) ? strings.notKept : strings.kept;
}

const ROOM = controlId('instrument-room');

/** What the shelf has no room for; nothing while it has. */
export function roomWords(shelf: Shelf, club: number): string {
  const room = roomOn(shelf);
  if (room === 0) return strings.full(shelf.items?.length ?? 0);
  return club > room ? strings.clubFull({ count: club, room }) : '';
}

/** Adds one of a kind, or the invented set. */
export function AddPart({ shelf, send, focus }: ShelfTools & { focus: (id: string) => void }) {
  const [kind, setKind] = useState<InstrumentKind>('meter');
  const decimal = useDecimal();
  const club = clubInstruments();
  const room = roomOn(shelf);
  return (
    <>
      <div class="add-link">
        <SelectField
          id={controlId('instrument-new')}
          label={strings.addKind}
          value={kind}
          options={INSTRUMENT_KINDS}
          words={instrumentStrings.kinds}
          onChoice={setKind}
        />
        <button
          type="button"
          disabled={room === 0}
          aria-describedby={ROOM}
          onClick={() => {
            focus(LABEL);
            send({ type: 'add', items: [{ id: newId(), value: blankInstrument(kind) }] });
          }}
        >
          {strings.add}
        </button>
        <button
          type="button"
          disabled={club.length > room}
          aria-describedby={ROOM}
          onClick={() =>
            send({
              type: 'add',
              items: club.map((value) => ({ id: newId(), value: fieldTexts(value, decimal) })),
            })
          }
        >
          {strings.addClub}
        </button>
      </div>
      <p id={ROOM} role="status" class="small">
        {roomWords(shelf, club.length)}
      </p>
    </>
  );
}
