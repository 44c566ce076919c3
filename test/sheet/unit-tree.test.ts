import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { constantsOf, partsOf } from '#compute';
import {
  cancelled,
  everythingIn,
  isTreeUnit,
  nearestFirst,
  nodesOf,
  powersMet,
  type RootUnit,
  TREE_UNITS,
  type TreeUnit,
  type UnitNode,
  unitTree,
  wayTo,
} from '../../src/sheet/unit-tree.ts';

const ROOTS: readonly RootUnit[] = ['watt', 'volt', 'ohm', 'ampere'];
const root = fc.constantFrom(...ROOTS);
const open = fc.subarray([...TREE_UNITS]);
const treeOf = (of: RootUnit, units: readonly TreeUnit[]): UnitNode =>
  unitTree(of, (unit) => units.includes(unit));
const whole = (of: RootUnit): UnitNode => treeOf(of, TREE_UNITS);
const depthOf = ({ path }: UnitNode): number => path.split('/').length;

describe('the tree, however it is unfolded,', () => {
  it('draws each unit out once, where it stands nearest to the root', () => {
    fc.assert(
      fc.property(root, open, (of, units) => {
        const nodes = nodesOf(treeOf(of, units));
        for (const unit of TREE_UNITS) {
          const all = nodes.filter((node) => node.of === unit);
          const drawn = all.filter(({ kind }) => kind !== 'again');
          expect(drawn.length).toBe(all.length > 0 ? 1 : 0);
          for (const other of all) expect(depthOf(other)).toBeGreaterThanOrEqual(depthOf(drawn[0] ?? other));
        }
      }),
    );
  });

  it('shows below an open unit what it is made of, with its powers, and nothing below any other node', () => {
    fc.assert(
      fc.property(root, open, (of, units) => {
        for (const node of nodesOf(treeOf(of, units)))
          if (node.kind === 'open' && isTreeUnit(node.of))
            expect(node.parts.map((part) => ({ of: part.of, power: part.power }))).toEqual(partsOf(node.of));
          else expect(node.parts).toEqual([]);
      }),
    );
  });

  it('has a place of its own for every node', () => {
    fc.assert(
      fc.property(root, open, (of, units) => {
        const paths = nodesOf(treeOf(of, units)).map(({ path }) => path);
        expect(new Set(paths).size).toBe(paths.length);
      }),
    );
  });

  it('can be unfolded unit by unit, nearest to the root first: each next one can be seen', () => {
    for (const of of ROOTS) {
      const order = nearestFirst(of);
      order.forEach((unit, count) => {
        const seen = nodesOf(treeOf(of, order.slice(0, count)));
        expect(
          seen.some((node) => node.of === unit && node.kind === 'folded'),
          `${of}: ${unit}`,
        ).toBe(true);
      });
      expect(nodesOf(treeOf(of, order)).some(({ kind }) => kind === 'folded')).toBe(false);
    }
  });
});

describe('the way to a unit', () => {
  it('unfolded shows that unit with what it is made of, and begins at the root', () => {
    for (const of of ROOTS)
      for (const unit of everythingIn(of).units) {
        const way = wayTo(of, unit);
        expect([way[0], way.at(-1)]).toEqual([of, unit]);
        const seen = nodesOf(treeOf(of, way));
        expect(
          seen.some((node) => node.of === unit && node.kind === 'open'),
          `${of}: ${unit}`,
        ).toBe(true);
      }
  });

  it('is none to a unit of another tree', () => {
    expect(wayTo('ampere', 'kilogram')).toEqual([]);
    expect(wayTo('watt', 'kilogram')).toEqual(['watt', 'joule', 'newton', 'kilogram']);
  });
});

describe('the whole tree', () => {
  it('of a watt has these branches (SI Brochure, 9th edition, 2.3.1 and table 4)', () => {
    const drawn = ({ of, power, kind, parts }: UnitNode): string =>
      `${of}${power === 1 ? '' : `^${power}`}${kind === 'again' ? '*' : ''}${parts.length > 0 ? `(${parts.map(drawn).join(' ')})` : ''}`;
    expect(drawn(whole('watt'))).toBe(
      'watt(joule(newton(kilogram(planck metre^-2* second*) metre* second^-2*) metre(lightSpeed second*)) second^-1(caesiumFrequency^-1))',
    );
    expect(drawn(whole('ampere'))).toBe('ampere(elementaryCharge second^-1(caesiumFrequency^-1))');
  });

  it('counts every unit and constant once', () => {
    expect(everythingIn('watt')).toEqual({
      units: ['watt', 'joule', 'newton', 'kilogram', 'metre', 'second'],
      constants: ['planck', 'lightSpeed', 'caesiumFrequency'],
    });
    expect(everythingIn('ohm').units.toSorted()).toEqual(TREE_UNITS.toSorted());
    for (const of of ROOTS) expect(everythingIn(of).units.toSorted()).toEqual(nearestFirst(of).toSorted());
  });
});

describe('what cancels', () => {
  it('is the speed of light, in an ohm the second as well, in an ampere nothing', () => {
    expect(ROOTS.map(cancelled)).toEqual([
      ['lightSpeed'],
      ['lightSpeed'],
      ['lightSpeed', 'caesiumFrequency'],
      [],
    ]);
  });

  it('is met with powers that add up to nothing; what is left, to its power in the unit', () => {
    for (const of of ROOTS)
      for (const constant of everythingIn(of).constants) {
        const sum = powersMet(of, constant).reduce((total, power) => total + power, 0);
        expect(sum, `${of}: ${constant}`).toBe(constantsOf(of).get(constant) ?? 0);
      }
  });

  it('is met three times in a watt: in the kilogram upside down, and in two metres', () => {
    expect(powersMet('watt', 'lightSpeed')).toEqual([-2, 1, 1]);
    expect(powersMet('watt', 'elementaryCharge')).toEqual([]);
    expect(powersMet('ohm', 'elementaryCharge')).toEqual([-1, -1]);
  });
});
