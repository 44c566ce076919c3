import { SelectField } from '../../widgets/parts/SelectField.tsx';
import { controlId } from '../keys.ts';
import { LONGEST_TEXT, POWER_KINDS } from '../spec.ts';
import { strings } from '../strings.ts';
import type { PartProps } from './context.ts';
import { SheetField } from './SheetField.tsx';

/** Whose power, which power, where and under what conditions. */
export function MeasuredPart(props: PartProps) {
  return (
    <fieldset class="bench-part">
      <legend>{strings.sections.measured}</legend>
      <div class="fields">
        <SheetField {...props} name="title" rows={2} maxLength={LONGEST_TEXT} />
        <SelectField
          id={controlId('power')}
          label={strings.labels.power}
          help={strings.help.power}
          value={props.entries.power}
          options={POWER_KINDS}
          words={strings.powers}
          onChoice={(power) => props.send({ type: 'edit', path: 'power', change: { power } })}
        />
        <SheetField {...props} name="plane" rows={2} maxLength={LONGEST_TEXT} />
        <SheetField {...props} name="conditions" rows={2} maxLength={LONGEST_TEXT} />
      </div>
    </fieldset>
  );
}
