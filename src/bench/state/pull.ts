import { type Input, propagate, type SumModel } from '#compute';
import { amountOf, withAmount, withLinkAmount } from '../../sheet/amount.ts';
import { COVERAGE_FACTOR } from '../../sheet/coverage.ts';
import type { LinkEntries } from '../../sheet/entries.ts';
import { outcomeAt } from '../../sheet/outcome-at.ts';
import type { Sheet } from '../../sheet/sheet.ts';
import { outcomeOf } from '../../sheet/to-model.ts';
import { statementEntries } from '../entries/statement-entries.ts';
import { tidy, typed } from '../entries/typed.ts';
import { amountSpec } from '../read/link-spec.ts';
import type { BenchAction } from './actions.ts';
import { editLink } from './edit-links.ts';
import { settled } from './history.ts';
import type { BenchState } from './state.types.ts';

/** A handle moves in steps of this many dB, percent, volts ... */
const STEP = 0.01;
/** Amount small enough for its uncertainty to be in proportion. */
const PROBE = 1e-3;

/** What turns the place of a link's handle into an amount. It hangs on the amount itself in nothing: found once, it holds for a whole drag. */
export interface Grip {
  /** Standard uncertainty in dB of everything above the link. */
  readonly aboveDb: number;
  /** Standard uncertainty in dB of the result that one unit of the link's amount stands for. */
  readonly dbPerAmount: number;
}

/** The grip of a link's handle; undefined if there is no such link, or no number at all. */
function gripOf(sheet: Sheet, id: string): Grip | undefined {
  const outcome = outcomeOf(sheet);
  if (!outcome.inRange || !sheet.links.some((link) => link.id === id)) return undefined;
  return { aboveDb: uncertaintyAbove(outcome.model, id), dbPerAmount: uncertaintyPerAmount(sheet, id) };
}

/**
 * The texts of a link after its handle was dragged to where the band below it has this expanded uncertainty. What stands
 * above the link cannot be undone below it: then the link adds nothing. A sum of terms or two standing-wave ratios become plain
 * limits, since nobody can say which of their numbers was meant; a table of corrections becomes the one that holds here. Undefined if
 * there is no such link, or no number at all.
 */
export function pulledLink({
  sheet,
  id,
  expandedDb,
  grip = gripOf(sheet, id),
}: {
  sheet: Sheet;
  id: string;
  expandedDb: number;
  grip?: Grip | undefined;
}): Partial<LinkEntries> | undefined {
  const link = sheet.links.find((candidate) => candidate.id === id);
  if (link === undefined || grip === undefined || !Number.isFinite(expandedDb)) return undefined;
  const wanted = Math.max(0, expandedDb / COVERAGE_FACTOR);
  const own = Math.sqrt(Math.max(0, wanted ** 2 - grip.aboveDb ** 2));
  const wish = own / grip.dbPerAmount;
  const amount = Math.min(amountSpec(link.unit).max, Math.round(wish / STEP) / Math.round(1 / STEP));
  if (amount === amountOf(link.statement)) return {};
  return {
    ...tidied(statementEntries(withAmount(link.statement, amount))),
    unit: link.unit,
    ...(link.correctionDb !== undefined && { loss: typed(tidy(link.lossDb)) }),
  };
}

/** The state after a handle was dragged, as a step of undo that goes on for as long as it is held; the same state where nothing changes. */
export function pulled(
  state: BenchState,
  { id, expandedDb }: Extract<BenchAction, { type: 'pull' }>,
  point: string,
): BenchState {
  const { held, entries } = state;
  const { sheet } = outcomeAt(state.measurement, point);
  const last = held?.last;
  // as long as nothing else has changed since the pull before
  const goesOn = last?.entries === entries && last.id === id && last.point === point;
  const grip = goesOn ? last.grip : gripOf(sheet, id);
  const link = pulledLink({ sheet, id, expandedDb, grip });
  if (link === undefined || Object.keys(link).length === 0) return state;
  const next = settled(state, editLink(entries, id, link), `pull.${id}`);
  return held && grip
    ? { ...next, held: { ...held, last: { id, point, grip, entries: next.entries } } }
    : next;
}

/**
 * Standard uncertainty in dB of everything above a link. Propagation is all that a handle asks for: what finds whole distributions
 * is fetched with the results.
 */
export function uncertaintyAbove({ inputs, sensitivities, ...model }: SumModel, id: string): number {
  const above = Math.max(
    0,
    inputs.findIndex((input) => input.id === id),
  );
  return propagate({
    model: { ...model, inputs: inputs.slice(0, above), sensitivities: sensitivities.slice(0, above) },
  }).standardUncertainty;
}

/** Standard uncertainty in dB of the result that one unit of a link's amount stands for, at this sheet's reading. */
function uncertaintyPerAmount(sheet: Sheet, id: string): number {
  const probe = withLinkAmount(sheet, id, PROBE);
  const links = probe.links.map(({ reflections: _, ...link }) => link);
  const outcome = outcomeOf({ ...probe, links });
  return outcome.inRange ? contributionOf(outcome.model, id) / PROBE : Number.POSITIVE_INFINITY;
}

function contributionOf({ inputs, sensitivities }: SumModel, id: string): number {
  const index = inputs.findIndex((input) => input.id === id);
  const input: Input | undefined = inputs[index];
  const own = input?.standardUncertainty ?? input?.distribution.standardDeviation ?? 0;
  return own * Math.abs(sensitivities[index] ?? 1);
}

/** Ends of lopsided limits to the thousandth: dragging keeps their proportions, which may be no round numbers. */
function tidied(texts: Partial<LinkEntries>): Partial<LinkEntries> {
  const tidy = (text: string): string => typed(Math.round(Number(text) * 1000) / 1000);
  const { lower, upper } = texts;
  return lower === undefined || upper === undefined
    ? texts
    : { ...texts, lower: tidy(lower), upper: tidy(upper) };
}
