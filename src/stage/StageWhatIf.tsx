import type { NumberSpec } from '../address/field-spec.ts';
import { numberText, quantityText } from '../text/quantity-text.ts';
import { type UnitName, unitText } from '../text/units.ts';
import { NumberField } from '../widgets/parts/NumberField.tsx';
import { readerOf } from '../widgets/parts/read-amount.ts';
import { strings } from './strings.ts';

export interface StageWhatIfProps {
  readonly field: NumberSpec;
  readonly unit: UnitName;
  readonly value: number;
  /** One press of plus or minus: large enough to be seen from the back row. */
  readonly press: number;
  readonly onValue: (value: number) => void;
  readonly onReset: () => void;
}

/** The one number on the wall that answers "what if it were ...?" in one press, or typed. */
export function StageWhatIf({ field, unit, value, press, onValue, onReset }: StageWhatIfProps) {
  const step = quantityText('spoken', { value: press, decimals: field.decimals, unit });
  return (
    <fieldset class="stage-what-if needs-script">
      <legend>{field.label}</legend>
      <button type="button" aria-label={strings.less(step)} onClick={() => onValue(value - press)}>
        −
      </button>
      <NumberField
        label={field.label}
        labelHidden
        shown={numberText('ascii', { value, decimals: field.decimals })}
        unit={unitText('shown', unit, '2')}
        read={readerOf(field)}
        onValue={onValue}
      />
      <button type="button" aria-label={strings.more(step)} onClick={() => onValue(value + press)}>
        +
      </button>
      <button type="button" class="plain" onClick={onReset}>
        {strings.prepared}
      </button>
    </fieldset>
  );
}
