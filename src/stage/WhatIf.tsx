import { NumberField, type NumberFieldProps } from '../widgets/parts/NumberField.tsx';
import { Before } from './StageAnswer.tsx';
import { strings } from './strings.ts';

export interface WhatIfProps {
  /** What the number is, before it. */
  readonly legend: string;
  /** One press of a button as words: `1 decibel`. */
  readonly press: string;
  readonly field: NumberFieldProps;
  readonly onLess: () => void;
  readonly onMore: () => void;
  readonly onReset: () => void;
  /** What the figure itself answers, where no line below says it: its ghost stands here. */
  readonly answer?: string | undefined;
}

/** The one number that a speaker changes on the wall: less, typed, more, and back to what was prepared. */
export function WhatIf({ legend, press, field, onLess, onMore, onReset, answer }: WhatIfProps) {
  return (
    <fieldset class="stage-what-if needs-script">
      <legend>{legend}</legend>
      <button type="button" aria-label={strings.less(press)} onClick={onLess}>
        −
      </button>
      <NumberField {...field} />
      <button type="button" aria-label={strings.more(press)} onClick={onMore}>
        +
      </button>
      <button type="button" class="plain" data-deck="prepared" onClick={onReset}>
        {strings.prepared}
      </button>
      {answer !== undefined && <Before answer={answer} />}
    </fieldset>
  );
}
