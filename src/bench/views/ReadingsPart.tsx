import { strings } from '../strings.ts';
import type { PartProps } from './context.ts';
import { SheetField } from './SheetField.tsx';

/** What the meter showed, how much that scatters, and what the meter stands. */
export function ReadingsPart(props: PartProps) {
  return (
    <fieldset class="bench-part">
      <legend>{strings.sections.readings}</legend>
      <div class="fields">
        <SheetField {...props} name="readings" rows={3} />
        <SheetField {...props} name="damage" />
        <SheetField {...props} name="scatter" inputMode="decimal" />
        <SheetField {...props} name="repeats" inputMode="decimal" />
      </div>
    </fieldset>
  );
}
