import { useId, useState } from 'preact/hooks';
import { sizeProblem } from '../../exchange/read-file.ts';
import type { SheetEntries } from '../../sheet/entries.ts';
import { filesStrings as strings } from '../files-strings.ts';
import { type SheetsRead, sheetsInFile } from '../sheet-file.ts';
import type { FilesProps } from './FilesPart.tsx';

interface Told {
  readonly problem?: string;
  readonly opened?: string;
  readonly notes?: readonly string[];
  /** Sheets of a file that has several, to choose from. */
  readonly among?: readonly SheetEntries[];
}

const titleOf = ({ title }: SheetEntries): string => (title.trim() === '' ? strings.untitled : `“${title}”`);

/** Reads a chosen file; one that the browser says is too large is not even looked at. */
async function readChosen(file: File): Promise<SheetsRead> {
  const problem = sizeProblem(file.size);
  if (problem !== undefined) return { ok: false, problem };
  return file.arrayBuffer().then(
    (buffer) => sheetsInFile(new Uint8Array(buffer)),
    () => ({ ok: false, problem: strings.unreadable }),
  );
}

/** A field for a file of sheets. What is wrong with it stands beside it, and then nothing has changed. */
export function OpenFile({ send }: Pick<FilesProps, 'send'>) {
  const [told, setTold] = useState<Told>({});
  const id = useId();
  const open = (entries: SheetEntries, notes: readonly string[]): void => {
    send({ type: 'open', entries, problems: [] });
    setTold({ opened: strings.opened(titleOf(entries)), notes });
  };
  const onFile = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    setTold({});
    const read = await readChosen(file);
    if (!read.ok) return setTold({ problem: read.problem });
    const [only, ...others] = read.sheets;
    if (only !== undefined && others.length === 0) return open(only, read.notes);
    return setTold({ among: read.sheets, notes: read.notes });
  };
  const { problem, opened = '', notes = [], among = [] } = told;
  return (
    <div class="field">
      <label for={id}>{strings.open}</label>
      <input
        id={id}
        type="file"
        accept=".json,application/json"
        aria-invalid={problem === undefined ? undefined : 'true'}
        aria-describedby={`${id}-help ${id}-told`}
        onChange={(event) => {
          const input = event.currentTarget;
          // the same file may be chosen again after it was mended
          void onFile(input.files?.[0]).finally(() => {
            input.value = '';
          });
        }}
      />
      <p id={`${id}-told`} role="status" class={problem === undefined ? undefined : 'problem'}>
        {problem ?? (among.length > 0 ? strings.several(among.length) : opened)}
      </p>
      {among.length > 0 && (
        <ul class="file-sheets">
          {among.map((entries, index) => (
            <li key={`${index + 1}`}>
              <button type="button" onClick={() => open(entries, notes)}>
                {titleOf(entries)}
              </button>
            </li>
          ))}
        </ul>
      )}
      {notes.length > 0 && <Notes notes={notes} />}
      <p class="field-help" id={`${id}-help`}>
        {strings.openHelp}
      </p>
    </div>
  );
}

const Notes = ({ notes }: { notes: readonly string[] }) => (
  <div>
    <p>{strings.notes}</p>
    <ul>
      {notes.map((note) => (
        <li key={note}>{note}</li>
      ))}
    </ul>
  </div>
);
