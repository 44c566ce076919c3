import { INSTRUMENT_UNITS, SHEET_FORMS, TERM_READINGS } from '../../instruments/instrument.ts';
import { linkStrings } from '../form/link-strings.ts';
import { PERCENT_OF } from '../read/spec.ts';
import { type FormProps, InstrumentChoice, InstrumentText } from './InstrumentField.tsx';
import { instrumentStrings as strings } from './strings.ts';
import { methodsFor } from './units.ts';

const TERMS = ['ofReading', 'ofScale', 'fullScale', 'digits', 'step', 'floor'] as const;
const OUTSIDE = ['perKelvin', 'coldest', 'warmest', 'perYear'] as const;

/** The unit of what is stated, and what its percentages are of. */
export function UnitFields(props: FormProps) {
  return (
    <>
      <InstrumentChoice
        {...props}
        name="unit"
        options={INSTRUMENT_UNITS}
        words={strings.units}
        help={strings.help.unit}
      />
      {props.value.unit.startsWith('percent') && (
        <InstrumentChoice
          {...props}
          name="percentOf"
          options={PERCENT_OF}
          words={strings.percentsOf}
          help={linkStrings.help.percentOf}
        />
      )}
    </>
  );
}

/** The limits of a data sheet. */
export function SheetFields(props: FormProps) {
  const { form } = props.value;
  return (
    <>
      <div class="fields">
        <InstrumentChoice {...props} name="form" options={SHEET_FORMS} words={strings.forms} />
        {form === 'terms' ? (
          <InstrumentChoice {...props} name="reads" options={TERM_READINGS} words={strings.reads} />
        ) : (
          <UnitFields {...props} />
        )}
        {form === 'rectangular' && <InstrumentText {...props} name="amount" inputMode="decimal" />}
        {form === 'asymmetric' && (
          <>
            <InstrumentText {...props} name="lower" />
            <InstrumentText {...props} name="upper" />
          </>
        )}
      </div>
      {form === 'terms' && <TermFields {...props} />}
    </>
  );
}

/** A limit as data sheets add it up. */
function TermFields(props: FormProps) {
  const [method] = methodsFor(props.value);
  const unit = method && linkStrings.termUnits[method];
  return (
    <>
      <p class="field-help">{linkStrings.termsIntro}</p>
      <div class="term-fields">
        {TERMS.map((name) => (
          <InstrumentText
            key={name}
            {...props}
            name={name}
            inputMode="decimal"
            help={name === 'fullScale' || name === 'step' || name === 'floor' ? unit : undefined}
          />
        ))}
        {OUTSIDE.map((name) => (
          <InstrumentText key={name} {...props} name={name} />
        ))}
      </div>
    </>
  );
}
