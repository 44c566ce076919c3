import { useId } from 'preact/hooks';
import { axisPowerText } from '../text/axis-text.ts';
import { numberText } from '../text/quantity-text.ts';
import { stubs } from './level-axis.ts';
import { NamedSvg } from './NamedSvg.tsx';
import { CHART } from './points-chart.frame.ts';
import { pointsChartLayout } from './points-chart.layout.ts';
import type { ChartDrawing, ChartProps, ChartRow } from './points-chart.types.ts';

export interface PointsChartProps extends ChartProps {
  readonly name: string;
  readonly description: string;
}

/**
 * A row a point on one axis, decibels below and watts above: the strip is its interval, the mark its estimate, firm lines its
 * limits, hatched what lies outside them; beside it its verdict in words, or why it has no number.
 */
export function PointsChart(props: PointsChartProps) {
  const id = useId();
  const drawing = pointsChartLayout(props);
  return (
    <NamedSvg
      class={`points-chart figure-${props.frame}`}
      size={drawing}
      of={{ name: props.name, description: props.description }}
    >
      <pattern id={`${id}h`} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path class="curve-hatch" d="M0 0V6" />
      </pattern>
      <Axes drawing={drawing} frame={props.frame} />
      {drawing.rows.map((row) => (
        <Row key={row.id} row={row} frame={props.frame} hatch={`url(#${id}h)`} />
      ))}
    </NamedSvg>
  );
}

function Axes({ drawing, frame }: { drawing: ChartDrawing; frame: ChartProps['frame'] }) {
  const { axisTop, axisBottom, levels, powers } = drawing;
  const { axis, tickDrop, unitX, unitAnchor, unitRise, unitDrop } = CHART[frame];
  const power = axisPowerText(powers.map(({ value }) => value));
  return (
    <>
      <path
        class="band-axis"
        d={`M${axis[0]} ${axisTop}H${axis[1]}M${axis[0]} ${axisBottom}H${axis[1]}${stubs(powers, axisTop, -6)}${stubs(levels, axisBottom, 6)}`}
      />
      {powers.map(
        ({ x, value, named }, index) =>
          named && (
            <text key={value} x={x} y={axisTop - 12}>
              {power.texts[index]}
            </text>
          ),
      )}
      <text x={unitX} y={axisTop - unitRise} class={`anchor-${unitAnchor}`}>
        {power.unit}
      </text>
      {levels.map(
        ({ x, value, decimals, named }) =>
          named && (
            <text key={value} x={x} y={axisBottom + tickDrop}>
              {numberText('shown', { value, decimals })}
            </text>
          ),
      )}
      <text x={unitX} y={axisBottom + unitDrop} class={`anchor-${unitAnchor}`}>
        dBm
      </text>
    </>
  );
}

function Row({ row, frame, hatch }: { row: ChartRow; frame: ChartProps['frame']; hatch: string }) {
  const { labelY, stripY, wordX } = CHART[frame];
  const middle = row.y + stripY;
  const top = middle - CHART.stripHeight / 2;
  const zoneTop = middle - CHART.zoneHeight / 2;
  return (
    <g>
      <text x={0} y={row.y + labelY} class="chart-label anchor-start">
        {row.label}
      </text>
      <text x={wordX} y={row.y + labelY} class="anchor-end">
        {row.word}
      </text>
      {row.outside.map(({ x, width }) => (
        <rect key={x} x={x} y={zoneTop} width={width} height={CHART.zoneHeight} fill={hatch} />
      ))}
      {row.limits.map((x) => (
        <path key={x} class="band-specification" d={`M${x} ${zoneTop - 2}v${CHART.zoneHeight + 4}`} />
      ))}
      {row.strip && (
        <rect class="band-strip" x={row.strip.x} y={top} width={row.strip.width} height={CHART.stripHeight} />
      )}
      {row.estimateX !== undefined && (
        <path class="figure-estimate" d={`M${row.estimateX} ${top - 3}v${CHART.stripHeight + 6}`} />
      )}
    </g>
  );
}
