import { amountOf } from '../sheet/amount.ts';
import { bandChainOf } from '../sheet/chain.ts';
import type { Link, Sheet } from '../sheet/sheet.ts';

/** Most rungs that can be read from the back row, one above the other. */
const MOST = 6;

/** A chain as the wall shows it. */
export interface WallChain {
  /** The same sum; what is taken together stands first. */
  readonly sheet: Sheet;
  /** Ids of the rungs that are shown as one, in their order; none of a chain that fits. */
  readonly others: readonly string[];
  /** The rung that a speaker changes: the widest that is stated in dB, else what brings most of the variance. Undefined of no rungs. */
  readonly rung: string | undefined;
}

/** Makes a chain fit the wall: the parts that bring least of the variance are taken together, as many as do not fit. */
export function wallChain(sheet: Sheet): WallChain {
  const others =
    sheet.links.length > MOST
      ? bySize(sheet)
          .slice(0, sheet.links.length - MOST + 1)
          .map(({ id }) => id)
      : [];
  const [small, large] = [true, false].map((isSmall) =>
    sheet.links.filter(({ id }) => others.includes(id) === isSmall),
  );
  const [widest] = (large ?? [])
    .filter(({ unit }) => unit === 'dB')
    .toSorted((a, b) => amountOf(b.statement) - amountOf(a.statement));
  return {
    sheet: { ...sheet, links: [...(small ?? []), ...(large ?? [])] },
    others: (small ?? []).map(({ id }) => id),
    rung: (widest ?? bySize({ ...sheet, links: large ?? [] }).at(-1))?.id,
  };
}

/** The links by what they bring of the variance, least first. */
function bySize(sheet: Sheet): readonly Link[] {
  const { budget } = bandChainOf(sheet).result.propagation;
  const shareOf = (id: string): number => budget.find((row) => row.id === id)?.share ?? 0;
  return sheet.links.toSorted((a, b) => shareOf(a.id) - shareOf(b.id));
}
