import type { PointTextKey } from '../../sheet/entries.ts';
import type { ReadSpec } from '../../text/read/quantity.ts';
import { TextField } from '../../widgets/parts/TextField.tsx';
import { controlId, pointPath } from '../form/keys.ts';
import { readAs } from '../form/read-as.ts';
import { POINT_SPECS } from '../read/point-spec.ts';
import { strings } from '../strings.ts';
import { editPointText, type PointProps, problemAt } from './context.ts';

interface PointFieldProps extends PointProps {
  readonly name: PointTextKey;
  readonly help?: string;
  readonly note?: string | undefined;
  readonly inputMode?: 'text' | 'decimal';
  readonly maxLength?: number;
  readonly class?: string;
}

const SPECS: Readonly<Partial<Record<PointTextKey, ReadSpec>>> = POINT_SPECS;
const HELP: Readonly<Partial<Record<PointTextKey, string>>> = strings.point.help;

/** One text of a point, with its label, help and problem. */
export function PointField({
  name,
  point,
  problems,
  send,
  entries: _,
  help,
  note,
  ...rest
}: PointFieldProps) {
  const path = pointPath(point.id, name);
  const spec = SPECS[name];
  return (
    <TextField
      key={path}
      id={controlId(path)}
      label={strings.point.labels[name]}
      value={point[name]}
      help={help ?? HELP[name]}
      problem={problemAt(problems, path)}
      note={note ?? (spec && readAs(point[name], spec))}
      onText={(text) => send(editPointText(point.id, name, text))}
      {...rest}
    />
  );
}
