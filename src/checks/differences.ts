import type { Chapter, Figure } from './check.ts';

/** A figure whose print is known to differ, with where it stands. */
export interface Difference {
  /** Source, clause and row, for a reader. */
  readonly place: string;
  readonly chapterId: string;
  readonly checkId: string;
  readonly figure: Figure;
}

/** Every known difference between print and computation, in the order of the chapters. */
export function differencesOf(chapters: readonly Chapter[]): Difference[] {
  return chapters.flatMap(({ id: chapterId, sources }) =>
    sources.flatMap(({ name, checks }) =>
      checks.flatMap((check) => {
        const place = [name, check.clause, check.grid?.row].filter(Boolean).join(', ');
        return check.figures
          .filter((figure) => figure.differs)
          .map((figure) => ({ place, chapterId, checkId: check.id, figure }));
      }),
    ),
  );
}

/** Differences that teach something, apart from slips of print. */
export function sortedDifferences<One extends Difference>(
  differences: readonly One[],
): { lessons: One[]; slips: One[] } {
  const isSlip = ({ figure }: Difference) => figure.differs?.slip === true;
  return {
    lessons: differences.filter((one) => !isSlip(one)),
    slips: differences.filter(isSlip),
  };
}

/** Differences of one check that have one reason, told together; in order, none left out. */
export function groupedByReason<One extends Difference>(differences: readonly One[]): One[][] {
  const groups = new Map<string, One[]>();
  for (const one of differences) {
    const key = `${one.place}: ${one.figure.differs?.because}`;
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return [...groups.values()];
}
