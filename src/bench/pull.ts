import { amountOf, uncertaintyPerAmount, withAmount } from '../sheet/amount.ts';
import { COVERAGE_FACTOR } from '../sheet/chain.ts';
import type { LinkEntries } from '../sheet/entries.ts';
import type { Sheet } from '../sheet/sheet.ts';
import { uncertaintyAbove } from './chain.ts';
import { statementEntries, typed } from './entries-of.ts';
import { amountSpec } from './spec.ts';

/** A handle moves in steps of this many dB or percent. */
const STEP = 0.01;

/**
 * The texts of a link after its handle was dragged to where the band below it has this expanded uncertainty. What stands
 * above the link cannot be undone below it: then the link adds nothing. Undefined if there is no such link.
 */
export function pulledLink({
  sheet,
  id,
  expandedDb,
}: {
  sheet: Sheet;
  id: string;
  expandedDb: number;
}): Partial<LinkEntries> | undefined {
  const link = sheet.links.find((candidate) => candidate.id === id);
  if (link === undefined || !Number.isFinite(expandedDb)) return undefined;
  const above = uncertaintyAbove(sheet, id);
  const wanted = Math.max(0, expandedDb / COVERAGE_FACTOR);
  const own = Math.sqrt(Math.max(0, wanted ** 2 - above ** 2));
  const wish = own / uncertaintyPerAmount(link);
  const amount = Math.min(amountSpec(link.unit).max, Math.round(wish / STEP) / Math.round(1 / STEP));
  if (amount === amountOf(link.statement)) return {};
  return tidied(statementEntries(withAmount(link.statement, amount)));
}

/** Ends of lopsided limits to the thousandth: dragging keeps their proportions, which may be no round numbers. */
function tidied(texts: Partial<LinkEntries>): Partial<LinkEntries> {
  const tidy = (text: string): string => typed(Math.round(Number(text) * 1000) / 1000);
  const { lower, upper } = texts;
  return lower === undefined || upper === undefined
    ? texts
    : { ...texts, lower: tidy(lower), upper: tidy(upper) };
}
