import { type LevelDbm, levelDbm, type Rule, type Specification } from '#compute';
import type { SheetEntries } from '../sheet/entries.ts';
import type { Repeatability, Sheet } from '../sheet/sheet.ts';
import { toModel } from '../sheet/to-model.ts';
import { readColumn } from '../text/read/column.ts';
import { type Collector, collector, type EntryProblem } from './collector.ts';
import { reachOfInputs } from './reach.ts';
import { readLink } from './read-link.ts';
import { LEVEL_LIMIT_DBM, MOST_READINGS, SHEET_SPECS, WIDEST_CHAIN_DB, WIDEST_READINGS_DB } from './spec.ts';
import { strings } from './strings.ts';

/** What the entries come to: a sheet if every one can be used, and otherwise what is wrong with those that cannot. */
export type EntriesRead =
  | { readonly sheet: Sheet; readonly problems: readonly [] }
  | { readonly sheet: undefined; readonly problems: readonly EntryProblem[] };

/** Reads everything typed. Never throws; a sheet comes out only if nothing is wrong. */
export function readEntries(entries: SheetEntries): EntriesRead {
  const collect = collector();
  const specification = readSpecification(entries, collect);
  const rule = readRule(entries, collect);
  const readings = readReadings(entries, collect);
  const repeatability = readRepeatability(entries, collect);
  const damage = collect.optional(field('damage', entries));
  const links = entries.links.map((link, index) => readLink(link, index + 1, collect));
  if (collect.problems.length > 0) return { sheet: undefined, problems: collect.problems };
  const sheet: Sheet = {
    version: 1,
    title: entries.title.trim() || strings.untitled,
    measurand: { power: entries.power, plane: entries.plane.trim(), conditions: entries.conditions.trim() },
    specification,
    rule,
    readings,
    ...(repeatability && { repeatability }),
    ...(damage !== undefined && { damageLevelDbm: levelDbm(damage) }),
    links,
  };
  const problem = wholeProblem(sheet);
  return problem ? { sheet: undefined, problems: [problem] } : { sheet, problems: [] };
}

const field = <Key extends keyof typeof SHEET_SPECS>(key: Key, entries: SheetEntries) => ({
  path: key,
  label: strings.labels[key],
  text: entries[key],
  spec: SHEET_SPECS[key],
});

function readSpecification(entries: SheetEntries, collect: Collector): Specification {
  const number = (key: 'nominal' | 'tolerance' | 'lowest' | 'highest') => collect.number(field(key, entries));
  switch (entries.specification) {
    case 'around': {
      const [nominal, tolerance] = [number('nominal'), number('tolerance')];
      return { lower: tidy(nominal - tolerance), upper: tidy(nominal + tolerance) };
    }
    case 'between': {
      const before = collect.problems.length;
      const limits = { lower: number('lowest'), upper: number('highest') };
      if (collect.problems.length === before && limits.lower >= limits.upper)
        collect.add({ path: 'highest', label: strings.labels.highest, problem: strings.limitsSwapped });
      return limits;
    }
    case 'atMost':
      return { upper: number('highest') };
    case 'atLeast':
      return { lower: number('lowest') };
  }
}

/** A sum of two typed decibels without the noise of the last bit: 27 - 1.3 is 25.7. */
const tidy = (value: number): number => Number(value.toFixed(10));

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

/** How many faulty lines are told one by one. */
const TOLD_LINES = 3;

function readReadings({ readings }: SheetEntries, collect: Collector): LevelDbm[] {
  const { values, problems } = readColumn(readings, SHEET_SPECS.readings);
  const add = (problem: string): void =>
    collect.add({ path: 'readings', label: strings.labels.readings, problem });
  if (problems.length > 0) {
    const told = problems.slice(0, TOLD_LINES).map(({ problem }) => problem);
    const rest = problems.length - told.length;
    add([...told, ...(rest > 0 ? [strings.moreLines(rest)] : [])].join(' '));
  } else if (values.length === 0) add(strings.noReading);
  else if (values.length > MOST_READINGS) add(strings.tooManyReadings(MOST_READINGS));
  return values.map(({ value }) => levelDbm(value));
}

function readRepeatability(entries: SheetEntries, collect: Collector): Repeatability | undefined {
  const standardDeviationDb = collect.optional(field('scatter', entries));
  if (standardDeviationDb === undefined) return undefined;
  return { standardDeviationDb, degreesOfFreedom: collect.number(field('repeats', entries)) - 1 };
}

/** What is wrong with a sheet whose every field can be used: sums that no measurement reaches. */
function wholeProblem(sheet: Sheet): EntryProblem | undefined {
  const { links, readings } = sheet;
  if (Math.max(...readings) - Math.min(...readings) > WIDEST_READINGS_DB)
    return {
      path: 'readings',
      label: strings.labels.readings,
      problem: strings.readingsApart(WIDEST_READINGS_DB),
    };
  const first = readings[0] ?? 0;
  const level = links.reduce((sum, { lossDb }) => sum + lossDb, first);
  const at = links[0] ? `${links[0].id}.loss` : 'readings';
  if (Math.abs(level) > LEVEL_LIMIT_DBM)
    return { path: at, label: strings.wholeChain, problem: strings.levelBeyond(LEVEL_LIMIT_DBM) };
  if (reachOfInputs(toModel(sheet).inputs) > WIDEST_CHAIN_DB)
    return { path: at, label: strings.wholeChain, problem: strings.tooWide(WIDEST_CHAIN_DB) };
  return undefined;
}
