import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { defaultState } from '../../src/address/field-spec.ts';
import { UnitTree } from '../../src/figures/UnitTree.tsx';
import { type UnitTreeFrame, unitTreeMeasures } from '../../src/figures/unit-tree.frame.ts';
import { type DrawnNode, unitTreeLayout } from '../../src/figures/unit-tree.layout.ts';
import { type RootUnit, TREE_UNITS } from '../../src/sheet/unit-tree.ts';
import { foldedAll, type TreeState, treeSpec } from '../../src/widgets/unit-tree/spec.ts';
import { drawnTree } from '../../src/widgets/unit-tree/words.ts';
import { drawnTexts, letterRules, letterSize, outsideOf, touching } from './drawn-text.ts';

const frames = ['wide', 'narrow', 'stage'] as const satisfies readonly UnitTreeFrame[];
const prepared: TreeState = defaultState(treeSpec.fields);
const wholeOf = (root: RootUnit): TreeState => foldedAll({ ...prepared, root }, 'open');
/** On the wall the root is the watt, and units have their symbols alone. */
const rootsOn = (frame: UnitTreeFrame): readonly RootUnit[] =>
  frame === 'stage' ? ['watt'] : ['watt', 'volt', 'ohm', 'ampere'];
const letters = (frame: UnitTreeFrame) => (frame === 'stage' ? 'short' : 'full');
const frame = fc.constantFrom(...frames);
const anyState = fc.tuple(frame, fc.nat(3), fc.subarray([...TREE_UNITS])).map(([where, root, open]) => ({
  frame: where,
  state: {
    ...prepared,
    ...Object.fromEntries(TREE_UNITS.map((unit) => [unit, open.includes(unit) ? 'open' : 'folded'])),
    root: rootsOn(where)[root % rootsOn(where).length] ?? 'watt',
  } as TreeState,
}));
const layoutOf = (where: UnitTreeFrame, state: TreeState) =>
  unitTreeLayout({ frame: where, root: drawnTree(state, letters(where)) });
const draw = (where: UnitTreeFrame, state: TreeState): string =>
  render(
    <UnitTree
      frame={where}
      root={drawnTree(state, letters(where))}
      name="The tree"
      description="What it is made of"
    />,
  );
const nodesOf = (node: DrawnNode): readonly DrawnNode[] => [node, ...node.parts.flatMap(nodesOf)];

describe('the geometry of the tree, however it is unfolded,', () => {
  it('has a place for every node, in the order in which they are read', () => {
    fc.assert(
      fc.property(anyState, ({ frame: where, state }) => {
        const root = drawnTree(state, letters(where));
        expect(unitTreeLayout({ frame: where, root }).nodes.map(({ path }) => path)).toEqual(
          nodesOf(root).map(({ path }) => path),
        );
      }),
    );
  });

  it('lays no box, and nothing that can be pressed, on another, and keeps all within the figure', () => {
    fc.assert(
      fc.property(anyState, ({ frame: where, state }) => {
        const { nodes, measures, height } = layoutOf(where, state);
        nodes.forEach((one, index) => {
          expect(one.y - measures.box / 2).toBeGreaterThanOrEqual(0);
          expect(one.y + measures.box / 2).toBeLessThanOrEqual(height);
          if (one.kind !== 'constant') expect(one.x + measures.boxWidth).toBeLessThanOrEqual(measures.width);
          for (const other of nodes.slice(index + 1)) {
            const apart = Math.abs(one.y - other.y);
            const beside = Math.abs(one.x - other.x) >= measures.boxWidth;
            const pressed = one.unit !== undefined && other.unit !== undefined;
            expect(beside || apart > (pressed ? one.height - 1e-9 : measures.box)).toBe(true);
          }
        });
      }),
    );
  });

  it('sets parts in by one step from what they are parts of', () => {
    fc.assert(
      fc.property(anyState, ({ frame: where, state }) => {
        const { nodes, measures } = layoutOf(where, state);
        for (const { path, x } of nodes)
          expect(x).toBe(measures.margin + (path.split('/').length - 1) * measures.indent);
      }),
    );
  });

  it('leaves a node of the tree in the middle of its parts, and one of the list above them', () => {
    for (const where of frames)
      for (const root of rootsOn(where)) {
        const { nodes, measures } = layoutOf(where, wholeOf(root));
        for (const { path, y } of nodes) {
          const parts = nodes.filter(({ path: of }) => of.replace(/\/[^/]*$/, '') === path && of !== path);
          if (parts.length === 0) continue;
          const ys = parts.map((part) => part.y);
          if (measures.form === 'list') expect(y).toBeLessThan(Math.min(...ys));
          else expect(y).toBe((Math.min(...ys) + Math.max(...ys)) / 2);
        }
      }
  });

  it('has a line to every node but the root', () => {
    fc.assert(
      fc.property(anyState, ({ frame: where, state }) => {
        const { nodes, edges } = layoutOf(where, state);
        for (const { x, y, path } of nodes)
          if (path.includes('/'))
            expect(edges.includes(`${y}H${x}`) || edges.includes(`V${y}H${x}`), `${where}: ${path}`).toBe(
              true,
            );
      }),
    );
  });

  it('grows downwards only with what is unfolded', () => {
    const folded = layoutOf('narrow', foldedAll({ ...prepared, root: 'ohm' }, 'folded')).height;
    expect(layoutOf('narrow', wholeOf('ohm')).height).toBeGreaterThan(folded);
    expect(layoutOf('wide', { ...wholeOf('watt'), watt: 'folded' }).nodes).toHaveLength(1);
  });
});

