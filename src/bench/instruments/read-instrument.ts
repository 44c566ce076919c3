import { monthsIn } from '../../instruments/age.ts';
import { readDay } from '../../instruments/day.ts';
import type { InstrumentEntries } from '../../instruments/instrument.ts';
import type { Stated } from '../../sheet/measurement.ts';
import { correctionInDb, isCorrected } from '../../sheet/resolve-corrections.ts';
import { linkPath } from '../form/keys.ts';
import { type Collector, collector, type EntryProblem } from '../read/collector.ts';
import { amountSpec, endSpec } from '../read/link-spec.ts';
import { readLink } from '../read/read-link.ts';
import { SETUP_SPECS } from '../read/setup-spec.ts';
import { asLink } from './as-link.ts';
import { instrumentStrings as strings } from './strings.ts';
import { linkUnit, methodsFor, typedUnit } from './units.ts';

/** What stands before the key of a field in its path. */
const INSTRUMENT = 'instrument';
/** Path of a field of the instrument that is open in the form. */
export const fieldPath = (key: keyof InstrumentEntries): string => linkPath(INSTRUMENT, key);

/** An instrument whose every entry can be used, as numbers. */
export interface Instrument {
  /** Nominal loss in dB. */
  readonly lossDb: number;
  /** Correction for all frequencies and levels, in dB; 0 where there is none, or a table. */
  readonly correctionDb: number;
  readonly stated: Stated;
  /** Half-width of a year's drift, in the unit of the instrument; undefined where none is stated. */
  readonly driftPerYear: number | undefined;
}

export type InstrumentRead =
  | { readonly instrument: Instrument; readonly problems: readonly [] }
  | { readonly instrument: undefined; readonly problems: readonly EntryProblem[] };

/** Reads everything typed of an instrument. Never throws; an instrument comes out only if nothing is wrong. */
export function readInstrument(entries: InstrumentEntries): InstrumentRead {
  const collect = collector();
  if (entries.label.trim() === '') tell(collect, 'label', strings.problems.noName);
  const { lossDb, stated } = readAsLink(entries, collect);
  if (entries.kind === 'load') collect.number(field(entries, 'resistance', SETUP_SPECS.load));
  const calibrated = entries.basis === 'calibration';
  const correctionDb = calibrated ? readCorrection(entries, collect) : 0;
  const drift = amountSpec(typedUnit(entries.unit));
  const driftPerYear = calibrated ? collect.optional(field(entries, 'drift', drift)) : undefined;
  checkDays(entries, collect);
  return collect.problems.length > 0
    ? { instrument: undefined, problems: collect.problems }
    : { instrument: { lossDb, correctionDb, stated, driftPerYear }, problems: [] };
}

const tell = (collect: Collector, key: keyof InstrumentEntries, problem: string): void =>
  collect.add({ path: fieldPath(key), label: strings.labels[key], problem });

const field = (
  entries: InstrumentEntries,
  key: 'resistance' | 'correction' | 'drift',
  spec: Parameters<Collector['number']>[0]['spec'],
) => ({ path: fieldPath(key), label: strings.labels[key], text: entries[key], spec });

/** What a link of a method that can use it would say of it: the same fields, but for what a calibration calls otherwise. */
function readAsLink(entries: InstrumentEntries, collect: Collector) {
  const [method = 'padsIntoMeter'] = methodsFor(entries);
  const link = asLink(entries, { id: INSTRUMENT, unit: linkUnit(entries, method, 'dB') ?? 'dB' });
  const own = collector();
  // the temperature and the years are a sheet's: any will do to see whether the rest can be used
  const read = readLink({
    entries: { ...link, temperature: '20', years: '1' },
    method,
    position: 1,
    collect: own,
  });
  for (const { path, problem } of own.problems) {
    const key = keyOf(entries, path);
    tell(collect, key, key === 'unit' ? strings.problems.tableUnit : problem);
  }
  return read;
}

/** The instrument's own key for a field of the link that it would be. */
function keyOf(entries: InstrumentEntries, path: string): keyof InstrumentEntries {
  const key = path.slice(INSTRUMENT.length + 1);
  if (key === 'amount' && entries.basis === 'calibration') return 'uncertainty';
  return key in entries ? (key as keyof InstrumentEntries) : 'notes';
}

/** One correction for all in dB; a table has its own, and what is stated of readings cannot be added to a chain. */
function readCorrection(entries: InstrumentEntries, collect: Collector): number {
  if (entries.by !== 'nothing') return 0;
  const unit = typedUnit(entries.unit);
  const correction = collect.number(field(entries, 'correction', endSpec(unit)));
  if (isCorrected(entries.unit)) {
    if (correction > -100 || entries.unit === 'dB') return correctionInDb(entries.unit, correction);
    tell(collect, 'correction', strings.problems.noRest);
  } else if (correction !== 0) tell(collect, 'correction', strings.problems.notAdded);
  return 0;
}

/** A calibration has a day, and every day is one of the calendar; an interval is a number of months. */
function checkDays({ basis, calibrated, interval }: InstrumentEntries, collect: Collector): void {
  const empty = calibrated.trim() === '';
  if (empty ? basis === 'calibration' : readDay(calibrated) === undefined)
    tell(collect, 'calibrated', empty ? strings.problems.noDay : strings.problems.badDay(calibrated));
  if (interval.trim() === '') return;
  if (monthsIn(interval) === undefined) tell(collect, 'interval', strings.problems.badMonths(interval));
  else if (empty && basis === 'dataSheet') tell(collect, 'calibrated', strings.problems.noStart);
}
