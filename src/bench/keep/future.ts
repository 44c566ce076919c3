/** What clocks of one day may differ by without anybody calling them wrong. */
const ALLOWED_MS = 5 * 60 * 1000;

/** Whether a time that was noted (ISO 8601) is still to come: then a clock is, or was, set wrong. No time is not. */
export const isFuture = (iso: string, nowMs: number): boolean => Date.parse(iso) > nowMs + ALLOWED_MS;
