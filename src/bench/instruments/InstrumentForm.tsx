import { useMemo } from 'preact/hooks';
import { BASES, INSTRUMENT_KINDS, type InstrumentEntries } from '../../instruments/instrument.ts';
import { controlId } from '../form/keys.ts';
import { LONGEST_NOTE } from '../read/spec.ts';
import { hasLoss } from './as-link.ts';
import { CalibrationFields } from './CalibrationFields.tsx';
import { type FormProps, InstrumentChoice, InstrumentText } from './InstrumentField.tsx';
import { statementLine } from './instrument-words.ts';
import { fieldPath, readInstrument } from './read-instrument.ts';
import { SheetFields } from './SheetFields.tsx';
import { instrumentStrings as strings } from './strings.ts';

/** Everything that can be typed about one instrument; what is wrong stands beside its field, and is kept all the same. */
export function InstrumentForm({ value, onChange }: Pick<FormProps, 'value' | 'onChange'>) {
  const { problems } = useMemo(() => readInstrument(value), [value]);
  const props: FormProps = { value, problems, onChange };
  const { help } = strings;
  return (
    <div class="instrument-form">
      <div class="fields">
        <InstrumentText {...props} name="label" help={help.label} class="field-double" />
        <InstrumentText {...props} name="serial" help={help.serial} />
        <InstrumentChoice {...props} name="kind" options={INSTRUMENT_KINDS} words={strings.kinds} />
        {hasLoss(value) && <InstrumentText {...props} name="loss" help={help.loss} />}
        {value.kind === 'load' && <InstrumentText {...props} name="resistance" help={help.resistance} />}
        {value.kind !== 'meter' && <InstrumentText {...props} name="rated" help={help.rated} />}
      </div>
      <BasisChoice {...props} />
      {value.basis === 'dataSheet' ? <SheetFields {...props} /> : <CalibrationFields {...props} />}
      <div class="fields">
        <InstrumentText
          {...props}
          name="calibrated"
          label={strings.dayOf[value.basis]}
          help={help.calibrated[value.basis]}
        />
        <InstrumentText {...props} name="interval" inputMode="decimal" help={help.interval} />
        <InstrumentText {...props} name="notes" rows={2} maxLength={LONGEST_NOTE} class="field-double" />
      </div>
      <p role="status">
        {problems.length === 0
          ? strings.states(statementLine(value) ?? '')
          : strings.missing(problems.map(({ label }) => label))}
      </p>
    </div>
  );
}

/** Data sheet or calibration: one of the two. */
function BasisChoice({ value, onChange }: FormProps) {
  const note = controlId(`${fieldPath('basis')}-note`);
  return (
    <fieldset class="basis" aria-describedby={note}>
      <legend>{strings.labels.basis}</legend>
      {BASES.map((basis: InstrumentEntries['basis']) => (
        <label key={basis} class="switch">
          <input
            type="radio"
            id={controlId(`${fieldPath('basis')}-${basis}`)}
            name="instrument-basis"
            value={basis}
            checked={value.basis === basis}
            onChange={() => onChange({ basis })}
          />
          {strings.bases[basis]}
        </label>
      ))}
      <p class="field-help" id={note}>
        {strings.basisNote}
      </p>
    </fieldset>
  );
}
