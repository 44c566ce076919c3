import { composeStrings as strings } from './compose-strings.ts';
import type { Part } from './talk.ts';

interface Files {
  readonly parts: () => readonly Part[];
  readonly take: (parts: readonly Part[]) => void;
  readonly say: (words: string) => void;
}

async function save({ parts, say }: Files): Promise<void> {
  const [{ talkAsFile }, { saveFile }] = await Promise.all([
    import('./talk-file.ts'),
    import('../exchange/save-file.ts'),
  ]);
  const written = talkAsFile(parts(), new Date().toISOString());
  if (written.ok) saveFile({ name: 'talk.json', content: written.text, type: 'application/json' });
  else say(written.problem);
}

async function open(file: File, { take, say }: Files): Promise<void> {
  const [{ talkInFile }, { readChosen }] = await Promise.all([
    import('./talk-file.ts'),
    import('../exchange/chosen-file.ts'),
  ]);
  const chosen = await readChosen(file);
  const read = chosen.ok ? talkInFile(chosen.bytes) : chosen;
  if (read.ok) take(read.parts);
  else say(read.problem);
}

/** Saves the talk as a file when asked, and opens one that is chosen; what reads and writes is fetched then. */
export function onFiles(files: Files): void {
  const lost = (): void => files.say(strings.noFile);
  document.querySelector('#talk-save')?.addEventListener('click', () => void save(files).catch(lost));
  const field = document.querySelector<HTMLInputElement>('#talk-open');
  field?.addEventListener('change', () => {
    const [file] = field.files ?? [];
    if (file) void open(file, files).catch(lost);
    field.value = '';
  });
}
