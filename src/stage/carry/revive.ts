/** Kinds of a written prop, as Astro numbers them: a value or an object, a list, an infinity by its sign. */
const [VALUE, LIST, INFINITE] = [0, 1, 11];

const isPair = (written: unknown): written is readonly [number, unknown] =>
  Array.isArray(written) && typeof written[0] === 'number';

/**
 * What an island was given, from how its page has it written: each value with the number of its kind before it.
 * @throws RangeError for a kind that no island of the stage is given (dates, maps and the like).
 */
export function revived(written: string): Record<string, unknown> {
  return fields(JSON.parse(written) as unknown);
}

function fields(written: unknown): Record<string, unknown> {
  return Object.fromEntries(Object.entries(Object(written)).map(([name, pair]) => [name, value(pair)]));
}

function value(written: unknown): unknown {
  if (!isPair(written)) return undefined;
  const [kind, of] = written;
  if (kind === VALUE) return typeof of === 'object' && of !== null ? fields(of) : of;
  if (kind === LIST && Array.isArray(of)) return of.map(value);
  if (kind === INFINITE) return Number(of) * Number.POSITIVE_INFINITY;
  throw new RangeError(`revived: a prop must be a value, a list or an infinity, got kind ${kind}`);
}
