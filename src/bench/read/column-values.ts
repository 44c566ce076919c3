import { readColumn } from '../../text/read/column.ts';
import type { ReadSpec } from '../../text/read/quantity.ts';
import { problemStrings } from './problem-strings.ts';
import { MOST_READINGS } from './spec.ts';

/** What the text of a column came to. */
export interface ColumnValues {
  readonly values: readonly number[];
  /** What is wrong with it, in one go; an empty column is not wrong here. */
  readonly problem: string | undefined;
}

/** How many faulty lines are told one by one. */
const TOLD_LINES = 3;
/** Readings remembered over all columns: those of a sheet with many points, and what was typed just before. */
const MOST_KEPT = 1_000_000;

const kept = new Map<string, ColumnValues>();
let count = 0;

/** The numbers of a column. What was read once is remembered: an edit elsewhere does not read ten thousand readings again. */
export function columnValues(text: string, spec: ReadSpec): ColumnValues {
  const key = `${spec.kind} ${spec.min} ${spec.max} ${text}`;
  const found = kept.get(key);
  if (found !== undefined) return found;
  const read = freshValues(text, spec);
  kept.set(key, read);
  count += 1 + read.values.length;
  for (const [oldest, { values }] of kept) {
    if (count <= MOST_KEPT || oldest === key) break;
    kept.delete(oldest);
    count -= 1 + values.length;
  }
  return read;
}

function freshValues(text: string, spec: ReadSpec): ColumnValues {
  const { values, problems, mixed } = readColumn(text, spec);
  return {
    values: values.map(({ value }) => value),
    problem:
      problems.length > 0
        ? told(problems.map(({ problem }) => problem))
        : mixed
          ? problemStrings.mixedUnits
          : values.length > MOST_READINGS
            ? problemStrings.tooManyReadings(MOST_READINGS)
            : undefined,
  };
}

function told(problems: readonly string[]): string {
  const rest = problems.length - TOLD_LINES;
  const first = problems.slice(0, TOLD_LINES).join(' ');
  return rest > 0 ? `${first} ${problemStrings.moreLines(rest)}` : first;
}
