import type { Answers } from './answers.ts';
import { isDue, overdue } from './due.ts';
import type { Standing } from './schedule.ts';

/** What a plan must know of a question. */
export interface Listed {
  readonly id: string;
  readonly topic: string;
}

/** Most questions of one sitting, and most that are asked for the first time in it: a quarter of an hour. */
export const SITTING = 20;
export const NEW_IN_SITTING = 8;

/** Questions in an order in which, as long as there are others, no topic follows itself; within a topic the order stays. */
export function mixed<One extends Listed>(questions: readonly One[]): readonly One[] {
  const left = [...questions];
  const order: One[] = [];
  while (left.length > 0) {
    const topic = order.at(-1)?.topic;
    const other = left.findIndex((question) => question.topic !== topic);
    order.push(...left.splice(Math.max(0, other), 1));
  }
  return order;
}

/** How many of some questions were never asked, are due, and rest. */
export interface Tally {
  readonly fresh: number;
  readonly due: number;
  readonly resting: number;
}

type Standings = ReadonlyMap<string, Standing>;

/** Counts how questions stand on the day of `now`. */
export function tallyOf(questions: readonly Listed[], standings: Standings, now: string): Tally {
  let fresh = 0;
  let due = 0;
  for (const { id } of questions) {
    const standing = standings.get(id);
    if (standing === undefined) fresh += 1;
    else if (isDue(standing, now)) due += 1;
  }
  return { fresh, due, resting: questions.length - fresh - due };
}

/**
 * What a mixed sitting asks: what is due, the longest overdue for its stability first, then some that were never asked, and topics
 * that take turns. Empty where nothing is due and everything was asked.
 */
export function revisionPlan<One extends Listed>(
  questions: readonly One[],
  standings: Standings,
  now: string,
): readonly One[] {
  const waits = ({ id }: One): number => {
    const standing = standings.get(id);
    return standing !== undefined && isDue(standing, now) ? overdue(standing, now) : -1;
  };
  const due = questions
    .map((question) => ({ question, wait: waits(question) }))
    .filter(({ wait }) => wait >= 0)
    .sort((a, b) => b.wait - a.wait)
    .map(({ question }) => question)
    .slice(0, SITTING);
  const room = Math.min(NEW_IN_SITTING, SITTING - due.length);
  const fresh = mixed(questions.filter(({ id }) => !standings.has(id))).slice(0, room);
  return mixed([...due, ...fresh]);
}

/** What a topic asks: all of its questions; due ones first, then new ones, then those that rest, the earliest due first. */
export function topicPlan<One extends Listed>(
  questions: readonly One[],
  standings: Standings,
  now: string,
): readonly One[] {
  const place = ({ id }: One): string => {
    const standing = standings.get(id);
    if (standing === undefined) return '1';
    return isDue(standing, now) ? '0' : `2 ${standing.due}`;
  };
  return [...questions].sort((a, b) => (place(a) < place(b) ? -1 : Number(place(a) > place(b))));
}

/** A misconception that came back. */
export interface Recurring {
  readonly mistake: string;
  readonly times: number;
}

/**
 * Misconceptions that were behind two wrong answers or more and are not yet put right, the most frequent first. One is put right when
 * each question that it was chosen in has been answered rightly since.
 */
export function recurring(answers: Answers): readonly Recurring[] {
  const found = new Map<string, { times: number; open: boolean }>();
  for (const given of answers.values())
    given.forEach(({ mistake, grade }, index) => {
      if (grade !== 'wrong' || mistake === '') return;
      const open = !given.slice(index + 1).some((later) => later.grade === 'right');
      const before = found.get(mistake);
      found.set(mistake, { times: (before?.times ?? 0) + 1, open: open || (before?.open ?? false) });
    });
  return [...found]
    .filter(([, { times, open }]) => times >= 2 && open)
    .map(([mistake, { times }]) => ({ mistake, times }))
    .sort((a, b) => b.times - a.times || (a.mistake < b.mistake ? -1 : 1));
}
