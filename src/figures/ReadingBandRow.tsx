import { coordinate } from './linear-scale.ts';
import type { BandMeasures } from './reading-band.frame.ts';
import type { Bar, Magnifier, RowDrawing } from './reading-band.types.ts';

/** Half the height of an end mark beyond the strip. */
const MARK_REACH = 4;
/** How far the barbs of an open end mark point outwards. */
const BARB = 7;
/** Between the end of a strip and its knob, so that the end stays in sight. */
const KNOB_GAP = 1;
/** A pointer may take hold this far around the middle of a handle: 44 px across on the smallest screen. */
const GRIP_RADIUS = 24;

/** One rung: words, strip, end marks, curve, ghost, magnified copy and handle. */
export function ReadingBandRow({ drawing, measures }: { drawing: RowDrawing; measures: BandMeasures }) {
  const { row, y, bar, ghost, marks, curve, magnifier, handleX } = drawing;
  const middle = y + measures.stripY;
  const top = middle - measures.stripHeight / 2;
  return (
    <g>
      <Words drawing={drawing} measures={measures} />
      {curve && <path class="band-curve-fill" d={curve.area} />}
      {curve && <path class="band-curve" d={curve.line} />}
      {bar ? (
        <rect
          class="band-strip"
          x={bar.x}
          y={top}
          width={Math.max(bar.width, 1)}
          height={measures.stripHeight}
        />
      ) : (
        <path
          class="band-exact"
          d={`M${(measures.axis[0] + measures.axis[1]) / 2} ${top - 4}v${measures.stripHeight + 8}`}
        />
      )}
      {marks && bar && (
        <EndMarks marks={marks} bar={bar} middle={middle} reach={measures.stripHeight / 2 + MARK_REACH} />
      )}
      {ghost && (
        <rect
          class="band-ghost"
          x={ghost.x}
          y={top - 3}
          width={ghost.width}
          height={measures.stripHeight + 6}
        />
      )}
      {magnifier && (
        <Magnified
          magnifier={magnifier}
          bottom={top + measures.stripHeight}
          height={measures.stripHeight * 0.7}
        />
      )}
      {row.handle && handleX !== undefined && (
        <g
          data-handle={row.id}
          data-end={handleX}
          class="band-handle"
          transform={`translate(${coordinate(handleX + measures.handleRadius + KNOB_GAP)} ${middle})`}
        >
          <circle class="band-grip" r={GRIP_RADIUS} />
          <circle class="band-knob" r={measures.handleRadius} />
        </g>
      )}
    </g>
  );
}

function Words({ drawing, measures }: { drawing: RowDrawing; measures: BandMeasures }) {
  const { row, y } = drawing;
  return (
    <>
      <text
        x={measures.labelX}
        y={y + measures.labelY}
        class={row.dominant ? 'band-label band-dominant' : 'band-label'}
      >
        {row.label}
      </text>
      {measures.showDetail && (
        <text x={measures.labelX} y={y + measures.detailY} class="band-detail">
          {row.detail}
        </text>
      )}
      <text
        x={measures.numberX}
        y={y + measures.numberY}
        class={`band-number anchor-${measures.numberAnchor}`}
      >
        {row.number}
      </text>
    </>
  );
}

interface EndMarksProps {
  readonly marks: NonNullable<RowDrawing['marks']>;
  readonly bar: Bar;
  readonly middle: number;
  readonly reach: number;
}

/** Worst case: a bar at each end, or barbs pointing outwards where a part has no limit and the end guarantees nothing. */
function EndMarks({ marks, bar, middle, reach }: EndMarksProps) {
  const { lower, upper, open } = marks;
  const line = `M${Math.min(lower, bar.x)} ${middle}H${bar.x}M${bar.x + bar.width} ${middle}H${Math.max(upper, bar.x + bar.width)}`;
  const end = (x: number, outwards: number): string =>
    open
      ? `M${x - outwards * BARB} ${middle - reach}L${x} ${middle}L${x - outwards * BARB} ${middle + reach}`
      : `M${x} ${middle - reach}V${middle + reach}`;
  return (
    <>
      <path class="band-reach" d={line} />
      <path class={open ? 'band-mark band-open' : 'band-mark'} d={`${end(lower, -1)}${end(upper, 1)}`} />
    </>
  );
}

/** The hair-thin strip again, widened by the factor written beside it. */
function Magnified({ magnifier, bottom, height }: { magnifier: Magnifier; bottom: number; height: number }) {
  const { x, width, from, factor } = magnifier;
  const y = bottom + 5;
  const fan = `M${from.x} ${bottom}L${x} ${y}M${from.x + from.width} ${bottom}L${x + width} ${y}`;
  return (
    <>
      <path class="band-fan" d={fan} />
      <rect class="band-magnified" x={x} y={y} width={width} height={height} />
      <text x={x - 6} y={y + height} class="band-factor">
        {`×${factor}`}
      </text>
    </>
  );
}
