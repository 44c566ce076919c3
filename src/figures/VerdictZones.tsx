import { useId } from 'preact/hooks';
import { numberText } from '../text/quantity-text.ts';
import { limitDecimals } from './limit-decimals.ts';
import { NamedSvg } from './NamedSvg.tsx';
import { verdictZonesLayout, ZONES, type ZonesProps } from './verdict-zones.layout.ts';

export interface VerdictZonesProps extends ZonesProps {
  readonly name: string;
  readonly description: string;
}

/** Zones go by their place, not by where they begin, so that one that is pulled on is moved and not made anew. */
const PLACES = ['first', 'second', 'third', 'fourth', 'fifth'] as const;

/**
 * Where the measured level lies among the limits: firm lines are the specification, hatched is where this measurement
 * cannot tell, the strip is the interval that decided.
 */
export function VerdictZones(props: VerdictZonesProps) {
  const id = useId();
  const { zones, limits, band, estimateX } = verdictZonesLayout(props);
  const { width, height, axis, zoneY, zoneHeight, bandY, bandHeight } = ZONES;
  return (
    <NamedSvg class="zones" size={{ width, height }} of={props}>
      <pattern id={`${id}h`} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path class="zones-hatch" d="M0 0V6" />
      </pattern>
      {zones.map(({ verdict, x, width: across, named }, index) => (
        <g key={PLACES[index]}>
          {verdict === 'cant-tell' && (
            <rect x={x} y={zoneY} width={across} height={zoneHeight} fill={`url(#${id}h)`} />
          )}
          {verdict === 'inside' && (
            <rect class="zones-inside" x={x} y={zoneY} width={across} height={zoneHeight} />
          )}
          {named && (
            <text x={x + across / 2} y={ZONES.labelY} class="zones-name">
              {props.names[verdict]}
            </text>
          )}
        </g>
      ))}
      <path class="zones-axis" d={`M${axis[0]} ${zoneY + zoneHeight}H${axis[1]}`} />
      {limits.map(({ x, value }) => (
        <g key={value}>
          <path class="band-specification" d={`M${x} ${zoneY - 3}V${ZONES.limitBottom}`} />
          <text x={x} y={ZONES.numberY} class="zones-name">
            {numberText('shown', { value, decimals: limitDecimals(value) })}
          </text>
        </g>
      ))}
      <rect class="band-strip" x={band.x} y={bandY} width={Math.max(1, band.width)} height={bandHeight} />
      <path class="zones-estimate" d={`M${estimateX} ${bandY - 4}V${bandY + bandHeight + 4}`} />
    </NamedSvg>
  );
}
