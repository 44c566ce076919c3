import type { CheckKey } from '../../sheet/check-keys.ts';
import type { SheetEntries } from '../../sheet/entries.ts';
import type { Measurement } from '../../sheet/measurement.ts';
import { readColumn } from '../../text/read/column.ts';
import { checkPath } from '../form/keys.ts';
import { collector, type EntryProblem } from '../read/collector.ts';
import { checkLevel } from './check-level.ts';
import { checkSpec, MOST_CHECK_READINGS } from './check-spec.ts';
import { checkStrings } from './check-strings.ts';

/** What the checks are asked of: their texts, the measurement, and how sure its result is. */
export interface CheckQuestion {
  readonly checks: SheetEntries['checks'];
  readonly measurement: Measurement;
  /** Combined standard uncertainty of the result in dB; undefined where there is no result. */
  readonly uncertaintyDb: number | undefined;
}

/**
 * What may be left without notice, as a share of the standard uncertainty: a third, added as a square, widens the band by 5 %
 * (common practice; sqrt(1 + 1/9) = 1.054).
 */
const NEGLIGIBLE_SHARE = 1 / 3;

/** What an effect may come to where the reader says nothing, in dB; undefined where there is no result or it is exact. */
export const usualAllowance = ({ uncertaintyDb }: CheckQuestion): number | undefined =>
  uncertaintyDb === undefined || uncertaintyDb === 0 ? undefined : uncertaintyDb * NEGLIGIBLE_SHARE;

/** Reads the fields of one check, and keeps what is missing or wrong. Stand-ins come back for both: see `whole`. */
export interface CheckReader {
  readonly question: CheckQuestion;
  readonly missing: readonly CheckKey[];
  readonly problems: readonly EntryProblem[];
  /** Whether everything that was read can be used. */
  whole(): boolean;
  number(key: CheckKey): number;
  optional(key: CheckKey): number | undefined;
  column(key: CheckKey, least: number): readonly number[];
  /** Levels of a column of readings, in dB against one unit. */
  levels(key: CheckKey, least: number): readonly number[];
  level(key: CheckKey): number;
  /** What was allowed, or what is usual. */
  allowed(key: CheckKey): number;
  fault(key: CheckKey, problem: string): void;
}

/** A reader of the checks' texts. */
export function checkReader(question: CheckQuestion): CheckReader {
  const { checks, measurement } = question;
  const { setup } = measurement;
  const found = collector();
  const missing: CheckKey[] = [];
  const field = (key: CheckKey) => {
    const label = checkStrings.labels[key];
    // "-40 dBc" is how harmonics are stated: decibels, against the carrier
    const text = checks[key].replace(/dBc\s*$/i, 'dB');
    return { path: checkPath(key), label, text, spec: checkSpec(setup.method, key) };
  };
  const isEmpty = (key: CheckKey): boolean => checks[key].trim() === '';
  const number = (key: CheckKey): number => {
    if (!isEmpty(key)) return found.number(field(key));
    missing.push(key);
    return checkSpec(setup.method, key).max;
  };
  const fault = (key: CheckKey, problem: string): void =>
    found.add({ path: checkPath(key), label: checkStrings.labels[key], problem });
  const column = (key: CheckKey, least: number): readonly number[] => {
    if (isEmpty(key)) missing.push(key);
    else return columnOf(field(key), least, (problem) => fault(key, problem));
    return [];
  };
  return {
    question,
    missing,
    problems: found.problems,
    whole: () => missing.length === 0 && found.problems.length === 0,
    number,
    optional: (key) => found.optional(field(key)),
    column,
    levels: (key, least) => column(key, least).map((reading) => checkLevel(setup, reading)),
    level: (key) => checkLevel(setup, number(key)),
    allowed: (key) => (isEmpty(key) ? (usualAllowance(question) ?? number(key)) : number(key)),
    fault,
  };
}

function columnOf(
  { text, spec }: { text: string; spec: Parameters<typeof readColumn>[1] },
  least: number,
  fault: (problem: string) => void,
): readonly number[] {
  const { values, problems } = readColumn(text, spec);
  const [first] = problems;
  if (first !== undefined) fault(first.problem);
  else if (values.length < least) fault(checkStrings.tooFew(least));
  else if (values.length > MOST_CHECK_READINGS) fault(checkStrings.tooMany(MOST_CHECK_READINGS));
  return values.map(({ value }) => value);
}
