import { powerText } from '../text/power-text.ts';
import { numberText } from '../text/quantity-text.ts';
import {
  type LevelDiagramProps,
  type LevelDrawing,
  type LevelRowDrawing,
  levelDiagramLayout,
} from './level-diagram.layout.ts';
import { NamedSvg } from './NamedSvg.tsx';
import { PullHandle } from './PullHandle.tsx';

export interface LevelDiagramViewProps extends LevelDiagramProps {
  /** Name of the figure and what it shows now, for those who do not see it. */
  readonly name: string;
  readonly description: string;
}

/**
 * Levels down a line as a staircase: to the left what takes away, to the right what adds. Watts above, dBm below. A firm line with
 * barbs is what a part stands at its input, the barbs on the side where it is safe.
 */
export function LevelDiagram(props: LevelDiagramViewProps) {
  const drawing = levelDiagramLayout(props);
  return (
    <NamedSvg class={`plot plot-${props.frame}`} size={drawing} of={props}>
      <LevelAxes drawing={drawing} />
      {drawing.ghost && <path class="plot-ghost" d={drawing.ghost} />}
      {drawing.left && <path class="plot-slipped plot-step" d={drawing.left} />}
      <path class="plot-step" d={drawing.stairs} />
      {drawing.rows.map((row) => (
        <Row key={row.row.id} drawing={row} measures={drawing.measures} />
      ))}
    </NamedSvg>
  );
}

function LevelAxes({ drawing }: { drawing: LevelDrawing }) {
  const { axisTop, axisBottom, measures, levels, powers } = drawing;
  const [x0, x1] = measures.axis;
  const beside = measures.unitBeside;
  const stubs = (xs: readonly { x: number }[], y: number, length: number): string =>
    xs.map(({ x }) => `M${x} ${y}v${length}`).join('');
  return (
    <g>
      <path
        class="plot-axis"
        d={`M${x0} ${axisTop}H${x1}M${x0} ${axisBottom}H${x1}${stubs(powers, axisTop, -6)}${stubs(levels, axisBottom, 6)}`}
      />
      {powers.map(
        ({ value, x, named }) =>
          named && (
            <text key={value} x={x} y={axisTop - 12} class="plot-tick anchor-middle">
              {powerText('shown', { powerW: value, digits: 1 })}
            </text>
          ),
      )}
      {levels.map(
        ({ value, x, named }) =>
          named && (
            <text key={value} x={x} y={axisBottom + measures.tickDrop} class="plot-tick anchor-middle">
              {numberText('shown', { value, decimals: 0 })}
            </text>
          ),
      )}
      <text
        x={beside ? x1 + measures.tickRoom / 2 : x1}
        y={axisBottom + measures.tickDrop + (beside ? 0 : 18)}
        class={beside ? 'plot-unit' : 'plot-unit anchor-end'}
      >
        dBm
      </text>
    </g>
  );
}

/** How far a limit reaches above and below its step. */
const LIMIT_REACH = 17;

function Row({ drawing, measures }: { drawing: LevelRowDrawing; measures: LevelDrawing['measures'] }) {
  const { row, y, toX, limitX, slippedX } = drawing;
  const middle = y + measures.stepY;
  return (
    <g>
      <text x={measures.labelX} y={y + measures.labelY} class="plot-strong">
        {row.label}
      </text>
      {measures.showDetail && (
        <text
          x={measures.labelX}
          y={y + measures.detailY}
          class={row.over ? 'plot-detail plot-strong' : 'plot-detail'}
        >
          {row.detail}
        </text>
      )}
      <text x={measures.numberX} y={y + measures.numberY} class="anchor-end">
        {row.number}
      </text>
      {limitX !== undefined && (
        <path
          class="plot-limit"
          d={`M${limitX} ${middle - LIMIT_REACH}v${2 * LIMIT_REACH}M${limitX} ${middle - 9}l-7 4M${limitX} ${middle + 5}l-7 4`}
        />
      )}
      {slippedX !== undefined && (
        <path class="plot-mark plot-slipped" d={`M${slippedX} ${middle - LIMIT_REACH}v${2 * LIMIT_REACH}`} />
      )}
      {!row.handle && <circle class="plot-dot" cx={toX} cy={middle} r="5" />}
      {row.handle && <PullHandle id={row.id} x={toX} y={middle} radius={measures.handleRadius} along="x" />}
    </g>
  );
}
