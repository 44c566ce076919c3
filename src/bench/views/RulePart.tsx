import { RULE, RULE_KINDS } from '../../sheet/entries.ts';
import { Folded } from '../../widgets/parts/Folded.tsx';
import { RULE_KEYS } from '../read/spec.ts';
import { strings } from '../strings.ts';
import { LoggedChanges } from './AgreementNotes.tsx';
import { faultyAt, type PartProps } from './context.ts';
import { SheetChoice } from './SheetChoice.tsx';
import { SheetField } from './SheetField.tsx';

/** The rule by which the measurement decides; folded, since the usual one does for a first result. */
export function RulePart(props: PartProps) {
  const { rule } = props.entries;
  const keys = RULE_KEYS[rule];
  return (
    <>
      <Folded summary={strings.ruleFold(strings.rules[rule])} faulty={faultyAt(props.problems, keys)}>
        <div class="fields">
          <SheetChoice
            {...props}
            name="rule"
            class="field-double"
            options={RULE_KINDS}
            words={strings.rules}
            help={strings.ruleWords[rule]}
          />
          {keys.map((name) => (
            <SheetField key={name} {...props} name={name} inputMode="decimal" />
          ))}
        </div>
      </Folded>
      <LoggedChanges {...props} what={RULE} />
    </>
  );
}
