import { quoted } from '../text/clean.ts';
import type { ListSpec, ScalarSpec } from './field-spec.ts';
import { type AddressProblem, problemAt } from './pairs.ts';
import { decodeScalar } from './scalar.ts';

/** A value taken from an address with what was told about it. */
export interface Taken {
  readonly value: unknown;
  readonly problems: readonly AddressProblem[];
}

type Pairs = ReadonlyMap<string, string>;

/** How many records the address has: as it says, or, where that is missing or damaged, as many as it has pairs for. */
function countOf(name: string, field: ListSpec, pairs: Pairs): { count: number; problems: AddressProblem[] } {
  const said = pairs.get(field.key);
  const present = [...pairs.keys()].reduce((most, key) => Math.max(most, indexIn(field, key) ?? 0), 0);
  const problems: AddressProblem[] = [];
  const tell = (sentence: string) =>
    problems.push(problemAt(name, `${field.label}: ${sentence}`, said ?? ''));
  let count = present;
  if (said !== undefined && /^\d{1,6}$/.test(said)) count = Number(said);
  else tell(`the address does not say how many there are; ${present} could be read.`);
  if (count > field.maxLength) {
    tell(`${count} are more than fit here; the first ${field.maxLength} stand.`);
    count = field.maxLength;
  }
  return { count, problems };
}

/** Number of the record that a key belongs to, if it belongs to the list: `l12n` is 12 in list `l`. */
function indexIn(field: ListSpec, key: string): number | undefined {
  const [, list, index, part] = /^([a-z]{1,3})([1-9]\d{0,2})([a-z]{1,3})$/.exec(key) ?? [];
  const known = Object.values(field.of).some((spec) => spec.key === part);
  return list === field.key && known ? Number(index) : undefined;
}

function decodeRecord(
  where: string,
  field: ListSpec,
  prefix: string,
  take: (key: string) => string | undefined,
): { record: Readonly<Record<string, unknown>>; problems: readonly AddressProblem[] } {
  const problems: AddressProblem[] = [];
  const part = (name: string, spec: ScalarSpec): unknown => {
    const text = take(`${prefix}${spec.key}`);
    if (text === undefined) return spec.default;
    const { value, problem } = decodeScalar(spec, text);
    if (problem !== undefined) problems.push(problemAt(`${where}.${name}`, problem, text));
    return value;
  };
  const entries = Object.entries(field.of).map(([name, spec]) => [name, part(name, spec)]);
  return { record: Object.fromEntries(entries), problems };
}

/** Reads a list of records; keys that it took are added to `used`. Never throws. */
export function decodeList(name: string, field: ListSpec, pairs: Pairs, used: Set<string>): Taken {
  const own = [...pairs.keys()].some((key) => key === field.key || indexIn(field, key) !== undefined);
  if (!own) return { value: field.default, problems: [] };
  used.add(field.key);
  const take = (key: string): string | undefined => {
    used.add(key);
    return pairs.get(key);
  };
  const { count, problems } = countOf(name, field, pairs);
  const records = Array.from({ length: count }, (_, index) =>
    decodeRecord(`${name}.${index + 1}`, field, `${field.key}${index + 1}`, take),
  );
  const beyond = [...pairs.keys()].filter((key) => (indexIn(field, key) ?? 0) > count);
  for (const key of beyond) used.add(key);
  const first = beyond[0];
  if (first !== undefined && problems.length === 0)
    problems.push(problemAt(name, `${field.label}: ${quoted(first)} lies beyond the last, ${count}.`, first));
  return {
    value: records.map(({ record }) => record),
    problems: [...problems, ...records.flatMap((record) => record.problems)],
  };
}
