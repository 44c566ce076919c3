import { constant } from './distribution/constant.ts';
import type { Distribution } from './distribution/distribution.ts';
import { transformed } from './distribution/transformed.ts';
import type { Input } from './model.ts';
import { rangeError } from './quantity.ts';
import type { PercentOf, Statement, StatementUnit } from './statement.ts';
import { type StatedShape, shapeOf } from './statement-shape.ts';

/**
 * Unit of a statement: decibels, a percentage that becomes decibels of power (of the power, of volts across a fixed
 * resistance, or of the resistance that a fixed voltage stands on), or the model's `own` unit (volts, kelvin, micrometres).
 */
export type ComponentUnit = StatementUnit | 'percentOfResistance' | 'own';

/** Decibels of power per unit of ln(1 + relative change). Power goes as 1/R. */
const DB_PER_LN = {
  percentOfPower: 10 / Math.LN10,
  percentOfVolts: 20 / Math.LN10,
  percentOfResistance: -10 / Math.LN10,
} as const;

/** Share of an unlimited shape that may lie below -100 %, where no decibel exists; the shape is taken on condition of the rest. */
const MOST_BELOW = 1e-3;

/**
 * Degrees of freedom of a standard uncertainty that is itself judged reliable to a fraction r: r^-2 / 2.
 * A quarter gives 8, a half 2, a tenth 50. @param reliability above 0. @throws RangeError otherwise.
 * Source: GUM G.4.2, formula (G.3).
 */
export function degreesFromReliability(reliability: number): number {
  if (!(Number.isFinite(reliability) && reliability > 0))
    throw rangeError({ where: 'degreesFromReliability', wish: 'reliability must be > 0', got: reliability });
  return 0.5 / reliability ** 2;
}

/**
 * A relative deviation in percent as a deviation of the true level from the reading, in dB, by transforming its shape.
 * Of the reading: truth = reading x (1 + e). Of the true value: reading = truth x (1 + e), so that the sign turns.
 */
function inDecibels(shape: Distribution, dbPerLn: number, percentOf: PercentOf): Distribution {
  const limited = Number.isFinite(shape.limits.lower);
  if (limited ? shape.limits.lower <= -100 : shape.shareBelow(-100) > MOST_BELOW)
    throw rangeError({
      where: 'componentOf',
      wish: 'what is stated in percent must stay above -100',
      got: limited ? shape.limits.lower : shape.quantile(MOST_BELOW),
    });
  const factor = percentOf === 'reading' ? dbPerLn : -dbPerLn;
  const forward = (percent: number) => factor * Math.log1p(percent / 100);
  // A constant, or limits so close that a double holds no decibels between them.
  if (forward(shape.limits.lower) === forward(shape.limits.upper))
    return constant(forward(shape.limits.lower));
  return transformed({
    of: shape,
    forward,
    inverse: (db) => 100 * Math.expm1(db / factor),
    slope: (percent) => factor / (100 + percent),
    domain: { lower: -100, upper: Number.POSITIVE_INFINITY },
  });
}

function inModelUnit(stated: StatedShape, unit: ComponentUnit, percentOf: PercentOf): StatedShape {
  if (unit === 'dB' || unit === 'own') return stated;
  const factor = DB_PER_LN[unit];
  const { standardUncertainty } = stated;
  return {
    ...stated,
    distribution: inDecibels(stated.distribution, factor, percentOf),
    // A t counts with its scale, not its standard deviation: the slope at zero turns it, good to second order.
    ...(standardUncertainty === undefined
      ? {}
      : { standardUncertainty: (Math.abs(factor) * standardUncertainty) / 100 }),
  };
}

function degreesOf(statement: Statement, stated: StatedShape, reliability: number | undefined): number {
  if (reliability === undefined) return stated.degreesOfFreedom;
  if (statement.form === 'readings' || Number.isFinite(stated.degreesOfFreedom))
    throw rangeError({
      where: 'componentOf',
      wish: 'reliability must be left out where the statement brings its degrees of freedom',
      got: reliability,
    });
  return degreesFromReliability(reliability);
}

/**
 * What a data sheet or certificate states about one part, as an input of a model: the deviation that it brings, in dB
 * (or in the model's own unit), with its shape, degrees of freedom and shared cause.
 * A percentage is turned into dB by transforming its distribution: 3 % of volts reaches from -0.265 to +0.257 dB if it is
 * 3 % of the reading, from -0.257 to +0.265 dB if it is 3 % of the true value.
 * @param percentOf what a percentage is a percentage of; 'reading' if not said.
 * @param cause name of a cause that other inputs share.
 * @param reliability fraction to which a judged statement is itself known; makes its degrees of freedom finite.
 * @throws RangeError for a number out of range, a percentage whose limits reach -100 %, or two sources of degrees of freedom.
 * Sources: GUM 4.2, 4.3, F.2.3.3, G.4.2; JCGM 101, 6.4.
 */
export function componentOf({
  id,
  statement,
  unit,
  percentOf = 'reading',
  cause,
  reliability,
}: {
  id: string;
  statement: Statement;
  unit: ComponentUnit;
  percentOf?: PercentOf | undefined;
  cause?: string | undefined;
  reliability?: number | undefined;
}): Input {
  const stated = shapeOf(statement);
  return {
    id,
    ...inModelUnit(stated, unit, percentOf),
    degreesOfFreedom: degreesOf(statement, stated, reliability),
    ...(cause === undefined ? {} : { cause }),
  };
}
