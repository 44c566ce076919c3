import { type LineBandProps, spanFor } from '../../figures/line-band.layout.ts';
import { type HeatUse, heatResult, offDb } from '../../sheet/dc-heat.ts';
import type { FieldsState } from '../parts/fields.ts';
import { type HeatFields, heatOf, heatSpec } from './spec.ts';

const { max } = heatSpec.fields.waitedRf;
/** Half a minute from point to point: the line bends most at its beginning. */
const STEP = 0.5;
/** The axis holds this many widths of the band, or a decibel. */
const WIDTHS = 3;

const spanOf = (use: HeatUse): number =>
  spanFor(Math.max(0.8, WIDTHS * heatResult(use).propagation.expanded));

/** What a wait for RF leaves, over the minutes, as far as the axis holds it. */
function waitingLine(use: HeatUse, span: number) {
  const minutes = Array.from({ length: max / STEP }, (_, index) => (index + 1) * STEP);
  return minutes
    .map((x) => ({ x, y: offDb({ ...use, waitedRf: x }) }))
    .filter(({ y }) => Math.abs(y) <= span);
}

/** The figure's data of a state: how far the result is off by what was not waited for, about the band that is claimed. */
export function figureOf({ values, held }: FieldsState<HeatFields>): Omit<LineBandProps, 'frame'> {
  const use = heatOf(values);
  const span = spanOf(heatOf(held ?? values));
  const { expanded } = heatResult(use).propagation;
  const y = offDb(use);
  return {
    domain: { lower: 0, upper: max },
    span,
    line: waitingLine(use, span),
    band: [0, max].map((x) => ({ x, lower: -Math.min(expanded, span), upper: Math.min(expanded, span) })),
    at: { x: use.waitedRf, y: Math.max(-span, Math.min(span, y)) },
  };
}
