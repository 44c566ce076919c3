import { controlId } from '../../bench/form/keys.ts';
import { SelectField } from '../../widgets/parts/SelectField.tsx';
import { ALONGS, LENDER_FORMS } from '../entries.ts';
import { strings } from '../strings.ts';
import type { PartProps } from './context.ts';
import { EntryFields } from './EntryField.tsx';

/** What an alternation with a lent instrument asks for beside its readings. */
export function InstrumentForm(props: PartProps) {
  const { entries, send } = props;
  return (
    <>
      <fieldset class="bench-part">
        <legend>{strings.sections.lender}</legend>
        <div class="fields">
          <SelectField
            id={controlId('stated')}
            label={strings.labels.stated}
            value={entries.stated}
            options={LENDER_FORMS}
            words={strings.statedForms}
            onChoice={(stated) => send({ type: 'edit', path: 'stated', change: { stated } })}
          />
        </div>
        <EntryFields
          {...props}
          names={entries.stated === 'expanded' ? ['amount', 'factor', 'lenderDrift'] : ['amount']}
        />
      </fieldset>
      <fieldset class="bench-part">
        <legend>{strings.sections.influences}</legend>
        <EntryFields {...props} names={['resolution', 'temperature', 'mismatch', 'other']} />
        <EntryFields {...props} names={['scatter', 'repeats']} />
      </fieldset>
      <fieldset class="bench-part">
        <legend>{strings.sections.claim}</legend>
        <EntryFields {...props} names={['claimed']} />
      </fieldset>
      <fieldset class="bench-part">
        <legend>{strings.sections.later}</legend>
        <EntryFields
          {...props}
          names={[
            'later',
            ...(entries.along === 'frequency' ? (['laterAt'] as const) : []),
            'laterTemperature',
            'laterMismatch',
            'linearity',
          ]}
        />
      </fieldset>
    </>
  );
}

/** What the places of a calibration differ by. */
export function AlongField({ entries, send }: PartProps) {
  return (
    <SelectField
      id={controlId('along')}
      label={strings.labels.along}
      value={entries.along}
      options={ALONGS}
      words={strings.alongs}
      onChoice={(along) => send({ type: 'edit', path: 'along', change: { along } })}
    />
  );
}
