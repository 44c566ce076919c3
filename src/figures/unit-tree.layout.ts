import { type UnitTreeFrame, type UnitTreeMeasures, unitTreeMeasures } from './unit-tree.frame.ts';

/** A node as it is drawn: what it is, and what stands below it. */
export interface DrawnNode {
  readonly path: string;
  /** What is pressed to unfold or to fold it; absent where nothing can be. */
  readonly unit?: string;
  readonly kind: 'constant' | 'folded' | 'open' | 'again';
  /** Its symbol with its power, and its name. */
  readonly symbol: string;
  readonly name: string;
  readonly parts: readonly DrawnNode[];
}

export interface UnitTreeProps {
  readonly frame: UnitTreeFrame;
  readonly root: DrawnNode;
}

/** A node with its place: the left of its box and the middle of its row. */
export interface PlacedNode extends DrawnNode {
  readonly x: number;
  readonly y: number;
  /** Height of what can be pressed. */
  readonly height: number;
}

export interface UnitTreeDrawing {
  readonly measures: UnitTreeMeasures;
  readonly height: number;
  readonly nodes: readonly PlacedNode[];
  /** Lines from each node to its parts. */
  readonly edges: string;
}

/** Where every node of a tree stands, and the lines between them. The same tree always has the same places. */
export function unitTreeLayout({ frame, root }: UnitTreeProps): UnitTreeDrawing {
  const measures = unitTreeMeasures(frame);
  return measures.form === 'list' ? listLayout(measures, root) : treeLayout(measures, root);
}

/** Left to right: each end of a branch has a row of its own, and a node stands in the middle of its parts. */
function treeLayout(measures: UnitTreeMeasures, root: DrawnNode): UnitTreeDrawing {
  const { margin, indent, row, boxWidth, pressed } = measures;
  const nodes: PlacedNode[] = [];
  let edges = '';
  let rows = 0;
  const place = (node: DrawnNode, depth: number): number => {
    const x = margin + depth * indent;
    const at = nodes.length;
    const ys = node.parts.map((part) => place(part, depth + 1));
    const y = ys.length > 0 ? (Math.min(...ys) + Math.max(...ys)) / 2 : margin + row * (rows++ + 0.5);
    nodes.splice(at, 0, { ...node, x, y, height: pressed });
    const turn = x + boxWidth + (indent - boxWidth) / 2;
    if (ys.length > 0) edges += `M${x + boxWidth} ${y}H${turn}`;
    for (const partY of ys) edges += `M${turn} ${y}V${partY}H${x + indent}`;
    return y;
  };
  place(root, 0);
  return { measures, height: 2 * margin + rows * row, nodes, edges };
}

/** Downwards: a row for each node, set in by its depth, with a line from each node down to its parts. */
function listLayout(measures: UnitTreeMeasures, root: DrawnNode): UnitTreeDrawing {
  const { margin, indent, row, pressed, box } = measures;
  const nodes: PlacedNode[] = [];
  let edges = '';
  let top = margin;
  const place = (node: DrawnNode, depth: number): number => {
    const height = node.unit === undefined ? row : pressed;
    const [x, y] = [margin + depth * indent, top + height / 2];
    top += height;
    nodes.push({ ...node, x, y, height });
    const ys = node.parts.map((part) => place(part, depth + 1));
    const trunk = x + indent / 2;
    const last = ys.at(-1);
    if (last !== undefined) edges += `M${trunk} ${y + box / 2}V${last}`;
    for (const partY of ys) edges += `M${trunk} ${partY}H${x + indent}`;
    return y;
  };
  place(root, 0);
  return { measures, height: top + margin, nodes, edges };
}
