import type { Figure } from './check.ts';
import { halfLastDigit, readPrinted } from './printed.ts';

/**
 * What a comparison of doubles may add: a tie such as 100.145 against a printed 100.14 must not be decided by the last
 * bits of a subtraction.
 */
const SLACK = 8 * Number.EPSILON;

/** A printed value beside this site's. All in the figure's unit. */
export interface Outcome {
  readonly printed: number;
  readonly computed: number;
  /** computed - printed. */
  readonly difference: number;
  /** |difference| / |printed|; undefined where zero or a bound is printed. */
  readonly relative: number | undefined;
  readonly allowed: number;
  readonly agrees: boolean;
}

/** Compares a computed value with one in print. @throws RangeError if the print cannot be read. */
function compare({
  printed: text,
  computed,
  within,
}: {
  printed: string;
  computed: number;
  within: number | undefined;
}): Outcome {
  const printed = readPrinted(text);
  const allowed = within ?? halfLastDigit(printed);
  const difference = computed - printed.value;
  const isNear = Math.abs(difference) <= allowed + SLACK * Math.abs(printed.value);
  const hasRelative = printed.value !== 0 && !printed.isUpperBound;
  return {
    printed: printed.value,
    computed,
    difference,
    relative: hasRelative ? Math.abs(difference / printed.value) : undefined,
    allowed,
    agrees: printed.isUpperBound ? computed < printed.value : isNear,
  };
}

/** Values already computed: a page asks for each several times, and a simulation takes its time. */
const computedValues = new WeakMap<Figure, number>();

function computedOf(figure: Figure): number {
  const known = computedValues.get(figure);
  if (known !== undefined) return known;
  const value = figure.compute();
  computedValues.set(figure, value);
  return value;
}

/** How this site's value stands against the printed one. The figure is computed once. */
export const outcomeOf = (figure: Figure): Outcome =>
  compare({ printed: figure.printed, computed: computedOf(figure), within: figure.tolerance?.within });

/**
 * How this site's value stands against the exact one, for a figure whose print is known to differ.
 * @returns undefined for a figure that is expected to agree with print.
 */
export const outcomeOfExact = (figure: Figure): Outcome | undefined =>
  figure.differs &&
  compare({ printed: figure.differs.exact, computed: computedOf(figure), within: undefined });
