import { readChosen } from '../exchange/chosen-file.ts';
import { fileName } from '../exchange/file-name.ts';
import { saveFile } from '../exchange/save-file.ts';
import { type Keeping, keepPaper } from '../store/begun.ts';
import type { Answers } from './answers.ts';
import { type AnswersRead, answersAsFile, answersInFile } from './answers-file.ts';
import { leftPapers } from './left-papers.ts';
import type { PaperById } from './paper-file.ts';
import { progressStrings as strings } from './progress-strings.ts';

/** Hands all answers, and papers that are not handed in, to the browser as a file; answers with the reason where none is made. */
export function saveAnswers(answers: Answers, now: Date): string | undefined {
  const saved = now.toISOString();
  const file = answersAsFile(answers, leftPapers().left, saved);
  if (!file.ok) return file.problem;
  const name = fileName(`${strings.fileName} ${saved.slice(0, 10)}`, 'json');
  saveFile({ name, content: file.text, type: 'application/json' });
  return undefined;
}

/** What a file holds that somebody chose, or why it holds nothing. Never rejects. */
export async function readAnswers(file: Pick<File, 'size' | 'arrayBuffer'>): Promise<AnswersRead> {
  const read = await readChosen(file);
  return read.ok ? answersInFile(read.bytes) : read;
}

/** Adds papers to those that lie here, and says in sentences what became of them; one that lies here already stays as it is. */
export function addPapers(papers: readonly PaperById[]): readonly string[] {
  const came = papers.map(
    ({ id, paper }): Keeping => keepPaper({ id, text: JSON.stringify(paper) }, undefined),
  );
  const count = (as: Keeping): number => came.filter((each) => each === as).length;
  const told: readonly (readonly [number, (count: number) => string])[] = [
    [count('kept'), strings.addedPapers],
    [count('changed'), strings.papersHere],
    [count('refused'), strings.papersRefused],
  ];
  return told.flatMap(([number, words]) => (number === 0 ? [] : [words(number)]));
}
