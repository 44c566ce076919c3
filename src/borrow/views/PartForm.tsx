import { controlId } from '../../bench/form/keys.ts';
import { SelectField } from '../../widgets/parts/SelectField.tsx';
import { strings } from '../strings.ts';
import type { PartProps } from './context.ts';
import { EntryField, EntryFields } from './EntryField.tsx';

/** Lines of a column of readings. */
const ROWS = 4;
const YES_NO = ['yes', 'no'] as const;

/** What a pad or cable at DC asks for. */
export function DcForm(props: PartProps) {
  const { entries, send } = props;
  return (
    <fieldset class="bench-part">
      <legend>{strings.sections.dc}</legend>
      <EntryFields {...props} names={['voltsIn', 'voltsOut', 'percent', 'step']} />
      <div class="fields">
        <SelectField
          id={controlId('oneMeter')}
          label={strings.labels.oneMeter}
          value={entries.oneMeter}
          options={YES_NO}
          words={strings.yesNo}
          onChoice={(oneMeter) => send({ type: 'edit', path: 'oneMeter', change: { oneMeter } })}
        />
        <EntryField {...props} name="load" />
        <EntryField {...props} name="loadPercent" />
        <EntryField {...props} name="rated" />
      </div>
    </fieldset>
  );
}

/** What a pad or cable that is swapped in and out asks for. */
export function SwapForm(props: PartProps) {
  return (
    <>
      <fieldset class="bench-part">
        <legend>{strings.sections.swap}</legend>
        <div class="fields">
          <EntryField {...props} name="without" rows={ROWS} />
          <EntryField {...props} name="with" rows={ROWS} />
        </div>
      </fieldset>
      <fieldset class="bench-part">
        <legend>{strings.sections.receiver}</legend>
        <EntryFields {...props} names={['straightness', 'sourceSwr', 'receiverSwr', 'partSwr']} />
        <EntryFields {...props} names={['scatter', 'repeats']} />
      </fieldset>
    </>
  );
}
