import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { SheetEntries } from '../../sheet/entries.ts';
import type { KeptHead, KeptList } from '../../store/kept.ts';
import { quoted } from '../../text/clean.ts';
import { TextField } from '../../widgets/parts/TextField.tsx';
import { findable, found } from './find-sheets.ts';
import { SheetRow } from './SheetRow.tsx';
import { sheetStrings as strings } from './strings.ts';
import { type Sheets, useSheets } from './use-sheets.ts';

/** The sheets that this browser keeps: searched, opened, duplicated, deleted and brought back. */
export default function SheetList() {
  const sheets = useSheets();
  const { list, shelf, restore } = sheets;
  const undo = useRef<HTMLButtonElement>(null);
  const { length } = shelf.removed;
  const before = useRef(0);
  useEffect(() => {
    // the button that was pressed is gone with its row
    if (length > before.current) undo.current?.focus();
    before.current = length;
  }, [length]);
  return (
    <div class={list === undefined ? 'sheets needs-script late' : 'sheets needs-script late woken'}>
      <div role="status" class="sheets-told">
        {shelf.note !== '' && <p>{shelf.note}</p>}
      </div>
      {length > 0 && (
        <p>
          <button type="button" ref={undo} onClick={restore}>
            {strings.undo}
          </button>
        </p>
      )}
      {list === undefined && <p>{strings.reading}</p>}
      {list?.ok === false && <p class="caution">{strings.problems[list.problem]}</p>}
      {list?.ok && <Found {...sheets} list={list.value} />}
    </div>
  );
}

function Found({
  list,
  duplicate,
  remove,
}: { list: KeptList<SheetEntries> } & Pick<Sheets, 'duplicate' | 'remove'>) {
  const [query, setQuery] = useState('');
  const all = useMemo(() => list.items.map(findable), [list]);
  const shown = useMemo(() => found(all, query), [all, query]);
  const now = Date.now();
  return (
    <>
      <TextField
        id="search"
        label={strings.search}
        help={strings.searchHelp}
        value={query}
        onText={setQuery}
      />
      <p role="status" class="muted small">
        {all.length === 0
          ? strings.none
          : shown.length === 0
            ? strings.noneFound
            : strings.count(shown.length, all.length)}
      </p>
      <ul class="sheet-list">
        {shown.map((sheet) => (
          <SheetRow
            key={sheet.id}
            sheet={sheet}
            now={now}
            onDuplicate={() => duplicate(sheet)}
            onRemove={() => remove(sheet)}
          />
        ))}
      </ul>
      <Unreadable list={list.unreadable} onRemove={remove} />
    </>
  );
}

interface UnreadableProps {
  readonly list: readonly (KeptHead & { readonly problem: 'newer' | 'damaged' })[];
  readonly onRemove: (head: KeptHead) => void;
}

/**
 * What lies there and cannot be read by this version: told, and left as it is. Only what is damaged can be deleted here: what a newer
 * version kept is whole.
 */
function Unreadable({ list, onRemove }: UnreadableProps) {
  if (list.length === 0) return null;
  return (
    <section aria-labelledby="unreadable">
      <h2 id="unreadable">{strings.unreadable.title}</h2>
      <ul>
        {list.map((head) => (
          <li key={head.id}>
            {quoted(head.name)} {strings.unreadable[head.problem]}{' '}
            {head.problem === 'damaged' && (
              <button
                type="button"
                aria-label={strings.onlyButton(strings.remove, head.name)}
                onClick={() => onRemove(head)}
              >
                {strings.remove}
              </button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
