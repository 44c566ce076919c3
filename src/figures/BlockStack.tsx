import { useId } from 'preact/hooks';
import { numberText } from '../text/quantity-text.ts';
import { BlockClaimRow } from './BlockClaimRow.tsx';
import { BlockLaneRow } from './BlockLaneRow.tsx';
import { type BlockDrawing, type BlockStackProps, blockStackLayout } from './block-stack.layout.ts';
import { NamedSvg } from './NamedSvg.tsx';

/** Words in the figure. */
export interface BlockStackWords {
  /** Name of the part that is drawn to scale, and of the one that is so many times larger. */
  readonly scaled: string;
  readonly magnified: (times: number) => string;
  /** What the axis gives, with its unit. */
  readonly along: string;
}

export interface BlockStackViewProps extends BlockStackProps {
  readonly words: BlockStackWords;
  /** Name of the figure and what it shows now, for those who do not see it. */
  readonly name: string;
  readonly description: string;
  /** Whether the ends can be pulled. */
  readonly handle?: boolean;
}

/**
 * Two gauges of one nominal length, to scale, with their ends hugely magnified on a common axis in micrometres: hatched is what
 * warmth adds. Below, on the same axis, their difference: a dot for what is there, a strip, end marks and curve for what is claimed.
 */
export function BlockStack(props: BlockStackViewProps) {
  const id = useId();
  const drawing = blockStackLayout(props);
  const { measures, height } = drawing;
  return (
    <NamedSvg class={`plot plot-${props.frame}`} size={{ width: measures.width, height }} of={props}>
      <pattern id={`${id}h`} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path class="plot-hatch" d="M0 0V6" />
      </pattern>
      <Axis drawing={drawing} words={props.words} />
      {drawing.lanes.map((lane) => (
        <BlockLaneRow
          key={lane.lane.id}
          drawing={lane}
          measures={measures}
          hatch={`url(#${id}h)`}
          handle={props.handle === true}
        />
      ))}
      <BlockClaimRow drawing={drawing.claim} measures={measures} />
    </NamedSvg>
  );
}

/** The axis in micrometres below, nothing as a line through all rows, and what is to scale above. */
function Axis({ drawing, words }: { drawing: BlockDrawing; words: BlockStackWords }) {
  const { measures, zeroX, axisY, ticks, decimals, magnification } = drawing;
  const { zone, scaled, head, labelY } = measures;
  const top = head - labelY / 2;
  const stubs = ticks.map(({ x }) => `M${x} ${axisY}v6`).join('');
  return (
    <g>
      <path class="plot-leader" d={`M${zeroX} ${top}V${axisY}`} />
      <path class="plot-axis" d={`M${zone[0]} ${axisY}H${zone[1]}${stubs}`} />
      <text x={scaled[0]} y={labelY} class="plot-unit">
        {words.scaled}
      </text>
      <text x={zone[1]} y={labelY} class="plot-unit anchor-end">
        {words.magnified(magnification)}
      </text>
      {ticks.map(
        ({ x, value, named }) =>
          named && (
            <text key={value} x={x} y={axisY + measures.tickDrop} class="plot-tick anchor-middle">
              {numberText('shown', { value, decimals })}
            </text>
          ),
      )}
      <text x={zone[1]} y={axisY + measures.unitDrop} class="plot-unit anchor-end">
        {words.along}
      </text>
    </g>
  );
}
