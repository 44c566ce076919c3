import { CALIBRATED_FROM, CORRECTED_BY } from '../../instruments/instrument.ts';
import { isCorrected } from '../../sheet/resolve-corrections.ts';
import { LONGEST_TABLE } from '../read/spec.ts';
import { type FormProps, InstrumentChoice, InstrumentText } from './InstrumentField.tsx';
import { UnitFields } from './SheetFields.tsx';
import { instrumentStrings as strings } from './strings.ts';

/** What a calibration found: one correction or a table, U, k, and the drift since. */
export function CalibrationFields(props: FormProps) {
  const { value } = props;
  const { by, source } = value;
  const { help } = strings;
  return (
    <div class="fields">
      <InstrumentChoice {...props} name="source" options={CALIBRATED_FROM} words={strings.sources} />
      <InstrumentText {...props} name="from" help={help.from[source]} class="field-double" />
      <UnitFields {...props} />
      <InstrumentChoice {...props} name="by" options={CORRECTED_BY} words={strings.by} />
      {by === 'nothing' ? (
        <>
          <InstrumentText
            {...props}
            name="correction"
            help={isCorrected(value.unit) ? help.correction : help.noCorrection}
          />
          <InstrumentText {...props} name="uncertainty" inputMode="decimal" />
        </>
      ) : (
        <InstrumentText
          {...props}
          name="table"
          rows={5}
          maxLength={LONGEST_TABLE}
          help={help.table[by]}
          class="field-double"
        />
      )}
      <InstrumentText {...props} name="factor" inputMode="decimal" help={help.factor} />
      <InstrumentText {...props} name="freedom" inputMode="decimal" help={help.freedom} />
      <InstrumentText {...props} name="drift" inputMode="decimal" help={help.drift} />
    </div>
  );
}
