import { useMemo } from 'preact/hooks';
import { COLUMNS_OF, type ColumnName, type MethodKind } from '../../sheet/method.ts';
import { TextField } from '../../widgets/parts/TextField.tsx';
import { columnSummary } from '../column-summary.ts';
import { controlId, pointPath } from '../keys.ts';
import { strings } from '../strings.ts';
import { editPointText, type PointProps, problemAt } from './context.ts';

/** Lines of a column's field. */
const ROWS = 3;

const WORDS: Readonly<
  Record<MethodKind, Readonly<Partial<Record<ColumnName, { readonly label: string; readonly help: string }>>>>
> = strings.point.columns;

/** The columns that the method asks for at one point. */
export function ReadingsFields(props: PointProps) {
  return (
    <div class="fields">
      {COLUMNS_OF[props.entries.method].map((column) => (
        <ColumnField key={column} {...props} column={column} />
      ))}
    </div>
  );
}

/** One column, with how many readings it holds, their mean and scatter, and the one that stands off. */
function ColumnField({ entries, point, problems, send, column }: PointProps & { column: ColumnName }) {
  const { method } = entries;
  const text = point[column];
  const path = pointPath(point.id, column);
  const note = useMemo(() => columnSummary({ method, column, text }), [method, column, text]);
  const words = WORDS[method][column];
  return (
    <TextField
      key={path}
      id={controlId(path)}
      label={words?.label ?? strings.point.labels[column]}
      help={words?.help}
      value={text}
      rows={ROWS}
      note={note}
      problem={problemAt(problems, path)}
      onText={(typed) => send(editPointText(point.id, column, typed))}
    />
  );
}
