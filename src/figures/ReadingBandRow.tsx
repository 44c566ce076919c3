import { coordinate } from './linear-scale.ts';
import type { BandMeasures } from './reading-band.frame.ts';
import type { Magnifier, RowDrawing } from './reading-band.types.ts';
import { still } from './still.ts';

/** Half the height of an end mark beyond the strip. */
const MARK_REACH = 4;
/** How far the barbs of an open end mark point outwards. */
const BARB = 7;
/** Between the lower edge of a strip and the knob that hangs from its end, so that end and end marks stay in sight. */
const KNOB_GAP = 4;
/** So many letters have room in a line of a narrow row where text is spaced widely: a name with the number, and what the row adds with it. */
export const ROOM = { label: 29, detail: 33 } as const;
/** From that line down to the next, above the strip: the second of what the row adds, or one that the number has to itself. */
const NEXT_LINE = 15;
/** Length of a dot: one of no length at all has no place where it can be taken hold of. */
const DOT = 0.01;
/** A pointer may take hold this far around the middle of a handle: 44 px across where the figure is smallest. */
const GRIP_RADIUS = 25;

/*
 * What follows the pointer is drawn by points: `x`, `d` and `transform` belong to the style of a shape, and while they change the style of the
 * page is worked out anew with each frame; points do not.
 */

const boxPoints = (x: number, y: number, width: number, height: number): string =>
  `${x} ${y} ${x + width} ${y} ${x + width} ${y + height} ${x} ${y + height}`;

interface RowProps {
  readonly drawing: RowDrawing;
  readonly measures: BandMeasures;
}

/** One rung: words, strip, end marks, curve, ghost, magnified copy and handle. */
export const ReadingBandRow = still(Row);

function Row({ drawing, measures }: RowProps) {
  const { row, y, bar, ghost, marks, curve, magnifier, handleX } = drawing;
  const middle = y + measures.stripY;
  const top = middle - measures.stripHeight / 2;
  return (
    <g>
      <Words drawing={drawing} measures={measures} />
      {curve && <path class="band-curve-fill" d={curve.area} />}
      {curve && <path class="band-curve" d={curve.line} />}
      {marks && bar && (
        <polyline
          class="band-reach"
          points={`${Math.min(marks.lower, bar.x)} ${middle} ${Math.max(marks.upper, bar.x + bar.width)} ${middle}`}
        />
      )}
      {bar ? (
        <polygon
          class="band-strip"
          points={boxPoints(bar.x, top, Math.max(bar.width, 1), measures.stripHeight)}
        />
      ) : (
        <path
          class="band-exact"
          d={`M${(measures.axis[0] + measures.axis[1]) / 2} ${top - 4}v${measures.stripHeight + 8}`}
        />
      )}
      {marks && bar && (
        <EndMarks marks={marks} middle={middle} reach={measures.stripHeight / 2 + MARK_REACH} />
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
      {magnifier && <Magnified magnifier={magnifier} top={top} measures={measures} />}
      {row.handle && handleX !== undefined && (
        <Handle id={row.id} x={handleX} bottom={top + measures.stripHeight} measures={measures} />
      )}
    </g>
  );
}

function Words({ drawing, measures }: RowProps) {
  const { row, y } = drawing;
  const { labelY, detailY, numberY } = measures;
  const isOver = (part: keyof typeof ROOM): boolean =>
    numberY === labelY && row[part].length + row.number.length > ROOM[part];
  const below = isOver('detail') ? detailY + NEXT_LINE : detailY;
  return (
    <>
      <text x={measures.labelX} y={y + labelY} class={`band-label${row.dominant ? ' band-dominant' : ''}`}>
        {row.label}
      </text>
      {measures.showDetail &&
        row.detail.split('\n').map((line, index) => (
          <text key={index} x={measures.labelX} y={y + detailY + NEXT_LINE * index} class="band-detail">
            {line}
          </text>
        ))}
      <text
        x={measures.numberX}
        y={y + (isOver('label') ? below : numberY)}
        class={`band-number anchor-${measures.numberAnchor}`}
      >
        {row.number}
      </text>
    </>
  );
}

interface EndMarksProps {
  readonly marks: NonNullable<RowDrawing['marks']>;
  readonly middle: number;
  readonly reach: number;
}

/** Worst case: a bar at each end, or barbs pointing outwards where a part has no limit and the end guarantees nothing. */
function EndMarks({ marks, middle, reach }: EndMarksProps) {
  const { lower, upper, open } = marks;
  const mark = (x: number, outwards: number) => {
    const from = open ? x - outwards * BARB : x;
    return (
      <polyline
        class={`band-mark${open ? ' band-open' : ''}`}
        points={`${from} ${middle - reach} ${x} ${middle} ${from} ${middle + reach}`}
      />
    );
  };
  return (
    <>
      {mark(lower, -1)}
      {mark(upper, 1)}
    </>
  );
}

interface HandleProps {
  readonly id: string;
  /** The end of the strip that the handle moves. */
  readonly x: number;
  readonly bottom: number;
  readonly measures: BandMeasures;
}

/** A knob that hangs from the end of a strip by a short line: dots, which are lines of next to no length with round ends. */
function Handle({ id, x, bottom, measures: { handleRadius, handleEdge } }: HandleProps) {
  const middle = bottom + KNOB_GAP + handleRadius;
  const dotted = `${x} ${middle} ${x + DOT} ${middle}`;
  const dot = (name: string, radius: number) => (
    <polyline class={`band-dot ${name}`} points={dotted} stroke-width={2 * radius} />
  );
  return (
    <g data-handle={id} data-end={x} class="band-handle">
      {dot('band-hold', GRIP_RADIUS)}
      <polyline class="band-stem" points={`${x} ${bottom} ${x} ${bottom + KNOB_GAP}`} />
      {dot('band-edge', handleRadius + handleEdge / 2)}
      {dot('band-face', handleRadius - handleEdge / 2)}
    </g>
  );
}

/** The hair-thin strip again, beside it and widened by the factor written next to it. */
function Magnified({
  magnifier,
  top,
  measures,
}: {
  magnifier: Magnifier;
  top: number;
  measures: BandMeasures;
}) {
  const { x, width, from, factor } = magnifier;
  const bottom = top + measures.stripHeight;
  const right = coordinate(x + width);
  const fan = `M${from.x} ${top + 3}L${right} ${top}M${from.x} ${bottom - 3}L${right} ${bottom}`;
  return (
    <>
      <path class="band-fan" d={fan} />
      <rect class="band-magnified" x={x} y={top} width={width} height={measures.stripHeight} />
      <text x={x - 6} y={bottom - 1} class="band-factor">
        {`×${factor}`}
      </text>
    </>
  );
}
