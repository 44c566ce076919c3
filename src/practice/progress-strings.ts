import type { StoreProblem } from '../store/outcome.ts';

const many = (count: number, one: string, several: string): string =>
  `${count} ${count === 1 ? one : several}`;

/** Words about what was practised and is kept in the browser. */
export const progressStrings = {
  heading: 'What you have practised',
  none: 'Nothing practised yet. What you answer is noted in this browser and nowhere else.',
  count: ({ answers, questions }: { answers: number; questions: number }): string =>
    `${many(answers, 'answer', 'answers')} to ${many(questions, 'question', 'questions')}, noted in this browser and nowhere else.`,
  unreadable: (count: number): string =>
    `${many(count, 'question has', 'questions have')} notes that this page cannot read, from a newer version of the site perhaps. They are left as they are.`,
  papers: (count: number): string =>
    `${many(count, 'mock paper is', 'mock papers are')} begun and not handed in. ${count === 1 ? 'It goes' : 'They go'} into the file as well.`,
  unreadablePapers: (count: number): string =>
    `${many(count, 'mock paper', 'mock papers')} that ${count === 1 ? 'was' : 'were'} begun cannot be read by this page, from a newer version of the site perhaps, or damaged. ${count === 1 ? 'It is' : 'They are'} left as ${count === 1 ? 'it is' : 'they are'}, and not in the file.`,
  save: 'Save as a file',
  open: 'Add from a file',
  clear: 'Forget all answers',
  reallyClear:
    'Forget every answer in this browser, and every paper that is not handed in? A file that you saved before can be added again.',
  cleared: 'Forgotten: no answer is kept, and no paper.',
  lost: 'That did not work: are you connected? Nothing was changed.',
  saved: 'The file was handed to the browser.',
  added: ({ answers, questions }: { answers: number; questions: number }): string =>
    `Added ${many(answers, 'answer', 'answers')} to ${many(questions, 'question', 'questions')}; what was there already is not counted twice.`,
  fileName: 'practice',
  notKept: 'Your answers could not be noted: ',
  problems: {
    refused:
      'this browser keeps nothing for this site. You can practise all the same; on leaving the page the answers are forgotten.',
    full: 'the browser has no room left.',
    newer:
      'a newer version of this site has kept something here that this page leaves alone. Reload the page.',
    changed: 'another tab kept something at the same moment. Try again.',
    missing: 'it is no longer there.',
    damaged: 'what is kept for this question cannot be read.',
  } satisfies Readonly<Record<StoreProblem, string>>,
  recurring: 'What came back',
  recurringLead:
    'Each of these was behind more than one of your wrong answers, and not every question has been put right since.',
  times: (count: number): string => `${count} times`,
  lesson: 'The lesson that puts it right',
  fields: {
    question: 'Question',
    answers: 'Answers',
    at: 'Time',
    seed: 'Seed of the numbers',
    grade: 'How it went',
    mistake: 'Misconception',
    id: 'Id of the paper',
    paper: 'Number of the paper',
    length: 'Questions wished for',
    topics: 'Topics',
    count: 'Questions',
    clock: 'Clock',
    spent: 'Time spent, in milliseconds',
    asked: 'Mark of the question as it read',
    kind: 'Kind of answer',
    given: 'Answer',
  },
  holdsSheets: 'The file holds sheets of the bench, which are opened there. Nothing was changed.',
  holdsInstruments:
    'The file holds instruments, which are opened on the page of instruments. Nothing was changed.',
  addedPapers: (count: number): string =>
    `${many(count, 'mock paper', 'mock papers')} that ${count === 1 ? 'is' : 'are'} not handed in ${count === 1 ? 'was' : 'were'} added.`,
  papersHere: (count: number): string =>
    `${many(count, 'mock paper of the file is', 'mock papers of the file are')} here already, and ${count === 1 ? 'stays as it is' : 'stay as they are'} here.`,
  papersRefused: (count: number): string =>
    `${many(count, 'mock paper', 'mock papers')} could not be kept: the browser refuses.`,
  noAnswers: 'There is no answer in the file that could be used. Nothing was changed.',
  unfit: (count: number): string =>
    `${many(count, 'answer', 'answers')} without a usable time or question ${count === 1 ? 'was' : 'were'} left out.`,
  unfitPapers: (count: number): string =>
    `${many(count, 'mock paper', 'mock papers')} that could not be used ${count === 1 ? 'was' : 'were'} left out.`,
} as const;
