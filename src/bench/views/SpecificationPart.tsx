import { RULE_KINDS, SPECIFICATION_FORMS } from '../../sheet/entries.ts';
import { SelectField } from '../../widgets/parts/SelectField.tsx';
import { controlId } from '../keys.ts';
import { RULE_KEYS, SPECIFICATION_KEYS } from '../spec.ts';
import { strings } from '../strings.ts';
import type { PartProps } from './context.ts';
import { SheetField } from './SheetField.tsx';

/** What is demanded, and the rule by which the measurement decides. */
export function SpecificationPart(props: PartProps) {
  const { entries, send } = props;
  return (
    <fieldset class="bench-part">
      <legend>{strings.sections.specification}</legend>
      <div class="fields">
        <SelectField
          id={controlId('specification')}
          label={strings.labels.specification}
          help={strings.help.specification}
          value={entries.specification}
          options={SPECIFICATION_FORMS}
          words={strings.specifications}
          onChoice={(specification) =>
            send({ type: 'edit', path: 'specification', change: { specification } })
          }
        />
        {SPECIFICATION_KEYS[entries.specification].map((name) => (
          <SheetField
            key={name}
            {...props}
            name={name}
            inputMode={name === 'tolerance' ? 'decimal' : 'text'}
          />
        ))}
      </div>
      <div class="fields">
        <SelectField
          id={controlId('rule')}
          class="field-double"
          label={strings.labels.rule}
          help={strings.ruleWords[entries.rule]}
          value={entries.rule}
          options={RULE_KINDS}
          words={strings.rules}
          onChoice={(rule) => send({ type: 'edit', path: 'rule', change: { rule } })}
        />
        {RULE_KEYS[entries.rule].map((name) => (
          <SheetField key={name} {...props} name={name} inputMode="decimal" />
        ))}
      </div>
    </fieldset>
  );
}
