import { rangeError } from '#compute';

/** Where a number is drawn from: each value of the list is as likely as another. */
export type Range = readonly number[];
export type Ranges = Readonly<Record<string, Range>>;

/** Numbers with the names of their ranges. */
export type Drawn<R extends Ranges> = { readonly [Name in keyof R]: number };

/** One of a few round values. */
export const oneOf = (...values: readonly number[]): Range => values;

/** `from`, `from + step` and so on up to `to`, each as it would be typed. @throws RangeError unless step > 0 and to > from. */
export function steps(from: number, to: number, step: number): Range {
  if (!(step > 0 && to > from))
    throw rangeError({
      where: 'steps',
      wish: 'step must be > 0 and to above from',
      got: `${from}, ${to}, ${step}`,
    });
  const count = Math.floor((to - from) / step + 1e-9) + 1;
  return Array.from({ length: count }, (_, k) => Number((from + k * step).toPrecision(12)));
}

/** A number for each range. */
export function drawFrom<R extends Ranges>(ranges: R, random: () => number): Drawn<R> {
  const entries = Object.entries(ranges).map(([name, range]) => {
    const value = range[Math.floor(random() * range.length)];
    if (value === undefined)
      throw rangeError({ where: 'drawFrom', wish: `${name} must hold a value`, got: [] });
    return [name, value] as const;
  });
  return Object.fromEntries(entries) as Drawn<R>;
}

/** The values in an order of chance (Fisher and Yates). */
export function shuffled<Value>(values: readonly Value[], random: () => number): readonly Value[] {
  const left = [...values];
  return values.map(() => left.splice(Math.floor(random() * left.length), 1)[0] as Value);
}
