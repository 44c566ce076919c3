import { useState } from 'preact/hooks';
import { readChosen } from '../../exchange/chosen-file.ts';
import type { SheetEntries } from '../../sheet/entries.ts';
import { isolated } from '../../text/isolate.ts';
import { filesStrings as strings } from '../export/files-strings.ts';
import { sheetsInFile } from '../export/sheet-file.ts';
import { FileField, type FileTold } from './FileField.tsx';
import type { FilesProps } from './FilesPart.tsx';

interface Told extends FileTold {
  /** Sheets of a file that has several, to choose from. */
  readonly among?: readonly SheetEntries[];
}

const titleOf = ({ title }: SheetEntries): string =>
  title.trim() === '' ? strings.untitled : `“${isolated(title)}”`;

/** A field for a file of sheets. What is wrong with it stands beside it, and then nothing has changed. */
export function OpenFile({ send }: Pick<FilesProps, 'send'>) {
  const [told, setTold] = useState<Told>({});
  const open = (entries: SheetEntries, notes: readonly string[]): void => {
    send({ type: 'open', entries, problems: [] });
    setTold({ done: strings.opened(titleOf(entries)), notes });
  };
  const onFile = async (file: File): Promise<void> => {
    setTold({});
    const chosen = await readChosen(file);
    const read = chosen.ok ? sheetsInFile(chosen.bytes) : chosen;
    if (!read.ok) return setTold({ problem: read.problem });
    const [only, ...others] = read.sheets;
    if (only !== undefined && others.length === 0) return open(only, read.notes);
    return setTold({ done: strings.several(read.sheets.length), among: read.sheets, notes: read.notes });
  };
  const { among = [], notes = [] } = told;
  return (
    <FileField label={strings.open} help={strings.openHelp} {...told} onFile={onFile}>
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
    </FileField>
  );
}
