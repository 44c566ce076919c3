import { readChosen } from '../exchange/chosen-file.ts';
import { fileName } from '../exchange/file-name.ts';
import { saveFile } from '../exchange/save-file.ts';
import type { Answers } from './answers.ts';
import { type AnswersRead, answersAsFile, answersInFile } from './answers-file.ts';
import { progressStrings as strings } from './progress-strings.ts';

/** Hands all answers to the browser as a file; answers with the reason where none is made. */
export function saveAnswers(answers: Answers, now: Date): string | undefined {
  const saved = now.toISOString();
  const file = answersAsFile(answers, saved);
  if (!file.ok) return file.problem;
  const name = fileName(`${strings.fileName} ${saved.slice(0, 10)}`, 'json');
  saveFile({ name, content: file.text, type: 'application/json' });
  return undefined;
}

/** The answers of a file that somebody chose, or why there are none. Never rejects. */
export async function readAnswers(file: Pick<File, 'size' | 'arrayBuffer'>): Promise<AnswersRead> {
  const read = await readChosen(file);
  return read.ok ? answersInFile(read.bytes) : read;
}
