import { useId } from 'preact/hooks';
import { levelText, numberText } from '../text/quantity-text.ts';
import { CURVE } from './distribution-curve.frame.ts';
import { distributionCurveLayout } from './distribution-curve.layout.ts';
import type { CurveDrawing, CurveLimit, CurveProps } from './distribution-curve.types.ts';
import { stubs } from './level-axis.ts';
import { limitDecimals } from './limit-decimals.ts';
import { NamedSvg } from './NamedSvg.tsx';

export interface DistributionCurveProps extends CurveProps {
  readonly name: string;
  readonly description: string;
}

/**
 * The whole distribution of a level: areas outside the specification hatched, firm lines its limits, below it the interval that
 * decided with the estimate as a mark. Words and hatching say what colour says.
 */
export function DistributionCurve(props: DistributionCurveProps) {
  const id = useId();
  const drawing = distributionCurveLayout(props);
  const { width, height, areas, limits, strip, estimateX } = drawing;
  return (
    <NamedSvg
      class={`curve figure-${props.frame}`}
      size={{ width, height }}
      of={{ name: props.name, description: props.description }}
    >
      <pattern id={`${id}h`} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path class="curve-hatch" d="M0 0V5" />
      </pattern>
      {areas.map(({ inside, path, wordX, named }) => (
        <g key={wordX}>
          {inside ? <path class="band-curve-fill" d={path} /> : <path fill={`url(#${id}h)`} d={path} />}
          {named && (
            <text x={wordX} y={CURVE.wordsY}>
              {inside ? props.names.inside : props.names.outside}
            </text>
          )}
        </g>
      ))}
      <path class="band-curve" d={drawing.line} />
      {limits.map((limit) => (
        <Limit key={limit.value} limit={limit} />
      ))}
      <rect
        class="band-strip"
        x={strip.x}
        y={CURVE.stripY}
        width={Math.max(1, strip.width)}
        height={CURVE.stripHeight}
      />
      <path class="figure-estimate" d={`M${estimateX} ${CURVE.stripY - 4}v${CURVE.stripHeight + 8}`} />
      <Axis drawing={drawing} frame={props.frame} />
    </NamedSvg>
  );
}

/** A limit with its number; one that lies beyond the drawing is told with an arrow. */
function Limit({ limit: { value, x, beyond, anchor, lowered } }: { limit: CurveLimit }) {
  const y = lowered ? CURVE.wordsY : CURVE.numbersY;
  const text = levelText('shown', { levelDbm: value, decimals: limitDecimals(value) });
  return (
    <>
      {beyond === undefined && <path class="band-specification" d={`M${x} ${y + 5}V${CURVE.limitBottom}`} />}
      <text x={x} y={y} class={`anchor-${anchor}`}>
        {beyond === 'left' ? `← ${text}` : beyond === 'right' ? `${text} →` : text}
      </text>
    </>
  );
}

function Axis({ drawing, frame }: { drawing: CurveDrawing; frame: CurveProps['frame'] }) {
  const { axis, unitX, unitY } = CURVE[frame];
  return (
    <>
      <path
        class="band-axis"
        d={`M${axis[0]} ${CURVE.ground}H${axis[1]}M${axis[0]} ${CURVE.axisY}H${axis[1]}${stubs(drawing.ticks, CURVE.axisY, 6)}`}
      />
      {drawing.ticks.map(
        ({ x, value, decimals, named }) =>
          named && (
            <text key={value} x={x} y={CURVE.tickY}>
              {numberText('shown', { value, decimals })}
            </text>
          ),
      )}
      <text x={unitX} y={unitY} class="anchor-end">
        dBm
      </text>
    </>
  );
}
