import { type TraceProps, type TraceValues, voltsSpan, wattsSpan } from '../../figures/trace.layout.ts';
import { traceSums } from '../../sheet/trace.ts';
import { slipOutcome } from '../../sheet/trace-slips.ts';
import type { FieldsState } from '../parts/fields.ts';
import { type TraceFields, type TraceState, traceOf } from './spec.ts';

/** What the figure draws of a state. */
function valuesOf(state: TraceState): TraceValues {
  const { peak, rms, averageV, power, greatestW } = traceSums(traceOf(state));
  return { wave: state.wave, peak, rms, average: averageV, meanW: power, greatestW };
}

const slippedOf = (state: TraceState): number | undefined =>
  state.slip === 'none' ? undefined : slipOutcome(state.slip, traceOf(state)).power;

/** The figure's data of a state; its axes stay while a handle is held. */
export function figureOf({ values, before, held }: FieldsState<TraceFields>): Omit<TraceProps, 'frame'> {
  const drawn = valuesOf(values);
  const ghost = before && valuesOf(before);
  const ground = held ?? values;
  const axes = valuesOf(ground);
  const slippedW = slippedOf(values);
  const peaks = [axes.peak, ...(ghost ? [ghost.peak] : [])];
  return {
    values: drawn,
    before: ghost,
    spanV: voltsSpan(peaks),
    spanW: wattsSpan([axes.greatestW, slippedOf(ground) ?? 0]),
    slippedW,
  };
}
