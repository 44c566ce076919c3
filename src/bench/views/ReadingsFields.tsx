import { useMemo } from 'preact/hooks';
import { COLUMNS_OF, type ColumnName, type MethodKind } from '../../sheet/method.ts';
import { TextField } from '../../widgets/parts/TextField.tsx';
import { columnOutlier, columnSummary, type TypedColumn } from '../form/column-summary.ts';
import { controlId, pointPath } from '../form/keys.ts';
import { columnTexts } from '../read/column-texts.ts';
import { strings } from '../strings.ts';
import { editPointText, type PointProps, problemAt } from './context.ts';

/** Lines of a column's field. */
const ROWS = 3;

const WORDS: Readonly<
  Record<MethodKind, Readonly<Partial<Record<ColumnName, { readonly label: string; readonly help: string }>>>>
> = strings.point.columns;

/** The columns that the method asks for at one point; all of them may have been pasted at once into the first. */
export function ReadingsFields(props: PointProps) {
  const { point, entries } = props;
  const pasted = columnTexts(point, entries.method);
  const understood = new Map(pasted.clear ? pasted.texts : []);
  const columns = COLUMNS_OF[entries.method].map((column) => ({
    column,
    understood: understood.get(column) ?? '',
  }));
  return (
    <>
      <div class="fields">
        {columns.map((one) => (
          <ColumnField key={one.column} {...props} {...one} />
        ))}
      </div>
      {columns.map(({ column, understood: text }) => (
        <Outlier key={column} method={entries.method} column={column} text={text} />
      ))}
    </>
  );
}

/** The reading of a column that stands off: pointed at, never taken out. */
function Outlier({ method, column, text }: TypedColumn) {
  const sentence = useMemo(() => columnOutlier({ method, column, text }), [method, column, text]);
  return sentence === undefined ? null : <p class="outlier measure">{sentence}</p>;
}

interface ColumnFieldProps extends PointProps {
  readonly column: ColumnName;
  /** The text of this column, wherever it was pasted. */
  readonly understood: string;
}

/** One column, with how many readings it holds, their mean and scatter. */
function ColumnField({ entries, point, problems, send, column, understood }: ColumnFieldProps) {
  const { method } = entries;
  const path = pointPath(point.id, column);
  const note = useMemo(
    () => columnSummary({ method, column, text: understood }),
    [method, column, understood],
  );
  const words = WORDS[method][column];
  return (
    <TextField
      key={path}
      id={controlId(path)}
      label={words?.label ?? strings.point.labels[column]}
      help={words?.help}
      value={point[column]}
      rows={ROWS}
      note={note}
      problem={problemAt(problems, path)}
      onText={(typed) => send(editPointText(point.id, column, typed))}
    />
  );
}
