import { dominantInputs, levelDbm, levelToPower, type Result } from '#compute';
import { deviationsText, plusMinusText } from '../deviation-text.ts';
import { intervalText } from '../interval-text.ts';
import { decimalsFor } from '../place.ts';
import { powerIntervalText, powerWithEndsText } from '../power-text.ts';
import { coverageText, shareText } from '../probability-text.ts';
import { numberText, quantityText } from '../quantity-text.ts';
import type { Style } from '../style.ts';
import type { UnitName } from '../units.ts';
import { notWholeWords } from '../words.ts';
import { joined, type Line, line } from './piece.ts';

/** Decimals where nothing is uncertain and nothing else sets the place. */
const EXACT_DECIMALS = 2;

/** A result with the unit of its estimate. */
export interface Stated {
  readonly result: Result;
  readonly unit: UnitName;
}

interface Ends {
  readonly lower: number;
  readonly upper: number;
}

/** Differences of levels are ratios. */
export const differenceUnit = (unit: UnitName): UnitName => (unit === 'dBm' || unit === 'dBW' ? 'dB' : unit);

/** The place to which everything of a result is written. */
export const decimalsOf = ({ result }: Stated): number => {
  const { expanded } = result.propagation;
  return expanded > 0 ? decimalsFor(expanded) : EXACT_DECIMALS;
};

const watts = (dbm: number): number => levelToPower(levelDbm(dbm));

/** Ends of an interval in the result's unit, and in watts as well where it is a level. */
export const endsText =
  (stated: Stated, { lower, upper }: Ends) =>
  (style: Style): string => {
    const { unit } = stated;
    if (unit === 'W') return powerIntervalText(style, { lowerW: lower, upperW: upper });
    const ends = intervalText(style, { lower, upper, decimals: decimalsOf(stated), unit });
    if (unit !== 'dBm') return ends;
    return `${ends}, ${powerIntervalText(style, { lowerW: watts(lower), upperW: watts(upper) })}`;
  };

/** `26.8 dBm ±2.5 dB`; watts never with one plus-minus: `1.05 W, 0.97 to 1.13`. */
function valueText(style: Style, stated: Stated): string {
  const { result, unit } = stated;
  const { expanded, interval } = result.propagation;
  if (unit === 'W')
    return powerWithEndsText(style, {
      powerW: result.estimate,
      lowerW: interval.lower,
      upperW: interval.upper,
    });
  const decimals = decimalsOf(stated);
  const value = quantityText(style, { value: result.estimate, decimals, unit });
  const half = plusMinusText(style, { halfWidth: expanded, decimals, unit: differenceUnit(unit) });
  return expanded > 0 ? `${value} ${half}` : value;
}

/** The result by propagation with k and coverage probability, in watts too where it is a level. */
export function resultLine(what: string, stated: Stated): Line {
  const { propagation, estimate } = stated.result;
  const {
    interval,
    coverageFactor: factor,
    coverageProbability: probability,
    degreesOfFreedom,
  } = propagation;
  const value = (style: Style) => valueText(style, stated);
  const freedom = Number.isFinite(degreesOfFreedom)
    ? [
        ', ',
        (style: Style) => numberText(style, { value: degreesOfFreedom, decimals: 0 }),
        Math.round(degreesOfFreedom) === 1 ? ' degree of freedom' : ' degrees of freedom',
      ]
    : [];
  const coverage = (style: Style) => coverageText(style, { factor, probability });
  const power = (style: Style) =>
    powerWithEndsText(style, {
      powerW: watts(estimate),
      lowerW: watts(interval.lower),
      upperW: watts(interval.upper),
    });
  const inWatts = stated.unit === 'dBm' ? ['; ', power] : [];
  if (propagation.expanded === 0)
    return line(
      'result',
      { foreign: what },
      ': ',
      value,
      ...inWatts,
      '. No uncertainty is stated: how sure it is stays open',
    );
  return line('result', { foreign: what }, ': ', value, ' (', coverage, ...freedom, ')', ...inWatts);
}

/** The coverage interval of the whole distribution, or why there is none. */
export function wholeLine(stated: Stated): Line {
  const { whole, propagation } = stated.result;
  if ('unavailable' in whole) return line('whole', notWholeWords[whole.unavailable]);
  const share = (style: Style) => shareText(style, propagation.coverageProbability);
  return line('whole', 'Whole distribution, ', share, ': ', endsText(stated, whole.symmetric));
}

/** Limits are even about an estimate if they are so to this, in the unit of the result: the rest is rounding. */
const EVEN_WITHIN = 1e-9;

/** Deviations and ends of a worst case. What is not even about the estimate says its centre: it is easily laid about the reading. */
function worstParts(stated: Stated): readonly (string | ((style: Style) => string))[] {
  const { worstCase, estimate } = stated.result;
  const { lower, upper } = worstCase.interval;
  const ends = endsText(stated, worstCase.interval);
  if (stated.unit === 'W') return [ends];
  const decimals = decimalsOf(stated);
  const deviations = (style: Style) =>
    deviationsText(style, {
      upper: upper - estimate,
      lower: lower - estimate,
      decimals,
      unit: differenceUnit(stated.unit),
    });
  const centre = (style: Style) => quantityText(style, { value: estimate, decimals, unit: stated.unit });
  const even = Math.abs(upper + lower - 2 * estimate) < EVEN_WITHIN;
  return [deviations, ...(even ? [] : [' about ', centre]), ', ', ends];
}

/** The worst case; where a part has no limit, that nothing is guaranteed, and which part it is. */
export function worstLine(stated: Stated, labelOf: (id: string) => string): Line {
  const { unlimited } = stated.result.worstCase;
  const value = worstParts(stated);
  if (unlimited.length === 0) return line('worst', 'Worst case ', ...value);
  const names = unlimited.map((id) => ({ foreign: labelOf(id) }));
  const last = names.length > 1 ? names.pop() : undefined;
  return line(
    'worst',
    'Worst case: nothing is guaranteed, since ',
    ...joined(names, ', '),
    ...(last === undefined ? [] : [' and ', last]),
    unlimited.length === 1 ? ' has' : ' have',
    ' no limit; the other parts alone come to ',
    ...value,
  );
}

/** The part that widens the result most, by its share of the variance; all of them where several are level. */
export function dominantLine({ result }: Stated, labelOf: (id: string) => string): Line | undefined {
  const ids = dominantInputs(result.propagation);
  const most = result.propagation.budget.find(({ id }) => id === ids[0]);
  if (most === undefined) return undefined;
  const share = (style: Style) =>
    quantityText(style, { value: 100 * most.share, decimals: 0, unit: 'percent' });
  const names = ids.map((id) => ({ foreign: labelOf(id) }));
  const last = names.length > 1 ? names.pop() : undefined;
  return line(
    'dominant',
    last === undefined ? 'Biggest part: ' : 'Biggest parts: ',
    ...joined(names, ', '),
    ...(last === undefined ? [] : [' and ', last]),
    ', ',
    share,
    last === undefined ? ' of the variance' : ' of the variance each',
  );
}
