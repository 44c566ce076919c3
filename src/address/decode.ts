import { quoted } from '../text/clean.ts';
import { type AddressSpec, defaultState, type Fields, PACKED_KEY, type StateOf } from './field-spec.ts';
import { decodeList, type Taken } from './list.ts';
import { type AddressProblem, pairsOf, problemAt } from './pairs.ts';
import { LONGEST_ADDRESS, repaired } from './repair.ts';
import { decodeScalar } from './scalar.ts';
import { currentPairs } from './version.ts';

/** What an address said. */
export interface Decoded<Of extends Fields> {
  /** Always complete and allowed: what could not be taken is at its default. */
  readonly state: StateOf<Of>;
  readonly problems: readonly AddressProblem[];
  /** Whether the address carried anything for this specification. */
  readonly carried: boolean;
}

/**
 * Reads the part of an address after `?` or `#` (either mark may be there). Damage done on the way is mended; what cannot be
 * taken is told and its text kept. Never throws, whatever the text.
 * @param instance as given to `encode`; without it, only keys without an instance are read.
 */
export function decode<Of extends Fields>(
  spec: AddressSpec<Of>,
  address: string,
  instance?: string,
): Decoded<Of> {
  const untouched = { state: defaultState(spec.fields), carried: false };
  if (address.length > LONGEST_ADDRESS) {
    const told = `The address is longer than ${LONGEST_ADDRESS} letters and was not read.`;
    return { ...untouched, problems: [problemAt('', told, address)] };
  }
  const said = pairsOf(repaired(address), instance);
  if (said.pairs.size === 0) return { ...untouched, problems: said.problems };
  const { pairs, problems } = unpackedPairs(spec, said);
  if (pairs === undefined) return { ...untouched, problems, carried: true };
  const current = currentPairs(spec, pairs);
  if (current.pairs === undefined)
    return { ...untouched, problems: [...problems, ...current.problems], carried: true };
  const { state, found } = stateOf(spec, current.pairs);
  return { state, problems: shortened([...problems, ...current.problems, ...found]), carried: true };
}

type Found = ReturnType<typeof pairsOf>;

/** The pairs with those of a packed address in its place; undefined pairs where it cannot be unfolded. */
function unpackedPairs(
  { unfold, version }: AddressSpec,
  found: Found,
): { readonly pairs: Found['pairs'] | undefined; readonly problems: Found['problems'] } {
  const code = found.pairs.get(PACKED_KEY);
  const said = found.pairs.get('v') ?? '';
  // what a later version packs is not for this one to unfold
  if (code === undefined || unfold === undefined || Number(said) > version) return found;
  const unfolding = unfold(code, said === '');
  if ('problem' in unfolding)
    return { pairs: undefined, problems: [...found.problems, problemAt('', unfolding.problem, code)] };
  const inner = pairsOf(unfolding.text, undefined);
  const outer = [...found.pairs].filter(([key]) => key !== PACKED_KEY);
  return { pairs: new Map([...inner.pairs, ...outer]), problems: [...found.problems, ...inner.problems] };
}

/** A page has room for so many sentences about one address. */
const MOST_PROBLEMS = 20;

function shortened(problems: readonly AddressProblem[]): readonly AddressProblem[] {
  const more = problems.length - MOST_PROBLEMS;
  if (more <= 0) return problems;
  const told = `${more} more things in the address could not be taken.`;
  return [...problems.slice(0, MOST_PROBLEMS), problemAt('', told, '')];
}

function stateOf<Of extends Fields>(
  spec: AddressSpec<Of>,
  pairs: ReadonlyMap<string, string>,
): { state: StateOf<Of>; found: readonly AddressProblem[] } {
  const used = new Set(['v']);
  const taken = Object.entries(spec.fields).map(([name, field]): [string, Taken] => [
    name,
    field.type === 'list' ? decodeList(name, field, pairs, used) : takeScalar(name, field, pairs, used),
  ]);
  const unknown = [...pairs.keys()]
    .filter((key) => !used.has(key))
    .map((key) =>
      problemAt('', `${quoted(key)} means nothing here and was left out.`, `${key}=${pairs.get(key)}`),
    );
  // Every field has given its own value; Object.fromEntries forgets which belongs to which.
  const state = Object.fromEntries(taken.map(([name, { value }]) => [name, value])) as StateOf<Of>;
  return { state, found: [...taken.flatMap(([, { problems }]) => problems), ...unknown] };
}

function takeScalar(
  name: string,
  field: Parameters<typeof decodeScalar>[0],
  pairs: ReadonlyMap<string, string>,
  used: Set<string>,
): Taken {
  const text = pairs.get(field.key);
  used.add(field.key);
  if (text === undefined) return { value: field.default, problems: [] };
  const { value, problem } = decodeScalar(field, text);
  return { value, problems: problem === undefined ? [] : [problemAt(name, problem, text)] };
}
