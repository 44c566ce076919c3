import type { BlockMeasures } from './block-stack.frame.ts';
import type { LaneDrawing } from './block-stack.types.ts';
import { PullHandle } from './PullHandle.tsx';

interface RowProps {
  readonly drawing: LaneDrawing;
  readonly measures: BlockMeasures;
  /** What warmth is filled with. */
  readonly hatch: string;
  readonly handle: boolean;
}

/** One side: its blocks to scale, a break, and its magnified end. */
export function BlockLaneRow({ drawing, measures, hatch, handle }: RowProps) {
  const { lane, y, films, solid, warm, grown, endX, ghostX } = drawing;
  const { scaled, zone, barHeight } = measures;
  const middle = y + measures.barY;
  const top = middle - barHeight / 2;
  const bottom = top + barHeight;
  return (
    <g>
      <RowWords {...lane} y={y} measures={measures} />
      <rect class="plot-fill" x={scaled[0]} y={top} width={scaled[1] - scaled[0]} height={barHeight} />
      <rect class="plot-fill" x={solid.x} y={top} width={solid.width} height={barHeight} />
      <path
        class="plot-axis"
        d={`M${breakAt(scaled[1], top, bottom)}H${scaled[0]}V${top}ZM${breakAt(zone[0], top, bottom)}`}
      />
      <path class="plot-axis" d={`M${zone[0]} ${top}H${endX}V${bottom}H${zone[0]}`} />
      <path class="plot-limit" d={films.map((x) => `M${x} ${top}V${bottom}`).join('')} />
      {grown ? (
        <rect fill={hatch} x={warm.x} y={top} width={warm.width} height={barHeight} />
      ) : (
        <path class="plot-ghost" d={`M${endX} ${top}H${warm.x + warm.width}V${bottom}H${endX}`} />
      )}
      {ghostX !== undefined && <path class="plot-ghost" d={`M${ghostX} ${top - 5}V${bottom + 5}`} />}
      <path class="plot-limit" d={`M${endX} ${top - 3}V${bottom + 3}`} />
      {handle && <PullHandle id={lane.id} along="x" x={endX} y={middle} radius={measures.handleRadius} />}
    </g>
  );
}

/** The ragged edge of a broken bar, from its upper to its lower edge. */
function breakAt(x: number, top: number, bottom: number): string {
  const third = (bottom - top) / 3;
  return `${x} ${top}l5 ${third}l-10 ${third}L${x} ${bottom}`;
}

interface RowWordsProps {
  readonly label: string;
  readonly number: string;
  readonly detail: string;
  readonly y: number;
  readonly measures: BlockMeasures;
}

/** What a row is, its number, and a line on it. */
export function RowWords({ label, number, detail, y, measures }: RowWordsProps) {
  return (
    <>
      <text x={measures.scaled[0]} y={y + measures.labelY} class="plot-strong">
        {label}
      </text>
      <text x={measures.zone[1]} y={y + measures.labelY} class="plot-strong anchor-end">
        {number}
      </text>
      {measures.showDetail && (
        <text x={measures.scaled[0]} y={y + measures.detailY} class="plot-detail">
          {detail}
        </text>
      )}
    </>
  );
}
