/**
 * A step that a talk borrows, as `group.page.step`: the track and lesson it is in (`decibels.ratios-that-add.guess`), or `examples` and
 * the example.
 */
export type Part = string;

/** Most steps of a talk: an evening has fewer. */
export const MOST_PARTS = 60;

const PART = /^[a-z0-9-]{1,60}\.[a-z0-9-]{1,60}\.[a-z0-9-]{1,60}$/;

/** Whether a text has the form of a part; the page it names may still be missing. */
export const isPart = (text: string): text is Part => PART.test(text);

/** The parts that an address names, in their order; what has not the form of a part is left out. */
export function readTalk(search: string): readonly Part[] {
  const named = new URLSearchParams(search).get('parts') ?? '';
  return named.split('~').filter(isPart).slice(0, MOST_PARTS);
}

/** The part of an address that carries a talk; its version last, so that a cut address shows. Empty for a talk of nothing. */
export const talkQuery = (parts: readonly Part[]): string =>
  parts.length === 0 ? '' : `?parts=${parts.join('~')}&v=1`;

/** Where a part is shown by itself, seen from a page below `/stage/`, at its place in the talk: numbers changed there are of that place alone. */
export function partAddress(part: Part, { isNotes, turn }: { isNotes: boolean; turn: number }): string {
  const [group = '', page = '', step = ''] = part.split('.');
  const folder = group === 'examples' ? 'examples' : `learn/${group}`;
  return `../${folder}/${page}/?part=${turn}${isNotes ? '&notes' : ''}#${step}`;
}

/** A talk with a part more at its end; the same where no more fit. */
export const withPart = (parts: readonly Part[], part: Part): readonly Part[] =>
  parts.length < MOST_PARTS && isPart(part) ? [...parts, part] : parts;

/** A talk without what stands at a place. */
export const withoutAt = (parts: readonly Part[], at: number): readonly Part[] =>
  parts.filter((_, index) => index !== at);

/** A talk with what stands at a place moved by so many places, as far as there are any. */
export function movedBy(parts: readonly Part[], at: number, by: number): readonly Part[] {
  const part = parts[at];
  if (part === undefined) return parts;
  const rest = withoutAt(parts, at);
  const to = Math.min(rest.length, Math.max(0, at + by));
  return [...rest.slice(0, to), part, ...rest.slice(to)];
}
