import { useState } from 'preact/hooks';
import { saveFile } from '../../exchange/save-file.ts';
import { useDecimal } from '../../widgets/parts/use-decimal.ts';
import { FILE_KINDS, type FileKind, fileOf } from '../export/files.ts';
import { filesStrings as strings } from '../export/files-strings.ts';
import type { FilesProps } from './FilesPart.tsx';
import { OpenFile } from './OpenFile.tsx';

/** Buttons that save a sheet in each form, once it has a result, and a field that opens one. */
export function Files({ own, send, ...props }: FilesProps) {
  return (
    <div class="files">
      {own && <SaveFiles {...props} />}
      <OpenFile send={send} />
    </div>
  );
}

function SaveFiles({ take, inRange }: Pick<FilesProps, 'take' | 'inRange'>) {
  const decimal = useDecimal();
  const [told, setTold] = useState('');
  const save = async (kind: FileKind): Promise<void> => {
    setTold('');
    const wish = { kind, decimal, at: new Date().toISOString(), page: location.href.replace(/[?#].*/s, '') };
    const made = await fileOf(take(), wish).catch(() => ({ problem: strings.failed }));
    if ('problem' in made) setTold(made.problem);
    else {
      saveFile(made);
      setTold(strings.saved(made.name));
    }
  };
  return (
    <>
      <h3>{strings.save}</h3>
      <p class="field-help measure">{strings.saveHelp}</p>
      {!take().usable && <p class="measure">{strings.stale}</p>}
      <p class="file-buttons">
        {FILE_KINDS.map((kind) => (
          <button
            key={kind}
            type="button"
            disabled={!inRange && (kind === 'svg' || kind === 'png')}
            onClick={() => save(kind)}
          >
            {strings[kind]}
          </button>
        ))}
      </p>
      {!inRange && <p>{strings.noPicture}</p>}
      <p role="status">{told}</p>
    </>
  );
}
