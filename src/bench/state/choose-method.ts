import type { PowerDelivery } from '#compute';
import type { LinkEntries, SheetEntries } from '../../sheet/entries.ts';
import type { MethodKind } from '../../sheet/method.ts';
import { usualLinks } from '../../sheet/method-links.ts';
import { linkEntries } from '../entries/entries-of.ts';
import { MOST_LINKS } from '../read/spec.ts';
import { freeId } from './changed.ts';
import { withNamedUnits } from './named-units.ts';

/**
 * The sheet by another method: its usual links stand where those stood that the one before brought and nobody touched. A link of the
 * same name that somebody did touch stays and comes no second time. Readings without a unit get that of the method before.
 */
export function chooseMethod(entries: SheetEntries, method: MethodKind): SheetEntries {
  if (method === entries.method) return entries;
  const kept = entries.links.filter(({ assumed }) => !assumed);
  const first = entries.links.findIndex(({ assumed }) => assumed);
  const above = Math.max(0, first);
  const usual = usualLinks(method)
    .map(linkEntries)
    .filter(({ label, kind }) => !kept.some((link) => link.label === label && link.kind === kind))
    .slice(0, MOST_LINKS - kept.length);
  const brought: LinkEntries[] = [];
  for (const link of usual) {
    const taken = [...kept, ...brought];
    const clash = taken.some(({ id }) => id === link.id);
    brought.push(clash ? { ...link, id: freeId('link', taken) } : link);
  }
  const delivery = deliveryBy(method, entries);
  const points = entries.points.map((point) => withNamedUnits(point, entries.method));
  return { ...entries, method, delivery, points, links: kept.toSpliced(above, 0, ...brought) };
}

/** A meter in the line shows what goes forward and what is left of it, the others what an ideal load would take; a choice stays. */
function deliveryBy(method: MethodKind, { method: before, delivery }: SheetEntries): PowerDelivery {
  if (method === 'inLine') return delivery === 'intoIdeal' ? 'net' : delivery;
  return before === 'inLine' && delivery === 'net' ? 'intoIdeal' : delivery;
}
