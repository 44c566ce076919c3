import { everythingIn, nodesOf, type TreeUnit } from '../../sheet/unit-tree.ts';
import { ownText } from './own.ts';
import { constantText, inConstants, partsText } from './product.ts';
import type { Fold, TreeState } from './spec.ts';
import { strings } from './strings.ts';
import { treeOf } from './words.ts';

interface TableProps {
  readonly state: TreeState;
  readonly onFold: (unit: TreeUnit, fold: Fold) => void;
}

/** The whole tree as a table, whatever is unfolded above: on paper and without script it is all there. */
export function UnitTable({ state, onFold }: TableProps) {
  const { units, constants } = everythingIn(state.root);
  const open = new Set(nodesOf(treeOf(state)).flatMap(({ of, kind }) => (kind === 'open' ? [of] : [])));
  const { caption, unit, parts, constants: inThem, own, fixed } = strings.table;
  return (
    <table class="rungs unit-table">
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">{unit}</th>
          <th scope="col">{parts}</th>
          <th scope="col">{inThem}</th>
          <th scope="col">{own}</th>
        </tr>
      </thead>
      <tbody>
        {units.map((of) => (
          <UnitRow key={of} unit={of} open={open.has(of)} state={state} onFold={onFold} />
        ))}
        {constants.map((of) => (
          <tr key={of}>
            <th scope="row">{`${strings.constantNames[of].symbol}\u00a0${strings.constantNames[of].name}`}</th>
            <td colSpan={3}>{fixed(constantText('shown', of))}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

interface RowProps extends TableProps {
  readonly unit: TreeUnit;
  /** Whether it can be seen with what it is made of. */
  readonly open: boolean;
}

function UnitRow({ unit, open, state, onFold }: RowProps) {
  const { symbol, name } = strings.unitNames[unit];
  return (
    <tr>
      <th scope="row">
        {`${symbol}\u00a0${name} `}
        <button
          type="button"
          class="needs-script"
          aria-expanded={open}
          onClick={() => onFold(unit, open ? 'folded' : 'open')}
        >
          {open ? strings.table.fold : strings.table.unfold}
          <span class="visually-hidden">{` ${name}`}</span>
        </button>
      </th>
      <td data-label={strings.table.parts}>{partsText('shown', unit)}</td>
      <td data-label={strings.table.constants}>{inConstants('shown', { unit })}</td>
      <td data-label={strings.table.own}>{ownText('shown', state, unit)}</td>
    </tr>
  );
}
