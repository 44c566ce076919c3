import type { Fields } from '../address/field-spec.ts';
import type { FileForm } from '../exchange/file-form.ts';
import { readFile } from '../exchange/read-file.ts';
import { type FileWritten, writeFile } from '../exchange/write-file.ts';
import {
  type Answer,
  type Answers,
  answerFrom,
  GRADES,
  joinedAnswers,
  LARGEST_SEED,
  MOST_ANSWERS,
} from './answers.ts';
import { filedPaper, type PaperById, paperFromFile, paperToFile } from './paper-file.ts';
import { progressStrings as strings } from './progress-strings.ts';

const LONGEST_ID = 60;
const grades = Object.fromEntries(GRADES.map((grade) => [grade, grade]));

const answer = {
  at: { type: 'text', key: 'at', label: strings.fields.at, maxLength: 24, default: '' },
  seed: {
    type: 'number',
    key: 's',
    label: strings.fields.seed,
    kind: 'number',
    min: 1,
    max: LARGEST_SEED,
    decimals: 0,
    step: 1,
    default: 1,
  },
  grade: { type: 'choice', key: 'g', label: strings.fields.grade, choices: grades, default: 'right' },
  mistake: { type: 'text', key: 'm', label: strings.fields.mistake, maxLength: LONGEST_ID, default: '' },
} as const;

const practised = {
  question: {
    type: 'text',
    key: 'q',
    label: strings.fields.question,
    maxLength: LONGEST_ID,
    default: '',
  },
  answers: {
    type: 'list',
    key: 'a',
    label: strings.fields.answers,
    of: answer,
    maxLength: MOST_ANSWERS,
    default: [],
  },
} as const satisfies Fields;

/** Files of answers: a list of questions, each with what was answered, and papers that are not handed in. */
export const practiceFileForm = () =>
  ({
    version: 1,
    lists: { practice: practised, papers: filedPaper },
    elsewhere: { sheets: strings.holdsSheets, instruments: strings.holdsInstruments },
  }) as const satisfies FileForm;

/** Answers and papers as the text of a file. */
export const answersAsFile = (answers: Answers, papers: readonly PaperById[], saved: string): FileWritten =>
  writeFile(
    practiceFileForm(),
    {
      practice: [...answers].map(([question, given]) => ({ question, answers: given })),
      ...(papers.length > 0 && { papers: papers.map(paperToFile) }),
    },
    saved,
  );

/** What a file holds, or the first thing that is wrong with it. */
export type AnswersRead =
  | {
      readonly ok: true;
      readonly answers: Answers;
      readonly papers: readonly PaperById[];
      readonly notes: readonly string[];
    }
  | { readonly ok: false; readonly problem: string };

/** Reads a file of answers. Never throws, whatever it is. */
export function answersInFile(bytes: Uint8Array): AnswersRead {
  const read = readFile(practiceFileForm(), bytes);
  if (!read.ok) return read;
  const answers = new Map<string, readonly Answer[]>();
  let unfit = 0;
  for (const { question, answers: given } of read.held.practice) {
    const good = given.map(answerFrom).filter((one) => one !== undefined);
    const taken = question === '' ? [] : good;
    unfit += given.length - taken.length;
    if (taken.length > 0) answers.set(question, joinedAnswers(answers.get(question) ?? [], taken));
  }
  const found = read.held.papers.map(paperFromFile);
  const papers = found.filter((paper) => paper !== undefined);
  const unfitPapers = found.length - papers.length;
  if (answers.size + papers.length === 0) return { ok: false, problem: strings.noAnswers };
  const notes = [
    ...read.notes,
    ...(unfit > 0 ? [strings.unfit(unfit)] : []),
    ...(unfitPapers > 0 ? [strings.unfitPapers(unfitPapers)] : []),
  ];
  return { ok: true, answers, papers, notes };
}
