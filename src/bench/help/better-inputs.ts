import type { Input } from '#compute';
import { withAmount } from '../../sheet/amount.ts';
import type { LinkEntries } from '../../sheet/entries.ts';
import type { Link, Sheet } from '../../sheet/sheet.ts';
import { outcomeOf } from '../../sheet/to-model.ts';
import { isGood } from '../../text/read/field.ts';
import { hasUnit } from '../read/link-spec.ts';
import { readBetter } from '../read/read-link.ts';

/** What a better part would be good for: its inputs, and the ids of those whose amount cannot be used. */
export interface Better {
  readonly inputs: readonly Input[];
  readonly unusable: readonly string[];
}

/**
 * The inputs that would stand in a sheet's model if its links had the amounts that the reader states for better parts. Forms without
 * a unit of their own (a sum of terms, two standing-wave ratios) are replaced by limits in decibels.
 */
export function betterInputs(sheet: Sheet, entries: readonly LinkEntries[]): Better {
  const changed = new Map<string, Link>();
  const unusable: string[] = [];
  for (const link of sheet.links) {
    const typed = entries.find(({ id }) => id === link.id);
    const field = typed && readBetter(typed);
    if (typed === undefined || field === undefined) continue;
    const better = isGood(field) ? betterLink(link, typed, field.value) : undefined;
    if (better === undefined) unusable.push(link.id);
    else changed.set(link.id, better);
  }
  if (changed.size === 0) return { inputs: [], unusable };
  const outcome = outcomeOf({ ...sheet, links: sheet.links.map((link) => changed.get(link.id) ?? link) });
  const inputs = outcome.inRange ? outcome.model.inputs.filter(({ id }) => changed.has(id)) : [];
  return { inputs, unusable };
}

function betterLink(link: Link, { form, unit }: LinkEntries, amount: number): Link | undefined {
  if (hasUnit(form))
    return unit === link.unit ? { ...link, statement: withAmount(link.statement, amount) } : undefined;
  const { reflections: _, ...rest } = link;
  const shape = form === 'swr' ? 'arcsine' : 'rectangular';
  return { ...rest, unit: 'dB', statement: { form: 'limits', shape, halfWidth: amount } };
}
