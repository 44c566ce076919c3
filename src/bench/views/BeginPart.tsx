import { useState } from 'preact/hooks';
import { METHODS, type MethodKind } from '../../sheet/method.ts';
import { SelectField } from '../../widgets/parts/SelectField.tsx';
import { controlId } from '../form/keys.ts';
import { strings } from '../strings.ts';
import type { PartProps } from './context.ts';

const NAMES: Readonly<Record<MethodKind, string>> = {
  padsIntoMeter: strings.setup.methods.padsIntoMeter.name,
  oscilloscope: strings.setup.methods.oscilloscope.name,
  peakDetector: strings.setup.methods.peakDetector.name,
  inLine: strings.setup.methods.inLine.name,
  dcSubstitution: strings.setup.methods.dcSubstitution.name,
};

/** An empty sheet by a method, or the club's demonstration. */
export function BeginPart({ send }: Pick<PartProps, 'send'>) {
  const [method, setMethod] = useState<MethodKind>('padsIntoMeter');
  return (
    <fieldset class="bench-part bench-begin needs-script">
      <legend>{strings.sections.begin}</legend>
      <div class="begin-row">
        <SelectField
          id={controlId('begin-method')}
          label={strings.begin.by}
          value={method}
          options={METHODS}
          words={NAMES}
          onChoice={setMethod}
        />
        <button type="button" onClick={() => send({ type: 'fresh', method })}>
          {strings.begin.fresh}
        </button>
        <button type="button" onClick={() => send({ type: 'demonstration' })}>
          {strings.begin.demonstration}
        </button>
      </div>
      <p class="field-help measure">{strings.begin.note}</p>
    </fieldset>
  );
}
