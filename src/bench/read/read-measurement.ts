import { levelDbm, type Rule } from '#compute';
import type { LinkEntries, SheetEntries } from '../../sheet/entries.ts';
import type { Measurement, StatedLink } from '../../sheet/measurement.ts';
import type { Measurand, Repeatability } from '../../sheet/sheet.ts';
import { strings } from '../strings.ts';
import { type Collector, collector, type EntryProblem } from './collector.ts';
import { measurementProblem } from './measurement-problem.ts';
import { problemStrings } from './problem-strings.ts';
import { readLink } from './read-link.ts';
import { readOnce } from './read-once.ts';
import { readPoint } from './read-point.ts';
import { readSetup } from './read-setup.ts';
import { SHEET_SPECS } from './spec.ts';

/** What the entries come to: a measurement if every one can be used, and otherwise what is wrong with those that cannot. */
export type EntriesRead =
  | { readonly measurement: Measurement; readonly problems: readonly [] }
  | { readonly measurement: undefined; readonly problems: readonly EntryProblem[] };

/**
 * Reads everything typed. Never throws; a measurement comes out only if nothing is wrong. That a method is out of range at a point
 * is no fault of what was typed.
 */
export function readMeasurement(entries: SheetEntries): EntriesRead {
  const collect = collector();
  const measurand = readMeasurand(entries, collect);
  const setup = readSetup(entries, collect);
  const damage = collect.optional(field('damage', entries));
  const rule = readRule(entries, collect);
  const points = entries.points.flatMap(
    (point, index) => readPoint({ entries: point, sheet: entries, position: index + 1, collect }) ?? [],
  );
  const repeatability = readRepeatability(entries, collect);
  const links = entries.links.flatMap((link, index) => linkIn(entries, link, index + 1, collect));
  if (collect.problems.length > 0) return { measurement: undefined, problems: collect.problems };
  const measurement: Measurement = {
    version: 2,
    title: entries.title.trim() || strings.untitled,
    measurand,
    setup,
    rule,
    ...(repeatability && { repeatability }),
    ...(damage !== undefined && { damageLevelDbm: levelDbm(damage) }),
    links,
    points,
    record: recordOf(entries),
  };
  const problem = measurementProblem(measurement, entries);
  return problem ? { measurement: undefined, problems: [problem] } : { measurement, problems: [] };
}

const field = <Key extends keyof typeof SHEET_SPECS>(key: Key, entries: SheetEntries) => ({
  path: key,
  label: strings.labels[key],
  text: entries[key],
  spec: SHEET_SPECS[key],
});

const linkOnce = readOnce<LinkEntries, { link: StatedLink; problems: readonly EntryProblem[] }>();

/** A link that is switched off holds nothing up: what is wrong with it is told once it is switched on again. */
function linkIn(
  { method }: SheetEntries,
  entries: LinkEntries,
  position: number,
  collect: Collector,
): readonly StatedLink[] {
  const { link, problems } = linkOnce(entries, `${method} ${position}`, () => {
    const own = collector();
    return { link: readLink({ entries, method, position, collect: own }), problems: own.problems };
  });
  if (entries.off) return problems.length > 0 ? [] : [link];
  for (const problem of problems) collect.add(problem);
  return [link];
}

function readMeasurand(entries: SheetEntries, collect: Collector): Measurand {
  const { power, delivery, keying } = entries;
  if (power === 'carrier' && keying !== 'keyDown')
    collect.add({ path: 'keying', label: strings.labels.keying, problem: problemStrings.keyedCarrier });
  return {
    power,
    delivery,
    keying,
    plane: entries.plane.trim(),
    conditions: entries.conditions.trim(),
  };
}

function readRule(entries: SheetEntries, collect: Collector): Rule {
  switch (entries.rule) {
    case 'simple':
      return { kind: 'simple' };
    case 'guardBand':
      return { kind: 'guardBand', multiplier: collect.number(field('multiplier', entries)) };
    case 'probability':
      return { kind: 'probability', required: collect.number(field('required', entries)) / 100 };
  }
}

function readRepeatability(entries: SheetEntries, collect: Collector): Repeatability | undefined {
  const standardDeviationDb = collect.optional(field('scatter', entries));
  if (standardDeviationDb === undefined) return undefined;
  return { standardDeviationDb, degreesOfFreedom: collect.number(field('repeats', entries)) - 1 };
}

const recordOf = (entries: SheetEntries): Measurement['record'] => ({
  by: entries.by.trim(),
  date: entries.date.trim(),
  instruments: entries.instruments.trim(),
  certificates: entries.certificates.trim(),
  supply: entries.supply.trim(),
  temperature: entries.temperature.trim(),
  remarks: entries.remarks.trim(),
});
