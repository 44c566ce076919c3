import type { Interval } from '#compute';
import { levelAxis, powerAxis } from './level-axis.ts';
import { coordinate, type LinearScale, linearScale } from './linear-scale.ts';
import { type BandMeasures, measuresOf } from './reading-band.frame.ts';
import { drawRow } from './reading-band.row.ts';
import type { BandDrawing, BandProps } from './reading-band.types.ts';

/** Round half-spans of the axis, so that small changes do not rescale the figure. */
const HALF_SPANS_DB = [0.1, 0.2, 0.3, 0.5, 0.75, 1, 1.5, 2, 3, 4, 6, 8, 12, 16, 24, 32, 48] as const;
/** Room left at both sides of the widest band. */
const AXIS_MARGIN = 1.12;

/** The smallest round half-span that holds everything within +-reachDb of the centre. */
export function halfSpanFor(reachDb: number): number {
  const wish = reachDb * AXIS_MARGIN;
  return HALF_SPANS_DB.find((span) => span >= wish) ?? Math.ceil(wish / 10) * 10;
}

/** From level to coordinate and back. @throws RangeError if the half-span is not above zero. */
export const bandScale = (
  { centreDbm, halfSpanDb }: Pick<BandProps, 'centreDbm' | 'halfSpanDb'>,
  { axis }: Pick<BandMeasures, 'axis'>,
): LinearScale => linearScale({ domain: [centreDbm - halfSpanDb, centreDbm + halfSpanDb], range: axis });

/**
 * All coordinates of the figure, in the measures of its frame or, for a place that no page has, in others.
 * @throws RangeError if the half-span is not above zero.
 */
export function readingBandLayout(
  props: BandProps,
  measures: BandMeasures = measuresOf(props.frame),
): BandDrawing {
  const lower = props.centreDbm - props.halfSpanDb;
  const upper = props.centreDbm + props.halfSpanDb;
  const scale = bandScale(props, measures);
  const within = { lower, upper };
  const { tickCount, tickRoom } = measures;
  const axis = { within, scale, tickCount, tickRoom };
  const rows = props.rows.map((row, index) =>
    drawRow({ row, y: measures.head + index * measures.rowPitch, measures, scale, within }),
  );
  const height = measures.head + rows.length * measures.rowPitch + measures.foot;
  return {
    measures,
    width: measures.width,
    height,
    axisTop: measures.head - 8,
    axisBottom: height - measures.foot + 6,
    centreX: coordinate(scale(props.centreDbm)),
    rows,
    levels: levelAxis(axis),
    powers: powerAxis(axis),
    specification: specificationLines(props.specification, scale, within),
    scale,
  };
}

function specificationLines(specification: Interval | undefined, scale: LinearScale, within: Interval) {
  const at = (level: number): number | undefined =>
    level >= within.lower && level <= within.upper ? coordinate(scale(level)) : undefined;
  const lower = specification && at(specification.lower);
  const upper = specification && at(specification.upper);
  return { ...(lower !== undefined && { lower }), ...(upper !== undefined && { upper }) };
}
