import { Folded } from '../../widgets/parts/Folded.tsx';
import { SETUP_FIELDS, type SetupKey } from '../read/setup-spec.ts';
import { strings } from '../strings.ts';
import { faultyAt, type PartProps } from './context.ts';
import { SheetChoice } from './SheetChoice.tsx';
import { SheetField } from './SheetField.tsx';

const SHOWN = ['mean', 'peakEnvelope'] as const;
const YES_NO = ['yes', 'no'] as const;

/** What a method asks for once, for all points. */
export function SetupFields(props: PartProps) {
  const { method } = props.entries;
  const [inSight, folded] = SETUP_FIELDS[method];
  return (
    <>
      <div class="fields">
        {inSight.map((name) => (
          <SetupField key={name} {...props} name={name} />
        ))}
      </div>
      {folded.length > 0 && (
        <Folded summary={strings.setup.more[method]} faulty={faultyAt(props.problems, folded)}>
          <div class="fields">
            {folded.map((name) => (
              <SetupField key={name} {...props} name={name} />
            ))}
          </div>
        </Folded>
      )}
    </>
  );
}

function SetupField({ name, ...props }: PartProps & { name: SetupKey }) {
  switch (name) {
    case 'shows':
      return <SheetChoice {...props} name="shows" options={SHOWN} words={strings.setup.shown} />;
    case 'terminated':
      return <SheetChoice {...props} name="terminated" options={YES_NO} words={strings.setup.terminations} />;
    case 'curve':
      return <SheetChoice {...props} name="curve" options={YES_NO} words={strings.setup.curves} />;
    default:
      return <SheetField {...props} name={name} />;
  }
}
