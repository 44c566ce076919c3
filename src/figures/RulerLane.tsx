import type { RulersMeasures } from './rulers.frame.ts';
import type { LaneDrawing } from './rulers.types.ts';

/** Length of an arrow's head, and the shortest step that gets one. */
const HEAD = 6;
/** Height of the letters above their baseline, as a share of their size, from the middle of a lane. */
const RISE = 0.36;

/** One lane above the rulers: steps as arrows end to end, or a point, with words beside it. */
export function RulerLane({ drawing, measures }: { drawing: LaneDrawing; measures: RulersMeasures }) {
  const { lane, y, xs, text } = drawing;
  const point = xs.length === 1 ? xs[0] : undefined;
  return (
    <g>
      {point === undefined ? <path class="ruler-step" d={arrows(xs, y)} /> : null}
      <text x={text.x} y={y + RISE * measures.fontSize} class={`ruler-words anchor-${text.anchor}`}>
        {lane.label}
      </text>
      {point !== undefined && lane.result && <path class="ruler-result" d={diamond(point, y)} />}
      {point !== undefined && !lane.result && (
        <g
          {...(lane.handle && { 'data-handle': lane.id, 'data-end': point })}
          class={lane.handle ? 'band-handle ruler-point' : 'ruler-point'}
          transform={`translate(${point} ${y})`}
        >
          {lane.handle && <circle class="band-grip" r={measures.lanePitch / 2} />}
          <circle class="band-knob" r={measures.knobRadius} />
        </g>
      )}
    </g>
  );
}

const diamond = (x: number, y: number): string => `M${x - 8} ${y}l8 -8l8 8l-8 8z`;

/** Arrows from stop to stop, each with a short bar where it starts. */
function arrows(xs: readonly number[], y: number): string {
  return xs
    .slice(1)
    .map((to, index) => {
      const from = xs[index] ?? to;
      if (to === from) return '';
      const line = `M${from} ${y - 4}v8M${from} ${y}H${to}`;
      if (Math.abs(to - from) <= HEAD) return line;
      const back = to > from ? -HEAD : HEAD;
      return `${line}m${back} -4L${to} ${y}l${back} 4`;
    })
    .join('');
}
