import type * as v from 'valibot';
import { orList, quoted } from '../text/clean.ts';
import { exchangeStrings as strings } from './strings.ts';

type Key = string | number;

/**
 * Where in a file something stands: `sheet 1, link 3, “amount”`. A list is told by the name of one of its things, a place by its
 * number from 1.
 */
export function placeWords(path: readonly Key[]): string {
  const words = path.flatMap((key, index) => {
    if (typeof key === 'number') return [`${oneOf(path[index - 1])} ${key + 1}`];
    return typeof path[index + 1] === 'number' ? [] : [quoted(key)];
  });
  const place = words.join(', ');
  return place === '' ? strings.wholeFile : `${place[0]?.toUpperCase()}${place.slice(1)}`;
}

/** "links" is a list of links; a list's name ends in an s. */
const oneOf = (list: Key | undefined): string => String(list ?? '').replace(/s$/, '');

const pathOf = (issue: v.BaseIssue<unknown>): readonly Key[] =>
  (issue.path ?? []).flatMap(({ key }) => (typeof key === 'string' || typeof key === 'number' ? [key] : []));

/** What is wrong, with its place, in one sentence. */
export const issueWords = (issue: v.BaseIssue<unknown>): string =>
  `${placeWords(pathOf(issue))}: ${faultWords(issue)}`;

function faultWords({ type, input, requirement, expected }: v.BaseIssue<unknown>): string {
  switch (type) {
    case 'string':
      return strings.wishText(kindWords(input));
    case 'array':
      return strings.wishList(kindWords(input));
    case 'custom':
    case 'object':
      return strings.wishObject(kindWords(input));
    case 'number':
    case 'finite':
      return strings.wishNumber(kindWords(input));
    case 'min_value':
    case 'max_value':
      return strings.wishWithin({
        got: String(input),
        limit: String(requirement),
        isLeast: type === 'min_value',
      });
    case 'max_length':
      return Array.isArray(input)
        ? strings.tooMany({ count: input.length, most: Number(requirement) })
        : strings.tooLong({ length: String(input).length, most: Number(requirement) });
    case 'picklist':
      return strings.wishChoice({ got: kindWords(input), choices: choicesIn(expected) });
    default:
      return strings.unfit;
  }
}

/** The codes out of valibot's `("a" | "b")`. */
const choicesIn = (expected: string | null): string =>
  orList([...(expected ?? '').matchAll(/"([^"]*)"/g)].map(([, code]) => code ?? ''));

/** What stands there: a text in quotation marks, a number as it is, all else by its kind. */
function kindWords(input: unknown): string {
  if (typeof input === 'string') return quoted(input);
  if (typeof input === 'number' || typeof input === 'boolean') return String(input);
  if (input === null || input === undefined) return strings.nothing;
  return Array.isArray(input) ? strings.aList : strings.anObject;
}
