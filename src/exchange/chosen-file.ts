import { sizeProblem } from './read-file.ts';
import { exchangeStrings as strings } from './strings.ts';

/** What a chosen file holds, or why it was not read. */
export type ChosenRead =
  | { readonly ok: true; readonly bytes: Uint8Array }
  | { readonly ok: false; readonly problem: string };

/** Reads a file that somebody chose; one that the browser says is too large is not even looked at. Never rejects. */
export async function readChosen(file: Pick<File, 'size' | 'arrayBuffer'>): Promise<ChosenRead> {
  const problem = sizeProblem(file.size);
  if (problem !== undefined) return { ok: false, problem };
  return file.arrayBuffer().then(
    (buffer) => ({ ok: true, bytes: new Uint8Array(buffer) }),
    () => ({ ok: false, problem: strings.unreadable }),
  );
}
