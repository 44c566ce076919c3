/**
 * Places for labels beside marks that may lie close together: in the order of the marks, each as near to its mark as the least
 * distance to its neighbours allows. The group of labels that touch is centred on its marks.
 * @param places in rising order.
 */
export function spread(places: readonly number[], least: number): number[] {
  /** Runs of labels that touch: how many, and the sum of where their first would like to be. */
  const runs: { count: number; wishes: number }[] = [];
  const start = ({ count, wishes }: { count: number; wishes: number }): number => wishes / count;
  for (const place of places) {
    let run = { count: 1, wishes: place };
    for (
      let above = runs.at(-1);
      above && start(above) + above.count * least > start(run);
      above = runs.at(-1)
    ) {
      runs.pop();
      run = {
        count: above.count + run.count,
        wishes: above.wishes + run.wishes - run.count * above.count * least,
      };
    }
    runs.push(run);
  }
  return runs.flatMap((run) => Array.from({ length: run.count }, (_, index) => start(run) + index * least));
}

/** Round numbers in a decade, for ends of axes that do not move with every small change. */
const ROUND = [1, 1.5, 2, 3, 4, 5, 6, 8, 10] as const;

/** The smallest round number that is at least this much. @throws RangeError unless it is above zero. */
export function roundAbove(value: number): number {
  if (!(Number.isFinite(value) && value > 0))
    throw new RangeError(`roundAbove: value must be > 0, got ${value}`);
  const decade = 10 ** Math.floor(Math.log10(value));
  const found = ROUND.find((round) => round * decade >= value * (1 - 1e-12)) ?? 10;
  return Number((found * decade).toPrecision(3));
}
