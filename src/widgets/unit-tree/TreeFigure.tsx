import { UnitTree } from '../../figures/UnitTree.tsx';
import type { UnitTreeFrame } from '../../figures/unit-tree.frame.ts';
import { isTreeUnit, type TreeUnit } from '../../sheet/unit-tree.ts';
import type { Fold, TreeState } from './spec.ts';
import { strings } from './strings.ts';
import { drawnTree, summarise } from './words.ts';

interface TreeFigureProps {
  readonly state: TreeState;
  readonly place?: 'page' | 'stage';
  /** Without script the whole tree is drawn, since nothing can be unfolded. */
  readonly whole?: boolean;
  readonly onFold?: (unit: TreeUnit, fold: Fold) => void;
}

const FRAMES: Readonly<Record<'page' | 'stage', readonly UnitTreeFrame[]>> = {
  page: ['wide', 'narrow'],
  stage: ['stage'],
};

/** The tree as far as it is unfolded; a box that is pressed unfolds or folds. The buttons of the table are the first road to that. */
export function TreeFigure({ state, place = 'page', whole = false, onFold }: TreeFigureProps) {
  const root = drawnTree(state, place === 'stage' ? 'short' : 'full');
  const press = {
    onClick: ({ target }: MouseEvent): void => {
      const unit =
        target instanceof Element ? target.closest<SVGGElement>('[data-unit]')?.dataset.unit : undefined;
      if (unit !== undefined && isTreeUnit(unit)) onFold?.(unit, state[unit] === 'open' ? 'folded' : 'open');
    },
  };
  return (
    <div class={`plot-place plot-place-${place} ${whole ? 'no-script-only' : 'tree-live'}`} {...press}>
      {FRAMES[place].map((frame) => (
        <UnitTree
          key={frame}
          frame={frame}
          root={root}
          name={strings.name}
          description={strings.description(summarise(state))}
        />
      ))}
    </div>
  );
}
