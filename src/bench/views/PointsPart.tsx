import { Folded } from '../../widgets/parts/Folded.tsx';
import { LONGEST_LABEL } from '../read/spec.ts';
import { strings } from '../strings.ts';
import { LockNote, LoggedChanges } from './AgreementNotes.tsx';
import { faultyAt, type PointProps } from './context.ts';
import { PointActions, PointChooser } from './PointChooser.tsx';
import { PointField } from './PointField.tsx';
import { ReadingsFields } from './ReadingsFields.tsx';
import { RulePart } from './RulePart.tsx';
import { SheetField } from './SheetField.tsx';
import { SpecificationFields } from './SpecificationFields.tsx';

/** The points: which one is edited, what is demanded there, by which rule, and what was read. */
export function PointsPart(props: PointProps) {
  const { entries, point, problems } = props;
  return (
    <fieldset class="bench-part">
      <legend>{strings.sections.points}</legend>
      <PointChooser {...props} />
      <h3 class="bench-sub">{strings.point.specificationOf}</h3>
      <div class="fields">
        {entries.points.length > 1 && (
          <PointField {...props} name="label" class="field-double" maxLength={LONGEST_LABEL} />
        )}
        <PointField
          {...props}
          name="frequency"
          {...(entries.method === 'oscilloscope' && { help: strings.point.frequencyNeeded })}
        />
        <SpecificationFields {...props} />
      </div>
      <LoggedChanges {...props} what={point.id} />
      <LockNote {...props} />
      <RulePart {...props} />
      <h3 class="bench-sub">{strings.point.readingsOf}</h3>
      <ReadingsFields {...props} />
      <Folded summary={strings.point.earlier} faulty={faultyAt(problems, ['scatter', 'repeats'])}>
        <p class="field-help measure">{strings.point.earlierHelp}</p>
        <div class="fields">
          <SheetField {...props} name="scatter" inputMode="decimal" />
          <SheetField {...props} name="repeats" inputMode="decimal" />
        </div>
      </Folded>
      <PointActions {...props} />
    </fieldset>
  );
}
