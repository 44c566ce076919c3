import { useRef } from 'preact/hooks';
import type { SheetEntries } from '../../sheet/entries.ts';
import type { EntryProblem } from '../read/collector.ts';

/** Whether two sheets differ in nothing but what is left aside. */
export const isSameBut = (
  one: SheetEntries,
  other: SheetEntries,
  aside: readonly (keyof SheetEntries)[],
): boolean =>
  (Object.keys(one) as (keyof SheetEntries)[]).every(
    (key) => aside.includes(key) || Object.is(one[key], other[key]),
  );

/** Whether the same is wrong with the same fields. */
export const areSameProblems = (one: readonly EntryProblem[], other: readonly EntryProblem[]): boolean =>
  one.length === other.length &&
  one.every(({ path, problem }, index) => other[index]?.path === path && other[index]?.problem === problem);

/** The value of an earlier drawing as long as the present one says the same: what hangs on it need not be drawn again. */
function useKept<Value>(value: Value, same: (one: Value, other: Value) => boolean): Value {
  const kept = useRef(value);
  if (!same(kept.current, value)) kept.current = value;
  return kept.current;
}

/** The entries of an earlier drawing as long as they differ in nothing but what is left aside. */
export const useUnchanged = (entries: SheetEntries, aside: readonly (keyof SheetEntries)[]): SheetEntries =>
  useKept(entries, (one, other) => isSameBut(one, other, aside));

/** The problems of an earlier drawing as long as they are the same. */
export const useSameProblems = (problems: readonly EntryProblem[]): readonly EntryProblem[] =>
  useKept(problems, areSameProblems);
