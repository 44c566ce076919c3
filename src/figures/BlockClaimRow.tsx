import { RowWords } from './BlockLaneRow.tsx';
import type { BlockMeasures } from './block-stack.frame.ts';
import type { ClaimDrawing } from './block-stack.types.ts';

/** The difference of both sides: strip, end marks and curve for what is claimed, a dot for what is there. */
export function BlockClaimRow({ drawing, measures }: { drawing: ClaimDrawing; measures: BlockMeasures }) {
  const { claim, y, strip, marks, reach, curve, there } = drawing;
  const height = measures.barHeight / 2;
  return (
    <g>
      <RowWords {...claim} y={y} measures={measures} />
      {curve && <path class="band-curve-fill" d={curve.area} />}
      {curve && <path class="band-curve" d={curve.line} />}
      <path class="band-reach" d={reach} />
      <rect
        class="band-strip"
        x={strip.x}
        y={there.y - height / 2}
        width={Math.max(strip.width, 1)}
        height={height}
      />
      <path class={claim.limits.open ? 'band-mark band-open' : 'band-mark'} d={marks} />
      <circle class="plot-here" cx={there.x} cy={there.y} r={measures.dotRadius} />
    </g>
  );
}
