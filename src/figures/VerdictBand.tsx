import { useId } from 'preact/hooks';
import { numberText } from '../text/quantity-text.ts';
import { limitDecimals } from './limit-decimals.ts';
import { NamedSvg } from './NamedSvg.tsx';
import { PullHandle } from './PullHandle.tsx';
import { type VerdictBandDrawing, type VerdictBandProps, verdictBandLayout } from './verdict-band.layout.ts';

export interface VerdictBandViewProps extends VerdictBandProps {
  /** What the axis gives, with its unit. */
  readonly along: string;
  /** Name of the figure and what it shows now, for those who do not see it. */
  readonly name: string;
  readonly description: string;
  /** Whether the estimate can be pulled along. */
  readonly handle?: boolean;
}

/** Length of a barb on a limit, and of a tick. */
const BARB = 9;
const STUB = 5;

/**
 * A reading's band and the specification's on one axis. Above, a lane that says what any reading would be called: framed is inside,
 * hatched is can't tell. Below, the bell about the estimate with its strip; what lies beyond a limit is darker.
 */
export function VerdictBand(props: VerdictBandViewProps) {
  const id = useId();
  const drawing = verdictBandLayout(props);
  const { measures, strip, ghost, estimateX } = drawing;
  const [stripTop, stripFoot] = measures.strip;
  const height = stripFoot - stripTop;
  return (
    <NamedSvg class={`plot plot-${props.frame}`} size={measures} of={props}>
      <Lane drawing={drawing} names={props.names} hatch={`${id}h`} />
      {drawing.areas.map(({ inside, path }) => (
        <path key={path} class={inside ? 'band-curve-fill' : 'plot-beyond'} d={path} />
      ))}
      <path class="band-curve" d={drawing.line} />
      <rect class="band-strip" x={strip.x} y={stripTop} width={Math.max(1, strip.width)} height={height} />
      {ghost && <rect class="band-ghost" x={ghost.x} y={stripTop} width={ghost.width} height={height} />}
      <Limits drawing={drawing} />
      <Axis drawing={drawing} along={props.along} />
      <path class="plot-mark" d={`M${estimateX} ${stripTop - 4}V${measures.axisY}`} />
      {props.handle && (
        <PullHandle id="at" along="x" x={estimateX} y={measures.axisY} radius={measures.handleRadius} />
      )}
    </NamedSvg>
  );
}

interface PartProps {
  readonly drawing: VerdictBandDrawing;
}

function Lane({ drawing, names, hatch }: PartProps & { names: VerdictBandProps['names']; hatch: string }) {
  const { zones, measures } = drawing;
  const [top, foot] = measures.lane;
  return (
    <g>
      <pattern id={hatch} width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path class="plot-hatch" d="M0 0V8" />
      </pattern>
      {zones.map(({ verdict, x, width }) =>
        verdict === 'outside' ? null : (
          <rect
            key={x}
            {...(verdict === 'inside' ? { class: 'plot-mark' } : { fill: `url(#${hatch})` })}
            x={x}
            y={top}
            width={width}
            height={foot - top}
          />
        ),
      )}
      {zones.map(
        ({ verdict, x, width, named }) =>
          named && (
            <text key={x} x={x + width / 2} y={measures.namesY} class="anchor-middle">
              {names[verdict]}
            </text>
          ),
      )}
    </g>
  );
}

/** Firm lines with barbs to the side that is allowed, each with its number; the lane keeps its names free of them. */
function Limits({ drawing: { limits, measures } }: PartProps) {
  const [top, foot] = measures.lane;
  return (
    <g>
      {limits.map(({ x, value, allowed }) => {
        const barbs = [foot + BARB, measures.axisY - BARB].map((y) => `M${x} ${y}l${allowed * BARB} 0`);
        const path = `M${x} ${measures.numbersY + STUB}V${top}M${x} ${foot}V${measures.axisY}${barbs.join('')}`;
        return (
          <g key={value}>
            <path class="plot-casing" d={path} />
            <path class="band-specification" d={path} />
            <text x={x} y={measures.numbersY} class="anchor-middle plot-strong">
              {numberText('shown', { value, decimals: limitDecimals(value) })}
            </text>
          </g>
        );
      })}
    </g>
  );
}

function Axis({ drawing: { ticks, decimals, measures }, along }: PartProps & { along: string }) {
  const { across, axisY, ticksY, unitY } = measures;
  return (
    <g>
      <path
        class="plot-axis"
        d={`M${across[0]} ${axisY}H${across[1]}${ticks.map(({ x }) => `M${x} ${axisY}v${STUB}`).join('')}`}
      />
      {ticks.map(
        ({ x, value, named }) =>
          named && (
            <text key={value} x={x} y={ticksY} class="plot-tick anchor-middle">
              {numberText('shown', { value, decimals })}
            </text>
          ),
      )}
      <text x={across[1]} y={unitY} class="plot-unit anchor-end">
        {along}
      </text>
    </g>
  );
}
