import { roundsOf, type TransferRound } from '#compute';
import { readColumn } from '../text/read/column.ts';
import { readingStrings as strings } from './reading-strings.ts';
import { LEVEL } from './specs.ts';

/** Rounds of one place, or the sentence on why there are none. */
export type RoundsRead =
  | { readonly rounds: readonly TransferRound[] }
  | { readonly problem: string; readonly rounds?: undefined };

/** More readings than this are not taken by hand. */
export const MOST_READINGS = 2000;
/** How many faulty lines are told one by one. */
const TOLD_LINES = 3;

const isTurns = (values: readonly number[]): boolean => values.length > 2 && values.length % 2 === 1;

/** The numbers line by line. */
function linesOf(values: ReturnType<typeof readColumn>['values']): readonly (readonly number[])[] {
  const lines = new Map<number, number[]>();
  for (const { line, value } of values) lines.set(line, [...(lines.get(line) ?? []), value]);
  return [...lines.values()];
}

/**
 * Readings taken in turn, reference first and last: one to a line, A B A B A, or an odd number to each line, every line then
 * beginning with a reference of its own. Never throws.
 */
export function readRounds(text: string): RoundsRead {
  const { values, problems, mixed } = readColumn(text, LEVEL);
  if (problems.length > 0)
    return {
      problem: problems
        .slice(0, TOLD_LINES)
        .map(({ problem }) => problem)
        .join(' '),
    };
  if (mixed) return { problem: strings.mixed };
  if (values.length === 0) return { problem: strings.none };
  if (values.length > MOST_READINGS) return { problem: strings.tooMany(MOST_READINGS) };
  const lines = linesOf(values);
  const single = lines.every((line) => line.length === 1);
  const series = single ? [lines.flat()] : lines;
  const wrong = series.findIndex((each) => !isTurns(each));
  const count = series[wrong]?.length;
  if (count !== undefined)
    return { problem: single ? strings.notInTurn(count) : strings.lineNotInTurn(wrong + 1, count) };
  return { rounds: series.flatMap((each) => roundsOf(each)) };
}
