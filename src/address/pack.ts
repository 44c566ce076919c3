import { encode } from './encode.ts';
import { type AddressSpec, type Fields, PACKED_KEY, type StateOf, type Unfolded } from './field-spec.ts';
import { packed, unpacked } from './packed.ts';

/**
 * A state as an address of letters and digits, a fraction as long as `encode` makes it; undefined where there is more to say than
 * any address holds. The specification needs `unfold` to read it back.
 * @param words text that such addresses often have, the same as for `unfolded`.
 * @throws RangeError as `encode`.
 */
export function encodePacked<Of extends Fields>(
  spec: AddressSpec<Of>,
  state: StateOf<Of>,
  words: string,
): string | undefined {
  const version = `v=${spec.version}`;
  const pairs = encode(spec, state).slice(0, -version.length);
  const code = packed(pairs.replace(/&$/, ''), words);
  return code && `${PACKED_KEY}=${code}&${version}`;
}

/**
 * Unfolds the value of a packed address. One that was cut short, and so has no version, gives what it still has; one that was
 * changed in between gives nothing, since all behind the change is noise.
 */
export function unfolded({
  words,
  code,
  isCut,
}: {
  readonly words: string;
  readonly code: string;
  readonly isCut: boolean;
}): Unfolded {
  const found = unpacked(code, words);
  return found !== undefined && (found.whole || isCut) ? { text: found.text } : { problem: DAMAGED };
}

const DAMAGED =
  'The address was changed on its way, if only by one letter, and cannot be read. Ask for it again, or for the file.';
