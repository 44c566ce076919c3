import { type LineBandProps, spanFor } from '../../figures/line-band.layout.ts';
import { borrowedLine, correctionFor, isCompared, placesOf, readingsAlone } from '../../sheet/borrowed.ts';
import {
  thermometerAt,
  thermometerLine,
  thermometerPoints,
  withoutCovariance,
} from '../../sheet/thermometer.ts';
import type { FieldsState } from '../parts/fields.ts';
import { type BorrowedFields, type BorrowedState, borrowedOf, borrowedSpec } from './spec.ts';

type Figure = Omit<LineBandProps, 'frame'>;

/** Places at which the bands are computed. */
const STEPS = 24;

const places = ({ lower, upper }: { lower: number; upper: number }): readonly number[] =>
  Array.from({ length: STEPS + 1 }, (_, index) => lower + ((upper - lower) * index) / STEPS);

const { fields } = borrowedSpec;

/** The line of the club's meter, with the lender in its band and, as an outline, without. */
function meterFigure(state: BorrowedState): Figure {
  const { range } = borrowedLine();
  const of = borrowedOf(state);
  const along = places(range);
  const at = (readingDbm: number) => ({ ...of, readingDbm });
  const bandOf = (result: typeof correctionFor) =>
    along.map((x) => {
      const { estimate, expanded } = result(at(x));
      return { x, lower: estimate - expanded, upper: estimate + expanded };
    });
  const band = bandOf(correctionFor);
  return {
    domain: { lower: fields.reading.min, upper: fields.reading.max },
    span: spanFor(Math.max(...band.flatMap(({ lower, upper }) => [-lower, upper]))),
    line: along.map((x) => ({ x, y: readingsAlone(at(x)).estimate })),
    band,
    ghost: bandOf(readingsAlone),
    points: placesOf().map((place) => ({
      x: place.at,
      y: place.correction,
      half: 2 * place.ownUncertainty,
    })),
    at: {
      x: of.readingDbm,
      y: isCompared(of.readingDbm) ? correctionFor(of).estimate : undefined,
    },
  };
}

/** From what the corrections of the thermometer are drawn, in degrees, so that their scatter shows; and how many times as large. */
const THERMOMETER_ZERO = -0.16;
const MILLI = 1000;

/** The GUM's thermometer: its line with U (k = 2), and as an outline what comes of leaving the covariance out. */
function thermometerFigure({ temperature, origin }: BorrowedState): Figure {
  const { min: lower, max: upper } = fields.temperature;
  const y = (correction: number): number => MILLI * (correction - THERMOMETER_ZERO);
  const along = places({ lower, upper });
  const bandOf = (u: (x: number) => number) =>
    along.map((x) => {
      const middle = y(thermometerAt(x, origin).value);
      return { x, lower: middle - 2 * MILLI * u(x), upper: middle + 2 * MILLI * u(x) };
    });
  const band = bandOf((x) => thermometerAt(x, origin).standardUncertainty);
  const ghost = bandOf((x) => withoutCovariance(x, origin));
  const { residualDeviation } = thermometerLine(origin);
  return {
    domain: { lower, upper },
    span: spanFor(Math.max(...[...band, ...ghost].flatMap((point) => [-point.lower, point.upper]))),
    line: along.map((x) => ({ x, y: y(thermometerAt(x, origin).value) })),
    band,
    ghost,
    points: thermometerPoints().map((point) => ({
      x: point.x,
      y: y(point.y),
      half: 2 * MILLI * residualDeviation,
    })),
    at: { x: temperature, y: y(thermometerAt(temperature, origin).value) },
  };
}

/** The figure's data of a state; the axis stays while the knob is held. */
export function figureOf({ values, held }: FieldsState<BorrowedFields>): Figure {
  const draw = values.item === 'meter' ? meterFigure : thermometerFigure;
  const figure = draw(values);
  return held && held.item === values.item ? { ...figure, span: draw(held).span } : figure;
}
