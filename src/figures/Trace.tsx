import { numberText } from '../text/quantity-text.ts';
import { tickDecimals } from './axis-ticks.ts';
import { NamedSvg } from './NamedSvg.tsx';
import { PullHandle } from './PullHandle.tsx';
import { type Mark, PERIODS, type TraceDrawing, type TraceProps, traceLayout } from './trace.layout.ts';

/** Words beside the marks; each may have a second line. */
export type TraceLabels = Readonly<Record<Mark['id'] | 'whole', readonly string[]>>;

export interface TraceViewProps extends TraceProps {
  readonly labels: TraceLabels;
  /** What is written at the axes. */
  readonly axes: { readonly volts: string; readonly power: string; readonly time: string };
  /** Name of the figure and what it shows now, for those who do not see it. */
  readonly name: string;
  readonly description: string;
  /** Whether the crest can be pulled. */
  readonly handle?: boolean;
}

/**
 * A wave across a load with its measures marked: peak, RMS and rectified average as lines, trough to crest as a bracket; below it
 * the power in the load from moment to moment, with its mean.
 */
export function Trace(props: TraceViewProps) {
  const drawing = traceLayout(props);
  const { width, height } = drawing.measures;
  return (
    <NamedSvg class={`plot plot-${props.frame}`} size={{ width, height }} of={props}>
      <VoltAxes drawing={drawing} axes={props.axes} />
      {drawing.ghost && <path class="plot-ghost" d={drawing.ghost} />}
      <path class="plot-wave" d={drawing.wave} />
      <Marks marks={drawing.marks} drawing={drawing} labels={props.labels} />
      <Whole drawing={drawing} words={props.labels.whole} />
      {drawing.power && <PowerPlot drawing={drawing} power={drawing.power} {...props} />}
      {props.handle && <PullHandle id="crest" {...drawing.handle} radius={drawing.measures.handleRadius} />}
    </NamedSvg>
  );
}

function VoltAxes({ drawing, axes }: { drawing: TraceDrawing; axes: TraceViewProps['axes'] }) {
  const { measures, zeroY, voltTicks, periodX } = drawing;
  const [left, right] = measures.plot;
  const decimals = tickDecimals(voltTicks.map(({ value }) => value));
  return (
    <g>
      <path
        class="plot-axis"
        d={`M${left} ${measures.volts[0]}V${measures.volts[1]}M${left} ${zeroY}H${right}${voltTicks
          .map(({ y }) => `M${left} ${y}h-5`)
          .join('')}`}
      />
      {voltTicks.map(({ value, y }) => (
        <text key={value} x={left - 8} y={y + measures.labelDrop} class="plot-tick anchor-end">
          {numberText('shown', { value, decimals })}
        </text>
      ))}
      <text x={left} y={measures.volts[0] - 10} class="plot-unit">
        {axes.volts}
      </text>
      <path class="plot-axis" d={periodX.map((x) => `M${x} ${measures.volts[1]}v6`).join('')} />
      {!measures.power && <PeriodNumbers drawing={drawing} bottom={measures.volts[1]} words={axes.time} />}
    </g>
  );
}

function PeriodNumbers({ drawing, bottom, words }: { drawing: TraceDrawing; bottom: number; words: string }) {
  const { measures, periodX } = drawing;
  return (
    <>
      {periodX.map((x, index) => (
        <text key={x} x={x} y={bottom + measures.tickDrop} class="plot-tick anchor-middle">
          {index === PERIODS ? `${index} ${words}` : index}
        </text>
      ))}
    </>
  );
}

interface MarksProps {
  readonly marks: readonly Mark[];
  readonly drawing: TraceDrawing;
  readonly labels: TraceLabels;
}

/** Lines across the plot with their words beside it; a leader joins them where the words had to move. */
function Marks({ marks, drawing, labels }: MarksProps) {
  const { measures } = drawing;
  const [left, right] = measures.plot;
  const leaderFrom = right + 22;
  return (
    <>
      {marks.map(({ id, y, labelY }) => (
        <g key={id}>
          <path class={`plot-mark plot-${id}`} d={`M${left} ${y}H${leaderFrom - 14}`} />
          <path class="plot-leader" d={`M${leaderFrom - 14} ${y}L${measures.labelX - 5} ${labelY}`} />
          <text x={measures.labelX} y={labelY + measures.labelDrop} class={`plot-label plot-label-${id}`}>
            {labels[id][0]}
          </text>
        </g>
      ))}
    </>
  );
}

/** The bracket from trough to crest, its words beside its lower half. */
function Whole({ drawing, words }: { drawing: TraceDrawing; words: readonly string[] }) {
  const { whole, measures, zeroY } = drawing;
  const { x, top, bottom } = whole;
  const middle = (zeroY + bottom) / 2;
  const first = middle - ((words.length - 1) * measures.labelPitch) / 2;
  return (
    <g>
      <path
        class="plot-bracket"
        d={`M${x - 6} ${top}H${x + 6}M${x} ${top}V${bottom}M${x - 6} ${bottom}H${x + 6}`}
      />
      {words.map((line, index) => (
        <text
          key={line}
          x={measures.labelX}
          y={first + index * measures.labelPitch + measures.labelDrop}
          class="plot-label"
        >
          {line}
        </text>
      ))}
    </g>
  );
}

interface PowerPlotProps extends TraceViewProps {
  readonly drawing: TraceDrawing;
  readonly power: NonNullable<TraceDrawing['power']>;
}

function PowerPlot({ drawing, power, labels, axes }: PowerPlotProps) {
  const { measures, periodX } = drawing;
  const [left, right] = measures.plot;
  const top = measures.power?.[0] ?? 0;
  const decimals = tickDecimals(power.ticks.map(({ value }) => value));
  return (
    <g>
      <path class="plot-fill" d={power.area} />
      <path class="plot-wave" d={power.line} />
      <path
        class="plot-axis"
        d={`M${left} ${top}V${power.ground}H${right}${power.ticks.map(({ y }) => `M${left} ${y}h-5`).join('')}${periodX
          .map((x) => `M${x} ${power.ground}v6`)
          .join('')}`}
      />
      {power.ticks.map(({ value, y }) => (
        <text key={value} x={left - 8} y={y + measures.labelDrop} class="plot-tick anchor-end">
          {numberText('shown', { value, decimals })}
        </text>
      ))}
      <text x={left} y={top - 12} class="plot-unit">
        {axes.power}
      </text>
      <PeriodNumbers drawing={drawing} bottom={power.ground} words={axes.time} />
      <Marks marks={power.marks} drawing={drawing} labels={labels} />
    </g>
  );
}
