import type { Outcome } from './example.ts';

/** In what an outcome is made, where the outcomes of an example differ in it. */
const SPACES = {
  decibels: 'made in decibels',
  watts: 'made in watts',
  reflections: 'made in reflections, and turned into a ratio at the end',
} as const satisfies Readonly<Record<NonNullable<Outcome['space']>, string>>;

/** In what an outcome is made; nothing where that is said of the whole example. */
export const madeIn = ({ space }: Pick<Outcome, 'space'>): string | undefined => space && SPACES[space];

/** The name of an outcome, and in what it is made where that is its own. */
export function outcomeName(outcome: Pick<Outcome, 'name' | 'space'>): string {
  const made = madeIn(outcome);
  return made === undefined ? outcome.name : `${outcome.name} (${made})`;
}
