import type { FileForm } from '../exchange/file-form.ts';
import { readFile } from '../exchange/read-file.ts';
import { type FileWritten, writeFile } from '../exchange/write-file.ts';
import { composeStrings as strings } from './compose-strings.ts';
import { isPart, MOST_PARTS, type Part } from './talk.ts';

const form = () =>
  ({
    version: 1,
    lists: { steps: { part: { type: 'text', key: 'p', label: strings.part, maxLength: 200, default: '' } } },
  }) as const satisfies FileForm;

/** A talk as the text of a file. */
export const talkAsFile = (parts: readonly Part[], saved: string): FileWritten =>
  writeFile(form(), { steps: parts.map((part) => ({ part })) }, saved);

/** The talk of a file, or the first thing that is wrong with it. */
export type TalkRead =
  | { readonly ok: true; readonly parts: readonly Part[] }
  | { readonly ok: false; readonly problem: string };

/** Reads a file of a talk; all of it is taken, or nothing. Never throws. */
export function talkInFile(bytes: Uint8Array): TalkRead {
  const read = readFile(form(), bytes);
  if (!read.ok) return read;
  const parts = read.held.steps.map(({ part }) => part);
  const odd = parts.find((part) => !isPart(part));
  if (odd !== undefined) return { ok: false, problem: strings.noPart(odd) };
  if (parts.length > MOST_PARTS) return { ok: false, problem: strings.tooMany(MOST_PARTS) };
  return { ok: true, parts };
}
