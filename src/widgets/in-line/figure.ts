import { percentOfPowerToDb } from '#compute';
import { type BandPoint, type LineBandProps, spanFor } from '../../figures/line-band.layout.ts';
import { type InLineUse, scaleLimitsDb } from '../../sheet/in-line-meter.ts';
import type { FieldsState } from '../parts/fields.ts';
import { type InLineFields, inLineOf } from './spec.ts';

/** Places along the scale at which the limits are computed; they bend most at its foot. */
const PLACES = 120;

/** From where the limits can be stood behind to the end of the scale. */
function limitsAlong(use: InLineUse): readonly BandPoint[] {
  const { fullScaleW, percentOfFullScale } = use;
  const from = Math.min(1, (3 * percentOfFullScale) / 100);
  return Array.from({ length: PLACES + 1 }, (_, index) => {
    const x = fullScaleW * Math.max(0.001, from + ((1 - from) * index) / PLACES);
    const found = scaleLimitsDb(use, x);
    return found ? [{ x, ...found }] : [];
  }).flat();
}

/** The same percentage, taken for one of the reading. */
function asOfReading({ fullScaleW, percentOfFullScale }: InLineUse): readonly BandPoint[] {
  const lower = percentOfPowerToDb(-percentOfFullScale);
  const upper = percentOfPowerToDb(percentOfFullScale);
  return [0, fullScaleW].map((x) => ({ x, lower, upper }));
}

const farthest = (use: InLineUse): number =>
  Math.max(0, ...limitsAlong(use).map(({ lower, upper }) => Math.max(-lower, upper)));

/** The figure's data of a state: limits of a forward reading over the scale, and what they are taken for. */
export function figureOf({ values, held }: FieldsState<InLineFields>): Omit<LineBandProps, 'frame'> {
  const use = inLineOf(values);
  const { fullScaleW, forwardW } = use;
  return {
    domain: { lower: 0, upper: fullScaleW },
    span: spanFor(farthest(inLineOf(held ?? values))),
    line: [0, fullScaleW].map((x) => ({ x, y: 0 })),
    band: limitsAlong(use),
    ghost: asOfReading(use),
    at: { x: Math.min(forwardW, fullScaleW), y: 0 },
  };
}
