import type { SheetEntries } from '../../sheet/entries.ts';
import { demonstrationEntries } from '../entries/fresh.ts';
import type { BenchAction } from '../state/actions.ts';
import { decodeEntries, encodeEntries } from './address.ts';

export { aheadOf } from '../keep/mark.ts';

/** What stands after `#` for these entries: nothing for the demonstration; undefined where an address cannot hold them. */
export function fragmentOf(entries: SheetEntries): string | undefined {
  const own = encodeEntries(entries);
  return own === encodeEntries(demonstrationEntries()) ? '' : own;
}

/** What to do about the fragment of an address; undefined if it carries no sheet. */
export function openingOf(hash: string): BenchAction | undefined {
  const { entries, problems, carried } = decodeEntries(hash);
  const empty =
    entries.links.length === 0 &&
    entries.points.every(({ readings, nominal }) => readings === '' && nominal === '');
  if (carried && !(empty && problems.length > 0)) return { type: 'open', entries, problems };
  return problems.length > 0 ? { type: 'refuse', problems } : undefined;
}
