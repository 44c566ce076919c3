/** Letters of an answer with the one before that a wall of 1024 holds in a line; those of the ghost are smaller. */
const ONE_LINE = 38;
const SMALLER = 0.58;

const clause = (text: string): string => text.split(/[.,;:] /)[0] ?? text;

/** A text from the first to the last of its words that stand otherwise in another; all of it where the two are not built alike. */
function differing(text: string, other: string): string {
  // a number and its unit hang together by another space
  const [words, others] = [text.split(' '), other.split(' ')];
  if (words.length !== others.length) return text;
  const isOther = words.map((word, at) => word !== others[at]);
  return words.slice(isOther.indexOf(true), isOther.lastIndexOf(true) + 1).join(' ');
}

/**
 * The answer before, as its ghost has room for it beside the one of now: whole, or what of it has changed, or how it began.
 * @param beside what stands in the same line.
 */
export function ghostText(
  before: string,
  now: string,
  beside: string,
  said: (text: string) => string,
): string {
  const forms = [before, differing(before, now), clause(differing(before, now))].map(said);
  const fits = (text: string): boolean => beside.length + SMALLER * text.length <= ONE_LINE;
  return forms.find(fits) ?? forms.at(-1) ?? '';
}
