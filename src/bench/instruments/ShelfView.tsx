import { useEffect, useRef, useState } from 'preact/hooks';
import { type Day, dayOf } from '../../instruments/day.ts';
import { newId } from '../../store/kept.ts';
import { isolated } from '../../text/isolate.ts';
import { DecimalChoice } from '../../widgets/parts/DecimalChoice.tsx';
import { FIELDS_HELP } from '../../widgets/parts/decimal-help.ts';
import { controlId } from '../form/keys.ts';
import { nameOf } from './instrument-words.ts';
import { type EntryActs, editButtonId, ShelfEntry } from './ShelfEntry.tsx';
import { ShelfFilesPart } from './ShelfFilesPart.tsx';
import { AddPart, LABEL, ShelfStatus } from './ShelfParts.tsx';
import { roomOn } from './shelf.ts';
import { shelfStrings as strings } from './shelf-strings.ts';
import { type ShelfTools, useShelf } from './use-shelf.ts';

const UNDO = controlId('instrument-undo');

/** The reader's instruments: a list, the form of one, and ways to add, double and delete. */
export function ShelfView() {
  const tools = useShelf();
  const { shelf, send } = tools;
  const today = useToday();
  const focus = useFocusNext();
  const acts = actsOf(tools, focus);
  const { items } = shelf;
  return (
    <div class={items === undefined ? 'late' : 'late woken'}>
      <ShelfStatus {...tools} />
      {items === undefined && <p>{strings.waiting}</p>}
      {items?.length === 0 && <p>{strings.empty}</p>}
      <ul class="instruments">
        {items?.map((item) => (
          <ShelfEntry
            key={item.id}
            item={item}
            open={item.id === shelf.open}
            today={today}
            told={shelf.problem !== undefined}
            full={roomOn(shelf) === 0}
            {...acts}
          />
        ))}
      </ul>
      {shelf.removed !== undefined && (
        <p class="shelf-removed">
          {strings.removed(isolated(nameOf(shelf.removed.item.value)))}{' '}
          <button
            type="button"
            id={UNDO}
            onClick={() => {
              focus(editButtonId(shelf.removed?.item.id ?? ''));
              send({ type: 'restore' });
            }}
          >
            {strings.restore}
          </button>
        </p>
      )}
      {items !== undefined && <AddPart {...tools} focus={focus} />}
      {items !== undefined && <DecimalChoice help={FIELDS_HELP} />}
      {items !== undefined && <ShelfFilesPart {...tools} />}
    </div>
  );
}

const actsOf = ({ send, reread }: ShelfTools, focus: (id: string) => void): EntryActs => ({
  onEdit: (id, change) => send({ type: 'edit', id, change }),
  onOpen: (id) => send({ type: 'open', id }),
  onDuplicate: ({ id, value }) => {
    focus(LABEL);
    send({ type: 'duplicate', id, copy: newId(), label: strings.copyOf(nameOf(value)) });
  },
  onRemove: (id) => {
    focus(UNDO);
    send({ type: 'remove', id });
  },
  onTakeKept: reread,
});

/** Today by the clock of the device, once the page is awake. */
function useToday(): Day | undefined {
  const [today, setToday] = useState<Day | undefined>(undefined);
  useEffect(() => setToday(dayOf(new Date())), []);
  return today;
}

/** Sets where the focus goes once what was done is drawn. */
function useFocusNext(): (id: string) => void {
  const next = useRef<string | undefined>(undefined);
  useEffect(() => {
    // An effect of the drawing before may come first, when what is to have the focus is not there yet.
    const control = next.current === undefined ? null : document.getElementById(next.current);
    if (control === null) return;
    control.focus();
    next.current = undefined;
  });
  return (id) => {
    next.current = id;
  };
}
