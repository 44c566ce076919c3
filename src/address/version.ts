import { quoted } from '../text/clean.ts';
import type { AddressSpec } from './field-spec.ts';
import { type AddressProblem, problemAt } from './pairs.ts';

interface Current {
  /** Undefined where the version cannot be read here. */
  readonly pairs: ReadonlyMap<string, string> | undefined;
  readonly problems: readonly AddressProblem[];
}

/** What is told of an address without a version. */
export const LOST_END =
  'The address has lost its end, or was typed by hand: its last value may be wrong and others missing.';

const STANDS = 'The state that the page begins with stands instead.';

/** The pairs in the words of the present version: an older address is brought up to it, a newer one is told. */
export function currentPairs(spec: AddressSpec, pairs: ReadonlyMap<string, string>): Current {
  const said = pairs.get('v');
  if (said === undefined || said === '') return { pairs, problems: [problemAt('', LOST_END, '')] };
  if (!/^[1-9]$/.test(said))
    return refused(`${quoted(said)} is no version of this kind of address. ${STANDS}`, said);
  const version = Number(said);
  if (version > spec.version)
    return refused(`The address was made by a later version of this site (${version}). ${STANDS}`, said);
  let current: ReadonlyMap<string, string> | undefined = pairs;
  for (let step = version; step < spec.version && current !== undefined; step++)
    current = spec.older?.[step]?.(current);
  return current === undefined
    ? refused(`Version ${version} of this kind of address cannot be read here. ${STANDS}`, said)
    : { pairs: current, problems: [] };
}

const refused = (sentence: string, said: string): Current => ({
  pairs: undefined,
  problems: [problemAt('', sentence, said)],
});
