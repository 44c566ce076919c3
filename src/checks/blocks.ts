import type { Check, Figure } from './check.ts';

/** Checks that are shown together: one table of examples, or one grid. */
export type Block =
  | { readonly kind: 'list'; readonly checks: readonly Check[] }
  | {
      readonly kind: 'grid';
      readonly heading: string;
      readonly columns: readonly Figure[];
      readonly checks: readonly Check[];
    };

/** The grid heading of a check; undefined for one that stands in a list. */
const headingOf = (check: Check | undefined): string | undefined => check?.grid?.heading;

/** Splits checks into runs that stay together, in order. */
function runsOf(checks: readonly Check[]): Check[][] {
  const runs: Check[][] = [];
  for (const check of checks) {
    const run = runs.at(-1);
    if (run && headingOf(run[0]) === headingOf(check)) run.push(check);
    else runs.push([check]);
  }
  return runs;
}

/** The row with most figures names the columns of a grid. */
const widest = (checks: readonly Check[]): readonly Figure[] =>
  checks.reduce<readonly Figure[]>(
    (best, { figures }) => (figures.length > best.length ? figures : best),
    [],
  );

/** How the checks of a source are laid out: lists and grids, in the order of the checks. */
export function blocksOf(checks: readonly Check[]): Block[] {
  return runsOf(checks).map((run) => {
    const heading = headingOf(run[0]);
    if (heading === undefined) return { kind: 'list', checks: run };
    return { kind: 'grid', heading, columns: widest(run), checks: run };
  });
}
