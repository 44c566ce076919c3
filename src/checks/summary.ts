import type { Chapter, Check, Figure } from './check.ts';
import { outcomeOf } from './outcome.ts';
import { readPrinted } from './printed.ts';

/** A figure with the check it belongs to. */
export interface Located {
  readonly check: Check;
  readonly figure: Figure;
}

/** What a list of checks comes to. */
export interface Summary {
  readonly checks: number;
  readonly figures: number;
  /** Figures that agree to the printed digits, or within the tolerance that the check gives a reason for. */
  readonly agreeing: number;
  /** Figures whose print is known to differ, each explained. */
  readonly explained: number;
  /** Figures that neither agree nor are explained; none, or the tests fail. */
  readonly open: number;
  /** The largest relative difference between print and computation where the two agree: the coarsest print. */
  readonly largestAgreeing: { readonly relative: number; readonly where: Located } | undefined;
  /** Likewise among values printed with twelve digits or more, where the print hides nothing. */
  readonly largestOfLongPrints: { readonly relative: number; readonly where: Located } | undefined;
}

/** From so many significant digits on a print is called long. */
const LONG_PRINT_DIGITS = 12;

/** All checks of some chapters, in order. */
export const checksOf = (chapters: readonly Chapter[]): Check[] =>
  chapters.flatMap(({ sources }) => sources.flatMap(({ checks }) => checks));

/** All figures of some checks, each with its check. */
export const figuresOf = (checks: readonly Check[]): Located[] =>
  checks.flatMap((check) => check.figures.map((figure) => ({ check, figure })));

/** Significant digits as printed: leading zeros do not count. */
function printedDigits(figure: Figure): number {
  const { value, decimals } = readPrinted(figure.printed);
  return Math.abs(value).toFixed(decimals).replace('.', '').replace(/^0+/, '').length;
}

type Compared = Located & { readonly relative: number; readonly agrees: boolean };

function largest(compared: readonly Compared[]): Summary['largestAgreeing'] {
  const top = compared.reduce<Compared | undefined>(
    (best, one) => (best === undefined || one.relative > best.relative ? one : best),
    undefined,
  );
  return top && { relative: top.relative, where: { check: top.check, figure: top.figure } };
}

/** Counts the checks, runs every figure, and finds the largest relative difference. */
export function summaryOf(checks: readonly Check[]): Summary {
  const compared = figuresOf(checks).map(({ check, figure }): Compared => {
    const { relative = 0, agrees } = outcomeOf(figure);
    return { check, figure, relative, agrees };
  });
  const expected = compared.filter(({ figure }) => figure.differs === undefined);
  const agreeing = expected.filter(({ agrees }) => agrees);
  return {
    checks: checks.length,
    figures: compared.length,
    agreeing: agreeing.length,
    explained: compared.length - expected.length,
    open: expected.length - agreeing.length,
    largestAgreeing: largest(agreeing),
    largestOfLongPrints: largest(agreeing.filter(({ figure }) => printedDigits(figure) >= LONG_PRINT_DIGITS)),
  };
}
