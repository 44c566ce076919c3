import { strings } from '../strings.ts';
import type { PartProps } from './context.ts';
import { MethodChooser } from './MethodChooser.tsx';
import { SetupFields } from './SetupFields.tsx';

/** The method, its standing caution, and what it asks for once. */
export function HowPart(props: PartProps) {
  return (
    <fieldset class="bench-part">
      <legend>{strings.sections.how}</legend>
      <MethodChooser {...props} />
      <p class="standing">
        <strong>{strings.setup.methods[props.entries.method].caution}</strong> {strings.setup.always}
      </p>
      <SetupFields {...props} />
    </fieldset>
  );
}
