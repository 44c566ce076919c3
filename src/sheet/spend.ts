import { readingsThatPay, targetForVerdict, type Verdict } from '#compute';
import { COVERAGE_FACTOR } from './coverage.ts';
import { combined, known, ofLimits, ofUShape, type Part } from './independent.ts';

/** Links that something can be spent on, in their order down the chain. */
export const SPENDABLE = ['meter', 'mismatch', 'pad', 'coax', 'readings'] as const;
export type Spendable = (typeof SPENDABLE)[number];

/** What the club measured, and how good each link is, in dB. Every value is invented. */
export interface Spending {
  readonly levelDbm: number;
  readonly meter: number;
  readonly mismatch: number;
  readonly pad: number;
  readonly coax: number;
  /** Scatter of a single reading, known from many evenings. */
  readonly scatter: number;
  readonly count: number;
}

/** Limits of the transmitter, in dBm. */
export const SPECIFICATION = { lower: 25.5, upper: 28.5 } as const;

/** What it takes to make a link better, in hours of an evening. Invented. */
export const HOURS: Readonly<Record<Spendable, number>> = {
  meter: 4,
  mismatch: 2,
  pad: 1,
  coax: 0.5,
  readings: 0.25,
};

export const clubSpending = (): Spending => ({
  levelDbm: 27.9,
  meter: 0.25,
  mismatch: 0.16,
  pad: 0.5,
  coax: 0.05,
  scatter: 0.15,
  count: 4,
});

/** What the standards above the lent meter bring, k = 2: a part of the chain that nothing can be spent on. */
export const STANDARDS_EXPANDED_DB = Math.hypot(0.02, 0.06);

function partsOf({ meter, mismatch, pad, coax, scatter, count }: Spending): readonly Part[] {
  return [
    known('standards', STANDARDS_EXPANDED_DB / COVERAGE_FACTOR),
    known('meter', ofLimits(meter)),
    known('mismatch', ofUShape(mismatch)),
    known('pad', ofLimits(pad)),
    known('coax', ofLimits(coax)),
    known('readings', scatter / Math.sqrt(count)),
  ];
}

/** The chain put together: every part is taken as known, so that k = 2 goes with the usual coverage. */
export function spentOn(of: Spending): {
  readonly parts: readonly Part[];
  readonly standardUncertainty: number;
  readonly expanded: number;
} {
  const parts = partsOf(of);
  const standardUncertainty = combined(parts);
  return { parts, standardUncertainty, expanded: COVERAGE_FACTOR * standardUncertainty };
}

/** What one link brings, as a standard uncertainty. */
const ownOf = (of: Spending, link: string): number =>
  partsOf(of).find(({ id }) => id === link)?.standardUncertainty ?? 0;

/** What all the others bring. */
const othersOf = (of: Spending, link: string): number =>
  combined(partsOf(of).filter(({ id }) => id !== link));

/** U with one link `factor` times as uncertain: 0 perfect, 0.5 halved. */
export const expandedWith = (of: Spending, link: Spendable, factor: number): number =>
  COVERAGE_FACTOR * Math.hypot(othersOf(of, link), factor * ownOf(of, link));

/** The U that would just earn a verdict, with U as guard band (JCGM 106, 8.3): the room to the nearer limit. */
export const neededExpanded = ({ levelDbm }: Spending): number =>
  targetForVerdict({ specification: SPECIFICATION, estimate: levelDbm }).expanded;

/** Whether the strip keeps off both limits. Estimates here lie within them, so that the other verdict is “can't tell”. */
export const verdictOf = (of: Spending): Verdict =>
  spentOn(of).expanded <= neededExpanded(of) ? 'inside' : 'cant-tell';

/** What differs by less than this part of it is level: the rest is rounding. */
const LEVEL_WITHIN = 1e-9;

/** The links that bring most of the variance: several where they are level. */
export function dominantLinks(of: Spending): readonly string[] {
  const parts = partsOf(of);
  const most = Math.max(...parts.map(({ standardUncertainty }) => standardUncertainty));
  return parts
    .filter(({ standardUncertainty }) => standardUncertainty >= most * (1 - LEVEL_WITHIN))
    .map(({ id }) => id);
}

/** A link's share of the variance, or that of the standards above the meter. */
export const shareOf = (of: Spending, link: Spendable | 'standards'): number =>
  (ownOf(of, link) / spentOn(of).standardUncertainty) ** 2;

/**
 * To how much of its uncertainty one link must come down for a verdict, the others as they are: 1 where there is one already, undefined
 * where even a perfect link would not do.
 */
export function enoughFactor(of: Spending, link: Spendable): number | undefined {
  if (verdictOf(of) === 'inside') return 1;
  const own = ownOf(of, link);
  const room = (neededExpanded(of) / COVERAGE_FACTOR) ** 2 - othersOf(of, link) ** 2;
  return room < 0 ? undefined : Math.min(1, Math.sqrt(room) / own);
}

/** The cheapest single change that earns a verdict, by the hours that it takes; undefined where none does or none is needed. */
export function cheapestLink(of: Spending): { link: Spendable; factor: number } | undefined {
  if (verdictOf(of) === 'inside') return undefined;
  const able = SPENDABLE.flatMap((link) => {
    const factor = enoughFactor(of, link);
    return factor === undefined ? [] : [{ link, factor }];
  });
  return able.toSorted((a, b) => HOURS[a.link] - HOURS[b.link])[0];
}

/** From how many readings on further ones together gain less than a twentieth of the standard uncertainty. */
export const readingsWorth = (of: Spending): number =>
  readingsThatPay({ standardDeviation: of.scatter, otherUncertainty: othersOf(of, 'readings') }) ??
  Number.POSITIVE_INFINITY;
