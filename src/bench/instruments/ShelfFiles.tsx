import { useState } from 'preact/hooks';
import { readChosen } from '../../exchange/chosen-file.ts';
import { fileName } from '../../exchange/file-name.ts';
import { type FileToSave, saveFile } from '../../exchange/save-file.ts';
import { newId } from '../../store/kept.ts';
import { SelectField } from '../../widgets/parts/SelectField.tsx';
import { controlId } from '../form/keys.ts';
import { FileField, type FileTold } from '../views/FileField.tsx';
import { instrumentsAsFile, instrumentsInFile } from './instrument-file.ts';
import { fullName, nameOf } from './instrument-words.ts';
import { roomOn } from './shelf.ts';
import { nameless, noRoom, placed } from './shelf-file.ts';
import { shelfFileStrings as strings } from './shelf-file-strings.ts';
import type { Known } from './take.ts';
import type { ShelfTools } from './use-shelf.ts';

const ALL = 'all';

/** Saves instruments as a file, and opens one. */
export const ShelfFiles = (tools: Pick<ShelfTools, 'latest' | 'send'> & SaveProps) => (
  <div class="files">
    <SaveShelf shelf={tools.shelf} />
    <OpenShelf {...tools} />
  </div>
);

type SaveProps = Pick<ShelfTools, 'shelf'>;

/** The file of what was chosen: it has the name of the one, or tells that it holds several. */
function shelfFile(
  whole: readonly Known[],
  { one, leaves }: { readonly one: Known | undefined; readonly leaves: boolean },
): FileToSave | { readonly problem: string } {
  const going = leaves ? nameless(whole) : whole;
  const written = instrumentsAsFile(going, new Date().toISOString());
  if (!written.ok) return { problem: written.problem };
  const [first] = going;
  const words = one === undefined || first === undefined ? strings.fileName : nameOf(first.value);
  return { name: fileName(words, 'json'), type: 'application/json', content: written.text };
}

function SaveShelf({ shelf: { items = [] } }: SaveProps) {
  const [chosen, setChosen] = useState(ALL);
  const [leaves, setLeaves] = useState(false);
  const [told, setTold] = useState('');
  const one = items.find(({ id }) => id === chosen);
  if (items.length === 0) return <p>{strings.nothing}</p>;
  const save = (): void => {
    const made = shelfFile(one === undefined ? items : [one], { one, leaves });
    if ('problem' in made) setTold(made.problem);
    else {
      saveFile(made);
      setTold(strings.saved(made.name));
    }
  };
  return (
    <>
      <SelectField
        id={controlId('instrument-file')}
        label={strings.which}
        value={one?.id ?? ALL}
        options={[ALL, ...items.map(({ id }) => id)]}
        words={Object.fromEntries([
          [ALL, strings.all],
          ...items.map(({ id, value }) => [id, fullName(value)]),
        ])}
        onChoice={setChosen}
      />
      <label class="switch">
        <input type="checkbox" checked={leaves} onChange={() => setLeaves(!leaves)} />
        <span>{strings.leaveNames}</span>
      </label>
      <p class="file-buttons">
        <button type="button" onClick={save}>
          {strings.save}
        </button>
      </p>
      <p role="status">{told}</p>
    </>
  );
}

function OpenShelf({ latest, send }: Pick<ShelfTools, 'latest' | 'send'>) {
  const [told, setTold] = useState<FileTold>({});
  const onFile = async (file: File): Promise<void> => {
    setTold({});
    const chosen = await readChosen(file);
    const read = chosen.ok ? instrumentsInFile(chosen.bytes) : chosen;
    if (!read.ok) return setTold({ problem: read.problem });
    // the shelf as it is after the reading, which takes a while
    const shelf = latest();
    const placing = placed(read.instruments, shelf, newId);
    const problem = noRoom(placing, roomOn(shelf));
    if (problem !== undefined) return setTold({ problem });
    const { items, beside, same } = placing;
    if (items.length > 0) send({ type: 'add', items });
    const done = [
      strings.added(items.length),
      ...(beside > 0 ? [strings.beside(beside)] : []),
      ...(same > 0 ? [strings.same(same)] : []),
    ];
    return setTold({ done: done.join(' '), notes: read.notes });
  };
  return <FileField label={strings.open} help={strings.openHelp} {...told} onFile={onFile} />;
}
