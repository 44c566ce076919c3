import { numberText } from '../text/quantity-text.ts';
import { tickDecimals } from './axis-ticks.ts';
import {
  type EnvelopeDrawing,
  type EnvelopeMark,
  type EnvelopeProps,
  envelopeLayout,
} from './envelope.layout.ts';
import { NamedSvg } from './NamedSvg.tsx';
import { PullHandle } from './PullHandle.tsx';

export interface EnvelopeViewProps extends EnvelopeProps {
  readonly labels: Readonly<Record<EnvelopeMark['id'], string>>;
  /** The mark that is meant. */
  readonly meant?: EnvelopeMark['id'] | undefined;
  readonly axes: { readonly power: string; readonly time: string };
  /** Name of the figure and what it shows now, for those who do not see it. */
  readonly name: string;
  readonly description: string;
  readonly handle?: boolean;
}

/**
 * The power of a keyed or modulated wave, averaged over single cycles, with its peak and its mean: the filled area is what the mean
 * spreads evenly.
 */
export function Envelope(props: EnvelopeViewProps) {
  const drawing = envelopeLayout(props);
  const { width, height } = drawing.measures;
  return (
    <NamedSvg class={`plot plot-${props.frame}`} size={{ width, height }} of={props}>
      <path class="plot-fill" d={drawing.area} />
      <path class="plot-wave" d={drawing.line} />
      <PowerAxis drawing={drawing} axes={props.axes} />
      <Marks drawing={drawing} {...props} />
      {props.handle && <PullHandle id="peak" {...drawing.handle} radius={drawing.measures.handleRadius} />}
    </NamedSvg>
  );
}

function PowerAxis({ drawing, axes }: { drawing: EnvelopeDrawing; axes: EnvelopeViewProps['axes'] }) {
  const { measures, ground, ticks, letters } = drawing;
  const [left, right] = measures.plot;
  const top = measures.power[0];
  const decimals = tickDecimals(ticks.map(({ value }) => value));
  return (
    <g>
      <path
        class="plot-axis"
        d={`M${left} ${top}V${ground}H${right}${ticks.map(({ y }) => `M${left} ${y}h-5`).join('')}`}
      />
      {ticks.map(({ value, y }) => (
        <text key={value} x={left - 8} y={y + measures.labelDrop} class="plot-tick anchor-end">
          {numberText('shown', { value, decimals })}
        </text>
      ))}
      <text x={left} y={top - 16} class="plot-unit">
        {axes.power}
      </text>
      {letters.map(({ name, x }) => (
        <text key={name} x={x} y={ground + measures.tickDrop} class="plot-tick anchor-middle">
          {name}
        </text>
      ))}
      <text x={right + 8} y={ground + measures.labelDrop} class="plot-unit">
        {axes.time}
      </text>
    </g>
  );
}

function Marks({
  drawing,
  labels,
  meant,
}: { drawing: EnvelopeDrawing } & Pick<EnvelopeViewProps, 'labels' | 'meant'>) {
  const { marks, measures, ghostY } = drawing;
  const [left, right] = measures.plot;
  return (
    <>
      {ghostY !== undefined && <path class="plot-ghost" d={`M${left} ${ghostY}H${right}`} />}
      {marks.map(({ id, y, labelY }) => (
        <g key={id}>
          <path class={`plot-mark plot-${id}`} d={`M${left} ${y}H${right + 6}`} />
          <path class="plot-leader" d={`M${right + 6} ${y}L${measures.labelX - 5} ${labelY}`} />
          <text x={measures.labelX} y={labelY + measures.labelDrop} class={id === meant ? 'plot-strong' : ''}>
            {labels[id]}
          </text>
        </g>
      ))}
    </>
  );
}
