import type { MethodUnit, Statement } from '#compute';
import { shareText } from './probability-text.ts';
import { numberText, quantityText } from './quantity-text.ts';
import { type Style, signsOf } from './style.ts';
import type { UnitName } from './units.ts';

/** Nobody states a link's limits to more decimals than this, but in a unit that is large for them. */
const MOST_DECIMALS = 4;

const UNITS: Readonly<Record<MethodUnit, UnitName>> = {
  dB: 'dB',
  percentOfPower: 'percent',
  percentOfVolts: 'percent',
  percentOfResistance: 'percent',
  percentOfDcVolts: 'percent',
  percentOfDcAmperes: 'percent',
  voltsPeakToPeak: 'Vpp',
  volts: 'V',
  dcVolts: 'V',
  dcAmperes: 'A',
  kelvinRf: 'K',
  kelvinDc: 'K',
};
/** What a percentage is of, and what a number of volts or kelvins is of where that is not plain. */
const OF: Readonly<Partial<Record<MethodUnit, string>>> = {
  percentOfPower: ' of power',
  percentOfVolts: ' of volts',
  percentOfResistance: ' of resistance',
  percentOfDcVolts: ' of DC volts',
  percentOfDcAmperes: ' of current',
  dcVolts: ' DC',
  kelvinRf: ' with RF',
  kelvinDc: ' with DC',
};

/**
 * Decimals with which an amount was stated, one to four: 1 of 0.5 and of 3, 3 of 0.125. More where four would leave less than two digits
 * of it: 5 of 0.00002, which are amperes of a meter that shows milliamperes.
 */
export function statedDecimals(amount: number): number {
  const most = Math.max(MOST_DECIMALS, Math.ceil(1 - Math.log10(Math.abs(amount) || 1)));
  for (let decimals = 1; decimals < most; decimals++)
    if (Math.abs(Number(amount.toFixed(decimals)) - amount) < 1e-9) return decimals;
  return most;
}

/** An amount as somebody would type it, in ASCII and without padding: `0.5`, `0.125`. */
export const amountText = (amount: number): string =>
  numberText('ascii', { value: amount, decimals: statedDecimals(amount) });

/**
 * What a document states, in a few words: `±0.25 dB, limits`; `U 0.06 dB, k = 2`; `±0.16 dB, U-shaped`.
 * @throws RangeError unless every number of the statement is finite.
 */
export function statementText(
  style: Style,
  { statement, unit }: { statement: Statement; unit: MethodUnit },
): string {
  const amount = (value: number): string =>
    `${quantityText(style, { value, decimals: statedDecimals(value), unit: UNITS[unit] })}${OF[unit] ?? ''}`;
  const even = (value: number): string => `${signsOf(style).plusMinus}${amount(value)}`;
  const number = (value: number): string => numberText(style, { value, decimals: statedDecimals(value) });
  switch (statement.form) {
    case 'limits':
      return `${even(statement.halfWidth)}, ${SHAPE_WORDS[statement.shape]}`;
    case 'trapezoid':
      return `${even(statement.halfWidth)}, trapezoid`;
    case 'uncertainLimits':
      return `${even(statement.halfWidth)}, limits known to ${even(statement.limitHalfWidth)}`;
    case 'asymmetric':
      return `${number(statement.lower)} to ${amount(statement.upper)}, limits`;
    case 'expanded':
      return `U ${amount(statement.expanded)}, k = ${plain(style, statement.coverageFactor)}`;
    case 'coverage':
      return `U ${amount(statement.expanded)}, ${shareText(style, statement.probability)}`;
    case 'standard':
      return `u ${amount(statement.standardUncertainty)}`;
    case 'readings':
      return `s ${amount(statement.standardDeviation)}, ${statement.count} readings`;
    case 'displayStep':
      return `display step ${amount(statement.step)}`;
    case 'halfWithin':
      return `half within ${even(statement.halfWidth)}`;
  }
}

const SHAPE_WORDS = {
  rectangular: 'limits',
  triangular: 'limits, middle likelier',
  arcsine: 'U-shaped',
} as const;

const plain = (style: Style, value: number): string =>
  numberText(style, { value, decimals: value % 1 === 0 ? 0 : 2 });

/** Shape of the distribution that a statement stands for, in words. */
export function distributionText(statement: Statement): string {
  switch (statement.form) {
    case 'limits':
      return { rectangular: 'rectangular', triangular: 'triangular', arcsine: 'arcsine (U-shaped)' }[
        statement.shape
      ];
    case 'trapezoid':
      return 'trapezoidal';
    case 'uncertainLimits':
      return 'curvilinear trapezoid';
    case 'asymmetric':
    case 'displayStep':
      return 'rectangular';
    case 'readings':
      return 'Student t';
    case 'expanded':
    case 'coverage':
    case 'standard':
      return statement.degreesOfFreedom === undefined ? 'normal' : 'Student t';
    case 'halfWithin':
      return 'normal';
  }
}
