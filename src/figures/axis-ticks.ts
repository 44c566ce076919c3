/** Ratio of the ends from which round steps crowd one end: from there on 1, 2, 5 in each decade. */
const DECADES_FROM_RATIO = 8;

/** From these multiples of a power of ten on, in proportion, a step of the next one is nearer. */
const NEXT_STEP = [Math.sqrt(50), Math.sqrt(10), Math.sqrt(2)] as const;
const STEPS = [10, 5, 2] as const;

/** Round values between two ends, about so many: the same as the library's, whose way is for any ends and counts and so is longer. */
function ticks(lower: number, upper: number, count: number): number[] {
  const wish = (upper - lower) / count;
  const power = Math.floor(Math.log10(wish));
  const factor = STEPS[NEXT_STEP.findIndex((least) => wish / 10 ** power >= least)] ?? 1;
  // whole numbers are multiplied or divided: a step below 1 would not be exact
  const unit = power < 0 ? 10 ** -power / factor : 10 ** power * factor;
  const at = (index: number): number => (power < 0 ? index / unit : index * unit);
  const near = Math.round(power < 0 ? lower * unit : lower / unit);
  const values: number[] = [];
  for (let index = near + (at(near) < lower ? 1 : 0); at(index) <= upper; index++) values.push(at(index));
  return values;
}

/** Round positive values between two positive ends, for an axis that is even in decibels and so uneven in watts. */
export function powerTicks({
  lower,
  upper,
  count,
}: {
  lower: number;
  upper: number;
  count: number;
}): number[] {
  if (!(lower > 0 && upper > lower))
    throw new RangeError(`powerTicks: 0 < lower < upper, got ${lower}, ${upper}`);
  if (upper / lower < DECADES_FROM_RATIO) return ticks(lower, upper, count);
  const first = Math.floor(Math.log10(lower));
  const last = Math.ceil(Math.log10(upper));
  const steps = last - first > count ? [1] : last - first > count / 2 ? [1, 3] : [1, 2, 5];
  const values: number[] = [];
  for (let decade = first; decade <= last; decade++)
    for (const step of steps) values.push(Number(`${step}e${decade}`));
  return values.filter((value) => value >= lower && value <= upper);
}

/** Round levels between two ends. */
export const levelTicks = ({
  lower,
  upper,
  count,
}: {
  lower: number;
  upper: number;
  count: number;
}): number[] => ticks(lower, upper, count);

/** Says of each tick whether it is named: not where its text would touch the one named before it. */
export function spaced<T extends { readonly x: number }>(
  marks: readonly T[],
  least: number,
): (T & { readonly named: boolean })[] {
  let last = Number.NEGATIVE_INFINITY;
  return marks.map((mark) => {
    const named = mark.x - last >= least;
    if (named) last = mark.x;
    return { ...mark, named };
  });
}

/** Decimals that tell neighbouring ticks apart, 0 to 4. */
export function tickDecimals(values: readonly number[]): number {
  const [first, second] = values;
  if (first === undefined || second === undefined) return 1;
  return Math.min(4, Math.max(0, -Math.floor(Math.log10(Math.abs(second - first)) + 1e-9)));
}
