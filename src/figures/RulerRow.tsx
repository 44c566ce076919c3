import type { RulersMeasures } from './rulers.frame.ts';
import type { RulerDrawing } from './rulers.types.ts';

/** How much longer a landmark is than another division. */
const LANDMARK = 1.9;

/** One ruler: title, what is read off it, divisions, the band on it. */
export function RulerRow({ drawing, measures }: { drawing: RulerDrawing; measures: RulersMeasures }) {
  const { ruler, y, ticks, strip, ghost, middleX } = drawing;
  const axisY = y + measures.axisY;
  const top = axisY - measures.stripHeight;
  const stub = (rank: number): number => measures.tickLength * (rank === 0 ? LANDMARK : 1);
  const stubs = (wanted: (rank: number) => boolean): string =>
    ticks
      .filter(({ rank }) => wanted(rank))
      .map(({ x, rank }) => `M${x} ${axisY}v${-stub(rank)}`)
      .join('');
  return (
    <g>
      <text x={0} y={y + measures.titleY} class="band-label">
        {ruler.title}
      </text>
      <text
        x={measures.readingX}
        y={y + measures.readingY}
        class={`ruler-number anchor-${measures.readingAnchor}`}
      >
        {ruler.reading}
      </text>
      {strip && (
        <rect
          class="band-strip"
          x={strip.x}
          y={top}
          width={Math.max(strip.width, 1)}
          height={measures.stripHeight}
        />
      )}
      {ghost && (
        <rect
          class="band-ghost"
          x={ghost.x}
          y={top - 3}
          width={Math.max(ghost.width, 1)}
          height={measures.stripHeight + 6}
        />
      )}
      <path
        class="band-axis"
        d={`M${measures.axis[0]} ${axisY}H${measures.axis[1]}${stubs((rank) => rank > 0)}`}
      />
      <path class="ruler-landmark" d={stubs((rank) => rank === 0)} />
      {middleX !== undefined && <path class="ruler-middle" d={`M${middleX} ${top - 5}V${axisY + 5}`} />}
      {ticks.map(
        ({ at, x, text, named }) =>
          named && (
            <text key={at} x={x} y={axisY + measures.tickDrop} class="band-tick">
              {text}
            </text>
          ),
      )}
      {ruler.handle && strip && (
        <g
          data-handle={ruler.id}
          data-end={strip.x + strip.width}
          class="band-handle"
          transform={`translate(${strip.x + strip.width} ${top - measures.knobRadius - 3})`}
        >
          <circle class="band-grip" r={25} />
          <path class="band-stem" d={`M0 ${measures.knobRadius}v${measures.stripHeight}`} />
          <circle class="band-knob" r={measures.knobRadius} />
        </g>
      )}
    </g>
  );
}
