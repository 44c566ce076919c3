import { NamedSvg } from './NamedSvg.tsx';
import type { UnitTreeMeasures } from './unit-tree.frame.ts';
import { type PlacedNode, type UnitTreeProps, unitTreeLayout } from './unit-tree.layout.ts';

export interface UnitTreeViewProps extends UnitTreeProps {
  /** Name of the figure and what it shows now, for those who do not see it. */
  readonly name: string;
  readonly description: string;
}

/** A unit with what it is made of, part by part, down to the constants. A group with `data-unit` is there to be pressed. */
export function UnitTree(props: UnitTreeViewProps) {
  const { measures, height, nodes, edges } = unitTreeLayout(props);
  return (
    <NamedSvg
      class={`plot plot-${props.frame} unit-tree`}
      size={{ width: measures.width, height }}
      of={props}
    >
      <path class="plot-axis" d={edges} />
      {nodes.map((node) => (
        <Node key={node.path} {...{ node, measures }} />
      ))}
    </NamedSvg>
  );
}

interface NodeProps {
  readonly node: PlacedNode;
  readonly measures: UnitTreeMeasures;
}

/** One node: a box for a unit, a dashed one where it is drawn out elsewhere, bold letters in none for a constant. */
function Node({ node, measures }: NodeProps) {
  const { x, y, unit, kind, symbol, name } = node;
  const { box, boxWidth, inset, drop } = measures;
  const letters = (
    <text x={x + inset} y={y + drop}>
      <tspan class="plot-strong">{symbol}</tspan>
      {name !== '' && `\u00a0${name}`}
    </text>
  );
  if (kind === 'constant') return letters;
  const rect = (
    <rect
      class={`tree-box tree-${kind}`}
      x={x}
      y={y - box / 2}
      width={boxWidth}
      height={box}
      rx={kind === 'again' ? 0 : 3}
    />
  );
  if (unit === undefined)
    return (
      <g>
        {rect}
        {letters}
      </g>
    );
  return (
    <g class="tree-unit" data-unit={unit}>
      {rect}
      {letters}
      <path class="plot-step" d={signOf(node, measures)} />
      <rect class="pull-grip" x={x} y={y - node.height / 2} width={boxWidth} height={node.height} />
    </g>
  );
}

/** A plus where a unit can be unfolded, a minus where it can be folded, at the right of its box. */
function signOf({ x, y, kind }: PlacedNode, { boxWidth, stroke }: UnitTreeMeasures): string {
  const middle = x + boxWidth - 2 * stroke;
  const across = `M${middle - stroke} ${y}h${2 * stroke}`;
  return kind === 'open' ? across : `${across}M${middle} ${y - stroke}v${2 * stroke}`;
}
