import { levelTable } from '../../tables/levels.ts';
import { FieldsWidget } from '../parts/FieldsWidget.tsx';
import { useFields } from '../parts/use-fields.ts';
import { levelTableSpec } from './spec.ts';
import { strings } from './strings.ts';
import { TableGrid } from './TableGrid.tsx';
import { resistanceText, summarise } from './words.ts';

/**
 * Levels as watts and as volts across a resistance that is chosen. After using it a reader can say what a level is in volts on their own
 * line, and that without a resistance there are none.
 */
export default function LevelTable() {
  const use = useFields(levelTableSpec, undefined);
  const { values } = use.state;
  return (
    <FieldsWidget
      {...use}
      kind="plain-widget"
      spec={levelTableSpec}
      instance={undefined}
      figure={null}
      below={
        <TableGrid
          table={levelTable(values.resistance)}
          caption={strings.caption(resistanceText('shown', values))}
          label={strings.label}
        />
      }
      answers={[]}
      show={['resistance']}
      words={strings}
      summary={summarise(values)}
    />
  );
}
