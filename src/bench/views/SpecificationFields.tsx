import { SPECIFICATION_FORMS } from '../../sheet/entries.ts';
import { SelectField } from '../../widgets/parts/SelectField.tsx';
import { controlId, pointPath } from '../form/keys.ts';
import { limitsAs } from '../form/read-as.ts';
import { MAY_BE_EMPTY, SPECIFICATION_KEYS } from '../read/point-spec.ts';
import { strings } from '../strings.ts';
import type { PointProps } from './context.ts';
import { PointField } from './PointField.tsx';

/** The field whose note says what limits the form comes to. */
const LAST = { around: 'tolerance', uneven: 'below' } as const;

/** What is demanded at a point. */
export function SpecificationFields(props: PointProps) {
  const { point, send } = props;
  const { specification } = point;
  const path = pointPath(point.id, 'specification');
  const last = specification === 'around' || specification === 'uneven' ? LAST[specification] : undefined;
  return (
    <>
      <SelectField
        key={path}
        id={controlId(path)}
        label={strings.point.labels.specification}
        help={strings.point.specificationHelp[specification]}
        value={specification}
        options={SPECIFICATION_FORMS}
        words={strings.point.specifications}
        onChoice={(chosen) =>
          send({ type: 'editPoint', id: point.id, path, change: { specification: chosen } })
        }
      />
      {SPECIFICATION_KEYS[specification].map((name) => (
        <PointField
          key={name}
          {...props}
          name={name}
          {...(name === last && { note: limitsAs(point) })}
          {...(MAY_BE_EMPTY[specification]?.includes(name) && { help: strings.point.nominalBetween })}
        />
      ))}
    </>
  );
}
