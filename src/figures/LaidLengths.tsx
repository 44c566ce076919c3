import { numberText } from '../text/quantity-text.ts';
import { type LaidDrawing, type LaidProps, laidLayout } from './laid-lengths.layout.ts';
import { NamedSvg } from './NamedSvg.tsx';
import { PullHandle } from './PullHandle.tsx';

/** Words in the figure, each with its numbers. */
export interface LaidWords {
  /** Of the first and of the second bar. */
  readonly first: string;
  readonly second: string;
  /** What the axis gives, with its unit. */
  readonly axis: string;
}

export interface LaidViewProps extends LaidProps {
  readonly words: LaidWords;
  /** Name of the figure and what it shows now, for those who do not see it. */
  readonly name: string;
  readonly description: string;
  /** Whether the knob can be pulled. */
  readonly handle?: boolean;
}

/** Length of a tick's stub, and by how much an end mark stands out of its bar. */
const STUB = 5;
const OUT = 6;

/**
 * Lengths laid end to end as a bar, and below it a second bar that is shorter: how far most sums reach, or the same lengths laid at
 * right angles. Above stands the curve of all sums, or the path at right angles.
 */
export function LaidLengths(props: LaidViewProps) {
  const drawing = laidLayout(props);
  const { measures, path, curve, knobX, saidX } = drawing;
  const [first, second] = measures.bars;
  return (
    <NamedSvg class={`plot plot-${props.frame}`} size={measures} of={props}>
      {curve && <path class="plot-fill" d={curve} />}
      {curve && <path class="plot-axis" d={curve} />}
      {path && <Path drawing={drawing} />}
      <Pieces drawing={drawing} />
      <Second drawing={drawing} />
      {saidX !== undefined && (
        <path class="plot-ghost" d={`M${saidX} ${first - measures.barHalf - OUT}V${measures.axis}`} />
      )}
      <Words drawing={drawing} words={props.words} at={[first, second]} />
      {props.handle && (
        <PullHandle id="at" along="x" x={knobX} y={measures.axis} radius={measures.handleRadius} />
      )}
    </NamedSvg>
  );
}

interface PartProps {
  readonly drawing: LaidDrawing;
}

/** The path at right angles, and from its start to its end the result. */
function Path({ drawing: { path, measures } }: PartProps) {
  return (
    path && (
      <g>
        <path class="plot-leader" d={path.rays} />
        <path class="plot-step" d={path.lengths} />
        <path class="plot-dot" d={path.result} />
        {path.corners.map(({ x, y }) => (
          <circle key={`${x} ${y}`} class="plot-point" cx={x} cy={y} r={measures.corner / 2} />
        ))}
      </g>
    )
  );
}

/** The lengths end to end, with a firm mark at the end, or an arrow where there is none. */
function Pieces({ drawing: { measures, pieces, end } }: PartProps) {
  const { bars, barHalf } = measures;
  const [y] = bars;
  const isEndless = pieces.some(({ endless }) => endless);
  return (
    <g>
      {pieces.map(({ x, width, endless }) => (
        <g key={x}>
          {!endless && <rect class="plot-fill" x={x} y={y - barHalf} width={width} height={2 * barHalf} />}
          <rect
            class={endless ? 'plot-ghost' : 'plot-axis'}
            x={x}
            y={y - barHalf}
            width={width}
            height={2 * barHalf}
          />
        </g>
      ))}
      <path
        class="plot-limit"
        d={
          isEndless
            ? `M${end + OUT / 2} ${y}h${3 * OUT}m${-OUT} ${-OUT}l${OUT} ${OUT}l${-OUT} ${OUT}`
            : `M${end} ${y - barHalf - OUT}v${2 * (barHalf + OUT)}`
        }
      />
    </g>
  );
}

/** The second bar: the strip of the band, or the result of the path in ink. */
function Second({ drawing: { measures, result, path } }: PartProps) {
  const { bars, barHalf, across, lineHalf } = measures;
  const half = path ? 2 * lineHalf : barHalf;
  return (
    result !== undefined && (
      <rect
        class={path ? 'plot-dot' : 'band-strip'}
        x={across[0]}
        y={bars[1] - half}
        width={result}
        height={2 * half}
      />
    )
  );
}

/** What each bar is, above it, and the axis with its numbers. */
function Words({
  drawing: { measures, ticks, decimals },
  words,
  at,
}: PartProps & { readonly words: LaidWords; readonly at: readonly [number, number] }) {
  const { across, axis, rise } = measures;
  const stubs = ticks.map(({ x }) => `M${x} ${axis}v${STUB}`).join('');
  return (
    <g>
      <path class="plot-axis" d={`M${across[0]} ${axis}H${across[1]}${stubs}`} />
      {[words.first, words.second].map((text, index) => (
        <text key={index === 0} class="anchor-start" x={2} y={(at[index] ?? 0) - rise}>
          {text}
        </text>
      ))}
      {ticks.map(
        ({ x, value, named }) =>
          named && (
            <text key={value} x={x} y={axis + measures.tickDrop} class="plot-tick anchor-middle">
              {numberText('shown', { value, decimals })}
            </text>
          ),
      )}
      <text x={across[1]} y={axis + measures.wordsDrop} class="plot-unit anchor-end">
        {words.axis}
      </text>
    </g>
  );
}