describe('what can be pressed', () => {
  it('is 44 pixels high at least, on a phone of 320 pixels as well', () => {
    const room = 320 - 2 * 0.9 * 16;
    const narrow = unitTreeMeasures('narrow');
    expect((narrow.pressed * room) / narrow.width).toBeGreaterThanOrEqual(44);
    expect(unitTreeMeasures('wide').pressed).toBeGreaterThanOrEqual(44);
  });

  it('is every unit that is drawn out, and nothing else', () => {
    const markup = draw('wide', wholeOf('ohm'));
    const pressed = [...markup.matchAll(/data-unit="(\w+)"/g)].map(([, unit]) => unit);
    expect(pressed.toSorted()).toEqual(TREE_UNITS.toSorted());
  });
});

describe.each(frames)('letters, %s,', (where) => {
  const size = letterSize(
    { wide: '.plot text', narrow: '.plot-narrow text', stage: '.plot-stage text' }[where],
  );

  it.each(rootsOn(where))('run into nothing and are not cut off in the whole tree of the %s', (root) => {
    const markup = draw(where, wholeOf(root)).replace(/<\/?tspan[^>]*>/g, '');
    const texts = drawnTexts(markup, { size, middle: /anchor-middle/ });
    expect(texts.length).toBeGreaterThan(3);
    expect(touching(texts)).toEqual([]);
    expect(outsideOf(markup, texts, 1)).toEqual([]);
  });

  it.each(rootsOn(where))('stay within their box, beside its sign, in the whole tree of the %s', (root) => {
    const { measures, nodes } = layoutOf(where, wholeOf(root));
    for (const { kind, symbol, name } of nodes) {
      if (kind === 'constant') continue;
      const length = (symbol.length + (name === '' ? 0 : name.length + 1)) * 0.52 * size;
      const sign = kind === 'again' ? 0 : 3 * measures.stroke;
      expect(measures.inset + length + sign, symbol).toBeLessThanOrEqual(measures.boxWidth);
    }
  });
});

it('letters are at least 12 pixels high on a phone of 320 pixels', () => {
  const room = 320 - 2 * 0.9 * 16;
  for (const [selector, px] of letterRules())
    if (selector.startsWith('.plot-narrow'))
      expect((px * room) / unitTreeMeasures('narrow').width).toBeGreaterThanOrEqual(12);
});

describe('the tree of units', () => {
  const states: Readonly<Record<string, TreeState>> = {
    'as it is met': prepared,
    'the whole watt': wholeOf('watt'),
    'the whole ohm': wholeOf('ohm'),
    'an ampere, its second folded': { ...prepared, root: 'ampere' },
  };

  it.each(Object.keys(states))('is drawn as it was before: %s', (name) => {
    const state = states[name] ?? prepared;
    expect(draw('wide', state).replaceAll('><', '>\n<')).toMatchSnapshot();
    expect(draw('narrow', state).replaceAll('><', '>\n<')).toMatchSnapshot();
  });

  it('draws finite numbers only, asks for no style, and has a name and a description', () => {
    for (const where of frames)
      for (const root of rootsOn(where)) {
        const markup = draw(where, wholeOf(root));
        expect(markup).not.toMatch(/NaN|Infinity|undefined| style=/);
        expect(markup).toMatch(/role="img" aria-labelledby="(\S+)t" aria-describedby="\1d"/);
      }
  });

  it('has a plus where a unit is folded and a minus where it is open', () => {
    const signs = (state: TreeState): readonly boolean[] =>
      [...draw('wide', state).matchAll(/class="plot-step" d="([^"]*)"/g)].map(([, d = '']) => /v/.test(d));
    expect(signs(prepared)).toEqual([false, true, true]);
    expect(signs(wholeOf('watt')).includes(true)).toBe(false);
  });
});
