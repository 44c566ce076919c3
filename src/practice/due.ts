import type { Standing } from './schedule.ts';

const DAY_MS = 86_400_000;

/** The day of a time, counted from 1970 in UTC as the schedule does. */
const dayOf = (iso: string): number => Math.floor(Date.parse(iso) / DAY_MS);

/** Whether a question is to be asked again on the day of `now`. */
export const isDue = ({ due }: Pick<Standing, 'due'>, now: string): boolean => dayOf(due) <= dayOf(now);

/** Whole days until a question is due, 0 or more. */
export const daysUntil = ({ due }: Pick<Standing, 'due'>, now: string): number =>
  Math.max(0, dayOf(due) - dayOf(now));

/** How much longer than it was meant to a question has waited: 1 where it is just due, more for the shakier ones. */
export const overdue = (
  { last, stabilityDays }: Pick<Standing, 'last' | 'stabilityDays'>,
  now: string,
): number => (dayOf(now) - dayOf(last)) / stabilityDays;
