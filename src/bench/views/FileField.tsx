import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { filesStrings as strings } from '../export/files-strings.ts';

/** What there is to say of the file that was chosen last. */
export interface FileTold {
  readonly problem?: string;
  readonly done?: string;
  /** What in it means nothing here. */
  readonly notes?: readonly string[];
}

interface FileFieldProps extends FileTold {
  readonly label: string;
  readonly help: string;
  readonly onFile: (file: File) => Promise<void>;
  /** What stands between the sentence and the notes. */
  readonly children?: ComponentChildren;
}

/** A field for a file that was saved here. What is wrong with it stands beside it. */
export function FileField({ label, help, problem, done = '', notes = [], onFile, children }: FileFieldProps) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="file"
        accept=".json,application/json"
        aria-invalid={problem === undefined ? undefined : 'true'}
        aria-describedby={`${id}-help ${id}-told`}
        onChange={(event) => {
          const input = event.currentTarget;
          const file = input.files?.[0];
          if (file === undefined) return;
          // the same file may be chosen again after it was mended
          void onFile(file).finally(() => {
            input.value = '';
          });
        }}
      />
      <p id={`${id}-told`} role="status" class={problem === undefined ? undefined : 'problem'}>
        {problem ?? done}
      </p>
      {children}
      {notes.length > 0 && <Notes notes={notes} />}
      <p class="field-help" id={`${id}-help`}>
        {help}
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
