import { type Day, monthsAfter, readDay, yearsBetween } from './day.ts';

/** Whether a calibration still stands on a day. */
export type Age =
  /** No day is given, or none that a calendar has. */
  | { readonly state: 'undated' }
  /** Calibrated after the day of use: one of the two is wrong. */
  | { readonly state: 'later'; readonly calibrated: Day; readonly on: Day }
  /** No interval was set: it stands for ever. */
  | { readonly state: 'open'; readonly calibrated: Day }
  /** It stands until `due`, that day included. */
  | {
      readonly state: 'stands' | 'old';
      readonly calibrated: Day;
      readonly due: Day;
      readonly months: number;
    };

/** A text of whole months; undefined for none. */
export function monthsIn(text: string): number | undefined {
  const months = /^\s*(\d{1,3})\s*$/.exec(text)?.[1];
  return months === undefined || Number(months) === 0 ? undefined : Number(months);
}

/** Years from the day of a calibration to a day of use, to the hundredth; none where that comes first; undefined without a day. */
export function yearsSince(calibrated: string, on: Day): number | undefined {
  const day = readDay(calibrated);
  return day === undefined ? undefined : Math.max(0, Math.round(100 * yearsBetween(day, on)) / 100);
}

/** How old a calibration is on a day, against the interval that the reader set for it. */
export function ageOf(
  { calibrated, interval }: { readonly calibrated: string; readonly interval: string },
  on: Day,
): Age {
  const day = readDay(calibrated);
  const months = monthsIn(interval);
  if (day === undefined) return { state: 'undated' };
  if (day > on) return { state: 'later', calibrated: day, on };
  if (months === undefined) return { state: 'open', calibrated: day };
  const due = monthsAfter(day, months);
  return { state: on > due ? 'old' : 'stands', calibrated: day, due, months };
}
