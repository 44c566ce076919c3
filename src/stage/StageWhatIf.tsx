import type { NumberSpec } from '../address/field-spec.ts';
import { numberText, quantityText } from '../text/quantity-text.ts';
import type { UnitName } from '../text/units.ts';
import { readerOf } from '../widgets/parts/read-amount.ts';
import { WhatIf } from './WhatIf.tsx';

export interface StageWhatIfProps {
  readonly field: NumberSpec;
  /** What the number is, where the field's own name is too long for the wall. */
  readonly legend?: string;
  readonly unit: UnitName;
  readonly value: number;
  /** One press of plus or minus: large enough to be seen from the back row. */
  readonly press: number;
  readonly onValue: (value: number) => void;
  readonly onReset: () => void;
  /** What the figure itself answers, where no line below says it. */
  readonly answer?: string | undefined;
}

/** One press as it is spoken: as short as it is, and of a level in decibels, since it is a difference. */
export function pressText(press: number, unit: UnitName): string {
  const decimals = String(press).split('.')[1]?.length ?? 0;
  return quantityText('spoken', { value: press, decimals, unit: unit === 'dBm' ? 'dB' : unit });
}

/** The one number on the wall that answers "what if it were ...?" in one press, or typed. */
export function StageWhatIf({
  field,
  legend = field.label,
  unit,
  value,
  press,
  onValue,
  onReset,
  answer,
}: StageWhatIfProps) {
  return (
    <WhatIf
      legend={legend}
      press={pressText(press, unit)}
      field={{
        label: field.label,
        shown: numberText('ascii', { value, decimals: field.decimals }),
        unit,
        read: readerOf(field),
        // a figure more that says the same must not take the ghost of the answer before away
        onValue: (next) => {
          if (next !== value) onValue(next);
        },
      }}
      onLess={() => onValue(value - press)}
      onMore={() => onValue(value + press)}
      onReset={onReset}
      answer={answer}
    />
  );
}
