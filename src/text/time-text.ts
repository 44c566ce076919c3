const ISO = /^(\d{4}-\d{2}-\d{2})T(\d{2}:\d{2})/;

/**
 * A time of the log as a text: `2026-11-25, 03:12 UTC`; what is no time (ISO 8601, in UTC) as it stands. Read letter by letter and not
 * through a clock or a locale, so that every machine writes the same.
 */
export function timeText(iso: string): string {
  const [, date, time] = ISO.exec(iso) ?? [];
  return date === undefined || time === undefined || !iso.endsWith('Z') ? iso : `${date}, ${time} UTC`;
}
