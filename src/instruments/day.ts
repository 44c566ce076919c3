/** A day of the calendar as `2026-05-09` (ISO 8601), which sorts as it should. */
export type Day = string & { readonly __day: true };

const PATTERN = /(\d{4})-(\d{2})-(\d{2})/;
const MS_PER_DAY = 86_400_000;
/** Mean length of a Gregorian year. */
const DAYS_PER_YEAR = 365.2425;

const time = (day: string): number => Date.parse(`${day}T00:00:00Z`);

/** The day that a text is, and nothing else; undefined for one that no calendar has. */
export function readDay(text: string): Day | undefined {
  const typed = text.trim();
  const [match] = PATTERN.exec(typed) ?? [];
  if (match !== typed || !Number.isFinite(time(typed))) return undefined;
  // a parser may take 2026-02-30 for the second of March
  return new Date(time(typed)).toISOString().slice(0, match.length) === typed ? (typed as Day) : undefined;
}

/** The first day that stands in a text, as in "2026-05-09, evening". */
export function dayIn(text: string): Day | undefined {
  const [match] = PATTERN.exec(text) ?? [];
  return match === undefined ? undefined : readDay(match);
}

/** The same day of the month so many months later, or the last one where that month is shorter. Whole months count. */
export function monthsAfter(day: Day, months: number): Day {
  const [year = 0, month = 0, date = 0] = day.split('-').map(Number);
  const end = new Date(0);
  // not `Date.UTC`, which takes the years before 100 for those of the twentieth century
  end.setUTCFullYear(year, month + Math.floor(months), 0);
  end.setUTCDate(Math.min(date, end.getUTCDate()));
  return end.toISOString().slice(0, day.length) as Day;
}

/** Years from one day to another; negative where the second comes first. */
export const yearsBetween = (from: Day, to: Day): number =>
  (time(to) - time(from)) / MS_PER_DAY / DAYS_PER_YEAR;

/** The day that a time belongs to where the device is, by its own clock, which may be wrong. */
export function dayOf(now: Date): Day {
  const two = (value: number): string => String(value).padStart(2, '0');
  const year = String(now.getFullYear()).padStart(4, '0');
  return `${year}-${two(now.getMonth() + 1)}-${two(now.getDate())}` as Day;
}
