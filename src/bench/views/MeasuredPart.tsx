import { Folded } from '../../widgets/parts/Folded.tsx';
import { DELIVERIES, KEYINGS, LONGEST_TEXT, POWER_KINDS } from '../read/spec.ts';
import { strings } from '../strings.ts';
import { faultyAt, type PartProps } from './context.ts';
import { SheetChoice } from './SheetChoice.tsx';
import { SheetField } from './SheetField.tsx';

/** Whose power, which power, delivered how, where and under what conditions. */
export function MeasuredPart(props: PartProps) {
  return (
    <fieldset class="bench-part">
      <legend>{strings.sections.measured}</legend>
      <div class="fields fields-two">
        <SheetField {...props} name="title" maxLength={LONGEST_TEXT} />
        <SheetChoice {...props} name="power" options={POWER_KINDS} words={strings.powers} />
      </div>
      <Folded
        summary={strings.measuredMore}
        faulty={faultyAt(props.problems, ['delivery', 'keying', 'power', 'plane', 'conditions'])}
      >
        <div class="fields">
          <SheetChoice {...props} name="delivery" options={DELIVERIES} words={strings.deliveries} />
          <SheetChoice {...props} name="keying" options={KEYINGS} words={strings.keyings} />
          <SheetField {...props} name="plane" rows={2} maxLength={LONGEST_TEXT} />
          <SheetField {...props} name="conditions" rows={2} maxLength={LONGEST_TEXT} />
        </div>
      </Folded>
    </fieldset>
  );
}
