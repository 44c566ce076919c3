import { constantsOf, type DefiningConstant, partsOf, type SiUnit } from '#compute';

/** The units from which the tree may be unfolded: those of a power measured by volts across a load. */
export type RootUnit = 'watt' | 'volt' | 'ohm' | 'ampere';

/** Every unit that stands in one of the trees, the electrical ones first. */
export const TREE_UNITS = [
  'watt',
  'volt',
  'ohm',
  'ampere',
  'joule',
  'newton',
  'kilogram',
  'metre',
  'second',
] as const satisfies readonly SiUnit[];
export type TreeUnit = (typeof TREE_UNITS)[number];

/** A place in the tree: a unit or a constant with its power in what stands before it. */
export interface UnitNode {
  /** Its way from the root: `watt/joule/newton`. A unit stands once in any other's definition. */
  readonly path: string;
  readonly of: TreeUnit | DefiningConstant;
  readonly power: number;
  /** A constant ends the branch; a unit is folded, or open; or it is drawn out elsewhere, once being enough. */
  readonly kind: 'constant' | 'folded' | 'open' | 'again';
  readonly parts: readonly UnitNode[];
}

export const isTreeUnit = (of: string): of is TreeUnit => (TREE_UNITS as readonly string[]).includes(of);

interface Found {
  readonly path: string;
  readonly of: TreeUnit;
}

/** Where each unit that can be seen is drawn out: where it stands nearest to the root. */
function places(root: TreeUnit, isOpen: (unit: TreeUnit) => boolean): ReadonlyMap<TreeUnit, string> {
  const at = new Map<TreeUnit, string>();
  let row: readonly Found[] = [{ path: root, of: root }];
  while (row.length > 0) {
    const next: Found[] = [];
    for (const { path, of } of row) {
      if (at.has(of)) continue;
      at.set(of, path);
      if (!isOpen(of)) continue;
      for (const { of: part } of partsOf(of))
        if (isTreeUnit(part)) next.push({ path: `${path}/${part}`, of: part });
    }
    row = next;
  }
  return at;
}

/** The tree of a unit as far as it is unfolded. Each unit is drawn out once, where it stands nearest to the root. */
export function unitTree(root: RootUnit, isOpen: (unit: TreeUnit) => boolean): UnitNode {
  const at = places(root, isOpen);
  const node = (of: TreeUnit | DefiningConstant, power: number, path: string): UnitNode => {
    if (!isTreeUnit(of)) return { path, of, power, kind: 'constant', parts: [] };
    if (at.get(of) !== path) return { path, of, power, kind: 'again', parts: [] };
    if (!isOpen(of)) return { path, of, power, kind: 'folded', parts: [] };
    const parts = partsOf(of).map((part) => {
      const name = treeName(part.of);
      return node(name, part.power, `${path}/${name}`);
    });
    return { path, of, power, kind: 'open', parts };
  };
  return node(root, 1, root);
}

/** @throws RangeError for a unit that stands in no tree of these: none has kelvin or coulomb in it. */
function treeName(of: SiUnit | DefiningConstant): TreeUnit | DefiningConstant {
  if (of === 'kelvin' || of === 'coulomb')
    throw new RangeError(`unitTree: a part must be a unit of the tree or a constant, got ${of}`);
  return of;
}

/** Every node, from the root down and part by part: the order in which they are read. */
export const nodesOf = (node: UnitNode): readonly UnitNode[] => [node, ...node.parts.flatMap(nodesOf)];

/** Units of a tree, nearest to the root first: each can be unfolded once those before it are. */
export const nearestFirst = (root: RootUnit): readonly TreeUnit[] => [...places(root, () => true).keys()];

/** The units to unfold, from the root on, so that a unit of its tree is seen with what it is made of; none for a unit of another tree. */
export const wayTo = (root: RootUnit, unit: TreeUnit): readonly TreeUnit[] =>
  (places(root, () => true).get(unit) ?? '').split('/').filter(isTreeUnit);

/** Units below a root, in the order in which the whole tree is read, and the constants that are met on the way. */
export function everythingIn(root: RootUnit): {
  readonly units: readonly TreeUnit[];
  readonly constants: readonly DefiningConstant[];
} {
  const all = [...new Set(nodesOf(unitTree(root, () => true)).map(({ of }) => of))];
  return {
    units: all.filter((of): of is TreeUnit => isTreeUnit(of)),
    constants: all.filter((of): of is DefiningConstant => !isTreeUnit(of)),
  };
}

/** Constants that are met on the way down from a unit and cancel: their powers add up to nothing. */
export function cancelled(root: RootUnit): readonly DefiningConstant[] {
  const left = constantsOf(root);
  return everythingIn(root).constants.filter((constant) => !left.has(constant));
}

/** Powers with which a constant is met, place by place, below a unit: the speed of light in a watt −2, 1 and 1. */
export function powersMet(root: RootUnit, constant: DefiningConstant): readonly number[] {
  const below = (unit: TreeUnit, power: number): readonly number[] =>
    partsOf(unit).flatMap((part) => {
      const name = treeName(part.of);
      if (isTreeUnit(name)) return below(name, power * part.power);
      return name === constant ? [power * part.power] : [];
    });
  return below(root, 1);
}
