import { positive, roundUncertainty } from '#compute';

/** Nothing here needs more decimals than this; a vanishing uncertainty must not ask for a hundred zeros. */
const MOST_DECIMALS = 12;

/**
 * To how many decimals a number is written whose uncertainty is given: the place of the uncertainty's second significant
 * digit (GUM 7.2.6). 0.69 gives 2, 81.5 gives 0, 286 gives -1 (tens).
 * @throws RangeError unless uncertainty is finite and > 0.
 */
export function decimalsFor(uncertainty: number): number {
  const { place } = roundUncertainty({ uncertainty: positive('decimalsFor', 'uncertainty', uncertainty) });
  return Math.min(0 - (place ?? 0), MOST_DECIMALS);
}

/** The fewest decimals, up to `most`, that give a value back as it is: 7 needs none, 20.4 one, 0.125 three. For values as they were stated. */
export function fewestDecimals(value: number, most: number): number {
  for (let decimals = 0; decimals < most; decimals++)
    if (Number(value.toFixed(decimals)) === value) return decimals;
  return most;
}
