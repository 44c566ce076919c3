import type { BlockStackProps } from '../../figures/block-stack.layout.ts';
import { blockSpanFor } from '../../figures/block-stack.layout.ts';
import type { BlockLane } from '../../figures/block-stack.types.ts';
import type { WholeClaim } from '../../sheet/evaluated-blocks.ts';
import {
  type Comparison,
  claimOf,
  differenceUm,
  endsOf,
  lengthsOf,
  NOMINAL_MM,
} from '../../sheet/gauge-blocks.ts';
import type { FieldsState } from '../parts/fields.ts';
import { type BlocksFields, type BlocksState, blocksSpec, comparisonOf } from './spec.ts';
import { claimLabels, laneLabels } from './words.ts';

/** How far anything of a comparison reaches from nothing, in micrometres. */
function reachOf(of: Comparison): number {
  const { stack, single } = endsOf(of);
  const { worstCase, propagation } = claimOf(of);
  const sides = [stack, single].flatMap(({ end, cold }) => [end, cold]);
  const claimed = [worstCase, propagation].flatMap(({ interval: { lower, upper } }) => [lower, upper]);
  return Math.max(...[...sides, ...claimed, differenceUm(of)].map(Math.abs));
}

/** A change closer than this, in micrometres, would only blur the end. */
const GHOST_LEAST_UM = 0.005;

/** The figure's data of a state, with the whole distribution where it is at hand; the axis stays while a handle is held. */
export function figureOf(
  { values, before, held }: FieldsState<BlocksFields>,
  whole?: WholeClaim,
): Omit<BlockStackProps, 'frame'> {
  const of = comparisonOf(values);
  const ends = endsOf(of);
  const past = before && endsOf(comparisonOf(before));
  const { worstCase, propagation } = claimOf(of);
  const lane = (id: BlockLane['id'], lengthsMm: readonly number[]): BlockLane => ({
    id,
    ...laneLabels(values, id),
    lengthsMm,
    ...ends[id],
    ...(past && Math.abs(past[id].end - ends[id].end) > GHOST_LEAST_UM && { ghost: past[id].end }),
  });
  return {
    span: blockSpanFor(reachOf(comparisonOf(held ?? values))),
    lanes: [lane('stack', lengthsOf(values.count)), lane('single', [NOMINAL_MM])],
    claim: {
      ...claimLabels(values),
      there: differenceUm(of),
      strip: propagation.interval,
      limits: { ...worstCase.interval, open: worstCase.unlimited.length > 0 },
      curve: whole?.curve ?? [],
    },
  };
}

const UM_PER_MM_PPM = 1e-3;

/** Which field, and how much in it, makes an end reach so far: a side is pulled by warming it. Undefined where it does not grow. */
export function warmthFor(
  state: BlocksState,
  id: string,
  endUm: number,
): { readonly name: keyof BlocksFields; readonly value: number } | undefined {
  if (id !== 'stack' && id !== 'single') return undefined;
  const { [id]: side } = endsOf(comparisonOf(state));
  const [ppm, name] =
    id === 'stack' ? [state.stackPpm, 'stackC' as const] : [state.singlePpm, 'singleC' as const];
  if (ppm === 0) return undefined;
  const perKelvin = ppm * NOMINAL_MM * UM_PER_MM_PPM;
  const { min, max } = blocksSpec.fields[name];
  return { name, value: Math.min(max, Math.max(min, 20 + (endUm - side.cold) / perKelvin)) };
}
