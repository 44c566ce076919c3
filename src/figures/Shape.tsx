import { numberText } from '../text/quantity-text.ts';
import { NamedSvg } from './NamedSvg.tsx';
import { PullHandle } from './PullHandle.tsx';
import type { ShapeMeasures } from './shape.frame.ts';
import { type LaneDrawing, type ShapeDrawing, type ShapeProps, shapeLayout } from './shape.layout.ts';

export interface ShapeViewProps extends ShapeProps {
  /** What the upright axis and the other one give, with their units. */
  readonly words: { readonly up: string; readonly along: string };
  /** Name of the figure and what it shows now, for those who do not see it. */
  readonly name: string;
  readonly description: string;
}

/** Length of a tick's stub, and how far an end mark reaches beyond a strip of its lane. */
const STUB = 5;
const MARK_REACH = 3;
/** An outline narrower than this is drawn as one mark: its dashes would be a smudge. */
const LEAST_OUTLINE = 4;

/**
 * A distribution, filled, under the dashed one that it is compared with; below them, on the same axis, intervals with their
 * numbers.
 */
export function Shape(props: ShapeViewProps) {
  const drawing = shapeLayout(props);
  const { measures, height, axisY, handleX } = drawing;
  return (
    <NamedSvg class={`plot plot-${props.frame}`} size={{ width: measures.width, height }} of={props}>
      {drawing.area && <path class="band-curve-fill" d={drawing.area} />}
      {drawing.line && <path class="band-curve" d={drawing.line} />}
      {drawing.part && <path class="plot-leader" d={drawing.part} />}
      {drawing.compared && <path class="plot-mark plot-rms" d={drawing.compared} />}
      {drawing.lanes.map((lane) => (
        <Lane key={lane.lane.id} drawing={lane} measures={measures} />
      ))}
      <Axis drawing={drawing} words={props.words} />
      {handleX !== undefined && (
        <PullHandle id="part" along="x" x={handleX} y={axisY} radius={measures.handleRadius} />
      )}
    </NamedSvg>
  );
}

function Lane({ drawing, measures }: { drawing: LaneDrawing; measures: ShapeMeasures }) {
  const { lane, x, width, y } = drawing;
  const { stripHeight, numberX } = measures;
  const middle = y + measures.middleY;
  const box = { x, y: middle - stripHeight / 2, width: Math.max(1, width), height: stripHeight };
  const reach = stripHeight / 2 + MARK_REACH;
  const mark = (at: number): string => `M${at} ${middle - reach}v${2 * reach}`;
  return (
    <g>
      <text x={0} y={y + measures.labelY} class="anchor-start">
        {lane.label}
      </text>
      <text x={numberX} y={y + measures.labelY} class="plot-strong anchor-end">
        {lane.number}
      </text>
      {lane.interval && lane.kind === 'strip' && <rect class="band-strip" {...box} />}
      {lane.interval && lane.kind === 'outline' && width >= LEAST_OUTLINE && (
        <rect class="plot-mark plot-rms" {...box} />
      )}
      {lane.interval && lane.kind === 'outline' && width < LEAST_OUTLINE && (
        <path class="plot-mark plot-limit" d={mark(x)} />
      )}
      {lane.interval && lane.kind === 'marks' && (
        <>
          <path class="plot-leader" d={`M${x} ${middle}h${width}`} />
          <path class="plot-mark plot-limit" d={`${mark(x)}${mark(x + width)}`} />
        </>
      )}
    </g>
  );
}

function Axis({ drawing, words }: { drawing: ShapeDrawing; words: ShapeViewProps['words'] }) {
  const { measures, axisY, ticks, decimals } = drawing;
  const [left, right] = measures.across;
  const [top, ground] = measures.down;
  const stubs = ticks.map(({ x }) => `M${x} ${axisY}v${STUB}`).join('');
  return (
    <g>
      <path class="plot-axis" d={`M${left} ${ground}H${right}M${left} ${axisY}H${right}${stubs}`} />
      {ticks.map(
        ({ x, value, named }) =>
          named && (
            <text key={value} x={x} y={axisY + measures.tickDrop} class="plot-tick anchor-middle">
              {numberText('shown', { value, decimals })}
            </text>
          ),
      )}
      <text x={2} y={top - measures.wordsRise} class="plot-unit">
        {words.up}
      </text>
      <text x={right} y={axisY + measures.wordsDrop} class="plot-unit anchor-end">
        {words.along}
      </text>
    </g>
  );
}
