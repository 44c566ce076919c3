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
  save: 'Save as a file',
  open: 'Add from a file',
  clear: 'Forget all answers',
  reallyClear: 'Forget every answer in this browser? A file that you saved before can be added again.',
  cleared: 'Forgotten: no answer is kept.',
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
  },
  holdsSheets: 'The file holds sheets of the bench, which are opened there. Nothing was changed.',
  holdsInstruments:
    'The file holds instruments, which are opened on the page of instruments. Nothing was changed.',
  noAnswers: 'There is no answer in the file that could be used. Nothing was changed.',
  unfit: (count: number): string =>
    `${many(count, 'answer', 'answers')} without a usable time or question were left out.`,
} as const;
