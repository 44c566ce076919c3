import { arcsine } from './distribution/arcsine.ts';
import { constant } from './distribution/constant.ts';
import { curvilinear } from './distribution/curvilinear.ts';
import type { Distribution } from './distribution/distribution.ts';
import { normal } from './distribution/normal.ts';
import { rectangular } from './distribution/rectangular.ts';
import { student } from './distribution/student.ts';
import { trapezoidal } from './distribution/trapezoidal.ts';
import { triangular } from './distribution/triangular.ts';
import { finite, notNegative, positive, rangeError } from './quantity.ts';
import { normalQuantile } from './special/normal.ts';
import { studentQuantile } from './special/student.ts';
import type { Statement } from './statement.ts';

/** What a statement amounts to, in its own unit. */
export interface StatedShape {
  readonly distribution: Distribution;
  /** Where the budget counts another one than the shape's standard deviation: for a Student t its scale. */
  readonly standardUncertainty?: number;
  readonly degreesOfFreedom: number;
}

const HERE = 'componentOf';

const known = (distribution: Distribution): StatedShape => ({
  distribution,
  degreesOfFreedom: Number.POSITIVE_INFINITY,
});

/** Normal with degrees of freedom unstated or infinite, otherwise the t of JCGM 101, 6.4.9.7. */
function bell(standardUncertainty: number, degreesOfFreedom = Number.POSITIVE_INFINITY): StatedShape {
  if (!(degreesOfFreedom > 0))
    throw rangeError({ where: HERE, wish: 'degreesOfFreedom must be > 0', got: degreesOfFreedom });
  if (standardUncertainty === 0) return { distribution: constant(0), degreesOfFreedom };
  if (degreesOfFreedom === Number.POSITIVE_INFINITY)
    return known(normal({ mean: 0, standardDeviation: standardUncertainty }));
  const distribution = student({ location: 0, scale: standardUncertainty, degreesOfFreedom });
  return { distribution, standardUncertainty, degreesOfFreedom };
}

/** A bounded shape between lower and upper; a constant where they meet. */
function between(
  { lower, upper }: { lower: number; upper: number },
  shape: (limits: { lower: number; upper: number }) => Distribution,
): StatedShape {
  finite(HERE, 'lower', lower);
  finite(HERE, 'upper', upper);
  return known(lower === upper ? constant(lower) : shape({ lower, upper }));
}

const within = (halfWidth: number, shape: (limits: { lower: number; upper: number }) => Distribution) => {
  notNegative(HERE, 'halfWidth', halfWidth);
  return between({ lower: -halfWidth, upper: halfWidth }, shape);
};

const LIMIT_SHAPES = {
  rectangular,
  triangular,
  arcsine: ({ upper }: { upper: number }) => arcsine({ centre: 0, halfWidth: upper }),
} as const;

function fromReadings(standardDeviation: number, count: number): StatedShape {
  notNegative(HERE, 'standardDeviation', standardDeviation);
  // One reading says nothing of its own scatter: a pooled or stated repeatability is a `standard` statement.
  if (!(Number.isInteger(count) && count >= 2))
    throw rangeError({ where: HERE, wish: 'count must be a whole number >= 2', got: count });
  return bell(standardDeviation / Math.sqrt(count), count - 1);
}

function fromCoverage({ expanded, probability, degreesOfFreedom }: Statement & { form: 'coverage' }) {
  if (!(probability > 0 && probability < 1))
    throw rangeError({ where: HERE, wish: 'probability must be above 0 and below 1', got: probability });
  const k = -studentQuantile({
    share: (1 - probability) / 2,
    degreesOfFreedom: degreesOfFreedom ?? Number.POSITIVE_INFINITY,
  });
  return bell(notNegative(HERE, 'expanded', expanded) / k, degreesOfFreedom);
}

/**
 * The distribution that a statement stands for, centred on 0 (an asymmetric one on its middle), with what the budget
 * counts. Sources: GUM 4.3 (limits, expanded uncertainty, half of the values), F.2.2.1 (display step); JCGM 101, 6.4.
 * @throws RangeError naming the number that is out of range.
 */
export function shapeOf(statement: Statement): StatedShape {
  switch (statement.form) {
    case 'limits':
      return within(statement.halfWidth, LIMIT_SHAPES[statement.shape]);
    case 'trapezoid':
      return within(statement.halfWidth, (limits) =>
        trapezoidal({ ...limits, topRatio: statement.topRatio }),
      );
    case 'uncertainLimits':
      return within(statement.halfWidth, (limits) =>
        notNegative(HERE, 'limitHalfWidth', statement.limitHalfWidth) === 0
          ? rectangular(limits)
          : curvilinear({ ...limits, limitHalfWidth: statement.limitHalfWidth }),
      );
    case 'asymmetric':
      return between(statement, rectangular);
    case 'expanded':
      return bell(
        notNegative(HERE, 'expanded', statement.expanded) /
          positive(HERE, 'coverageFactor', statement.coverageFactor),
        statement.degreesOfFreedom,
      );
    case 'coverage':
      return fromCoverage(statement);
    case 'standard':
      return bell(
        notNegative(HERE, 'standardUncertainty', statement.standardUncertainty),
        statement.degreesOfFreedom,
      );
    case 'readings':
      return fromReadings(statement.standardDeviation, statement.count);
    case 'displayStep':
      return within(notNegative(HERE, 'step', statement.step) / 2, rectangular);
    case 'halfWithin':
      return bell(notNegative(HERE, 'halfWidth', statement.halfWidth) / normalQuantile(0.75));
  }
}
