import type { KindOfAnswer } from '../questions/bank/types.ts';
import type { Keeping } from '../store/begun.ts';

const many = (count: number, one: string, several: string): string =>
  `${count} ${count === 1 ? one : several}`;
const listed = (all: readonly string[]): string => all.join(', ').replace(/, ([^,]*)$/, ' and $1');
const questions = (count: number): string => many(count, 'question', 'questions');

/** What a paper was made of, so that it can be made again. */
interface PaperMade {
  readonly seed: number;
  readonly count: number;
  /** Titles; empty for all topics. */
  readonly topics: readonly string[];
}
const fromTopics = (topics: readonly string[]): string =>
  topics.length === 0 ? 'all topics' : `${topics.length === 1 ? 'topic' : 'topics'}: ${topics.join('; ')}`;

/** Words of the practice pages. */
export const strings = {
  notOfficial:
    'These are our own questions, not those of any examination. What is examined, and what the law asks of you, differs from country to country: look up yours.',
  home: {
    title: 'Practice',
    description:
      'Questions on power, decibels and uncertainty with worked answers: by topic, mixed revision at growing intervals, a mock paper, and worksheets to print.',
    lead: 'Questions whose numbers are drawn anew each time, each with a worked answer. A wrong answer is told by the mistake that leads there, and by the lesson that puts it right.',
    topics: 'By topic',
    mixed: 'All together',
    revision: 'Mixed revision',
    revisionWords:
      'What is due today from everything you have answered, and a few new questions, topics in turn.',
    paper: 'A mock paper',
    paperWords:
      'As many questions as you like, with or without a clock; marked at the end, with a review of every answer.',
    worksheet: 'Worksheets to print',
    worksheetWords: 'One to ten different papers for a club evening, with or without the answers.',
  },
  topic: {
    description: (title: string): string =>
      `Questions on ${title.toLowerCase()}, each with its worked answer.`,
    all: 'Every question of this topic',
    allWords: 'Each has a page of its own, with its worked answer.',
  },
  revision: {
    title: 'Mixed revision',
    description: 'What is due today of the questions you have answered, and a few new ones, topics in turn.',
    lead: 'A question that you know rests longer each time, one that you miss comes back the next day. Twice in an evening teaches less than once today and once next week.',
    how: 'When a question comes back is reckoned by the Free Spaced Repetition Scheduler (FSRS-6) with its published parameters, for a chance of nine in ten that you still know it. No day is counted against you: what has waited longest for its strength comes first.',
  },
  paper: {
    title: 'A mock paper',
    description:
      'A paper of our own questions, of the length you choose, marked at the end with a review of every answer.',
    lead: 'Questions from all topics or from some, answered in any order, and marked when you hand in.',
    begin: 'Begin the paper',
    other: 'Another number',
    clock: 'Clock',
    clocks: { none: 'without a clock', each: 'a minute and a half for each question' },
    heading: (seed: number): string => `Paper ${seed}`,
    hand: 'Hand in',
    left: (minutes: number): string => (minutes > 1 ? `${minutes} minutes left` : 'The last minute'),
    over: 'The time is up. Hand in when you like: nothing is taken from you.',
    open: (count: number): string =>
      count === 0 ? 'Every question has an answer.' : `${questions(count)} without an answer.`,
    marks: ({ right, all }: { right: number; all: number }): string => `${right} of ${all} right.`,
    late: 'It took longer than the clock gave.',
    review: 'Review',
    yours: 'Your answer',
    none: 'Not answered.',
    again: 'A new paper',
    same: 'Whoever opens this address gets the same paper.',
    made: ({ seed, count, topics }: PaperMade): string =>
      `Mock paper, number ${seed}, ${questions(count)}, ${fromTopics(topics)}.`,
    begun: (count: number): string =>
      count === 1 ? 'A paper that you have not handed in' : 'Papers that you have not handed in',
    unreadable: (count: number): string =>
      `${many(count, 'paper', 'papers')} of these cannot be read by this page, from a newer version of the site perhaps, or damaged. ${count === 1 ? 'It is' : 'They are'} left as ${count === 1 ? 'it is' : 'they are'}; “Forget all answers” on the page of practice removes ${count === 1 ? 'it' : 'them'} too.`,
    begunWords: ({ given, all }: { given: number; all: number }): string => `${given} of ${all} answered.`,
    begunClock: (minutes: number): string =>
      minutes > 0
        ? `Its clock goes on with ${many(minutes, 'minute', 'minutes')} left.`
        : 'The time on its clock is up.',
    goOn: 'Go on with it',
    drop: 'Forget it',
    keeping: {
      kept: 'Until you hand in, your answers and the clock are kept in this browser.',
      refused: 'This browser keeps nothing more for this site: leave the page only after handing in.',
      changed:
        'Another tab has gone on with this paper. What you answer here is no longer kept, so that neither overwrites the other.',
      gone: 'In another tab this paper was handed in or forgotten. What you answer here is no longer kept.',
    } satisfies Readonly<Record<Keeping, string>>,
    takeOther: 'Show it as the other tab has it',
    keepApart: 'Keep this one as a paper of its own',
  },
  worksheet: {
    title: 'Worksheets',
    description: 'One to ten different papers of our own questions to print, with or without the answers.',
    lead: 'The same number gives the same paper on every device. For ten tables, print ten papers: their questions and their numbers differ.',
    settings: 'What to print',
    print: 'Print',
    none: 'without answers',
    pencil: {
      choice: 'Choose one.',
      typed: 'Write a number.',
      order: 'Write the places into the boxes.',
      place: 'Mark the place.',
    } satisfies Readonly<Record<KindOfAnswer, string>>,
    after: 'with answers on a sheet of their own',
    heading: (seed: number): string => `Paper ${seed}`,
    answers: (seed: number): string => `Answers to paper ${seed}`,
    name: 'Name',
    again: ({ seed, count, topics }: PaperMade): string =>
      `Worksheets, number ${seed}, ${questions(count)}, ${fromTopics(topics)}.`,
    own: 'Our own questions, not those of any examination.',
  },
  decimal:
    'For the numbers of questions, solutions and printed papers. What you typed stays as typed, and a field takes either sign. The choice holds for the whole site; it is kept in this browser, or where that is refused, until you leave the page.',
  settings: {
    seed: 'Number of the paper',
    length: 'Questions',
    papers: 'Papers',
    answers: 'Answers',
    topics: 'Topics',
    allTopics: 'None ticked: all topics.',
  },
  question: {
    title: (number: number, topic: string): string => `${topic}, question ${number}`,
    before: 'The question before',
    after: 'The next question',
    syllabus: (clauses: readonly string[]): string =>
      `In the CEPT T/R 61-02 syllabus (annex 6, part a): ${listed(clauses)}.`,
    beyond: 'Beyond the examination syllabus.',
    difficulty: (level: 1 | 2 | 3): string => `Difficulty ${level} of 3.`,
    other: 'Other numbers',
    seed: (seed: number): string =>
      `Numbers no. ${seed}. The address of this page holds them: whoever opens it sees the same question.`,
    all: (topic: string): string => `All questions on ${topic.toLowerCase()}`,
  },
  kinds: {
    choice: 'Choose one.',
    typed: 'Type a number, with its unit if you like.',
    order: 'Put in order, with the buttons beside each.',
    place: 'Point at a place in the figure, or choose it from the list.',
  } satisfies Readonly<Record<KindOfAnswer, string>>,
  form: {
    answer: 'Your answer',
    check: 'Check my answer',
    unsure: 'I am not sure: ask me again sooner',
    keys: (count: number): string =>
      count > 0 ? `Keys: 1 to ${count} choose, Enter checks and goes on.` : 'Keys: Enter checks and goes on.',
    up: (text: string): string => `Move up: ${text}`,
    down: (text: string): string => `Move down: ${text}`,
    moved: ({ place, of }: { place: number; of: number }): string => `Now ${place} of ${of}.`,
    wanted: (unit: string, within: string): string => (unit === '' ? within : `in ${unit}, ${within}`),
    right: 'Right.',
    rightUnsure: 'Right, though you were not sure.',
    near: 'Not right, but near.',
    wrong: 'Not right.',
    mistake: 'The mistake behind it:',
    lesson: 'Lesson:',
    worked: 'The worked answer',
    again: 'Try again',
  },
  round: {
    name: 'Questions in turn',
    begin: (count: number): string => `Begin with ${questions(count)}`,
    tally: ({ due, fresh, resting }: { due: number; fresh: number; resting: number }): string =>
      `${due} due today, ${fresh} never asked, ${resting} resting.`,
    nothing:
      'Nothing is due today, and every question has been asked. Rest is part of it; a topic can be practised at any time.',
    place: ({ at, of }: { at: number; of: number }): string => `Question ${at} of ${of}`,
    again: 'Once more, with other numbers',
    next: 'Next question',
    finish: 'To the end',
    leave: 'Stop here',
    over: 'That was the round',
    sum: ({ right, asked, unsure }: { right: number; asked: number; unsure: number }): string =>
      `${right} of ${asked} right at the first try${unsure === 0 ? '' : `, ${unsure} of them unsure`}.`,
    mistakes: 'Mistakes on the way, each with the lesson that puts it right',
    more: 'To the beginning',
    comesBack: ({ days, inRound }: { days: number; inRound: boolean }): string =>
      `It comes back ${inRound ? 'at the end of this round, and ' : ''}${days <= 1 ? 'tomorrow' : `in ${days} days`}.`,
    fetching: 'The question is being fetched.',
    unplanned: 'What plans the questions could not be fetched. Check the connection and try again.',
    lost: 'The question could not be fetched. Check the connection and try again.',
    retry: 'Try again',
  },
  noScript: {
    round:
      'Without JavaScript nothing is asked here in turn. Every question below has a page of its own, with its worked answer.',
    pages:
      'Without JavaScript no paper can be drawn here. The pages of the topics hold every question, with its worked answer.',
    worksheet: 'Without JavaScript this page shows and prints its first paper.',
    question: 'Without JavaScript this page shows the question with its first numbers.',
  },
} as const;
