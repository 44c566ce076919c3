import { ENTRY_FORMS } from '../../sheet/entries.ts';
import { SelectField } from '../../widgets/parts/SelectField.tsx';
import { controlId, linkPath } from '../keys.ts';
import { FORM_KEYS, LONGEST_LABEL, UNITS } from '../spec.ts';
import { strings } from '../strings.ts';
import { LinkActions } from './LinkActions.tsx';
import { editLink, LinkField, type LinkProps } from './LinkField.tsx';
import { LinkMore } from './LinkMore.tsx';

export interface LinkItemProps extends LinkProps {
  readonly position: number;
  readonly count: number;
}

/** One link: its name, loss, and what it may be wrong by in a line; the rest folded away; its place in the order. */
export function LinkItem(props: LinkItemProps) {
  const { link, send, position } = props;
  const name = link.label.trim() || strings.link.unnamed(position);
  const id = (key: keyof typeof link): string => controlId(linkPath(link.id, key));
  return (
    <li>
      <fieldset class="link">
        <legend>
          <span class="link-number">{`${position}.`}</span> {name}
        </legend>
        <div class="link-fields">
          <LinkField {...props} name="label" maxLength={LONGEST_LABEL} class="link-label" />
          <LinkField {...props} name="loss" class="link-number-field" />
          <SelectField
            id={id('form')}
            class="link-form"
            label={strings.link.labels.form}
            help={strings.link.formHelp[link.form]}
            value={link.form}
            options={ENTRY_FORMS}
            words={strings.link.forms}
            onChoice={(form) => send(editLink(link.id, 'form', { form }))}
          />
          {FORM_KEYS[link.form]
            .filter((key) => key !== 'freedom')
            .map((key) => (
              <LinkField
                key={key}
                {...props}
                name={key}
                class="link-number-field"
                inputMode={key === 'lower' || key === 'upper' ? 'text' : 'decimal'}
              />
            ))}
          <SelectField
            id={id('unit')}
            class="link-unit"
            label={strings.link.labels.unit}
            value={link.unit}
            options={UNITS}
            words={strings.link.units}
            onChoice={(unit) => send(editLink(link.id, 'unit', { unit }))}
          />
        </div>
        <div class="link-foot">
          <LinkMore {...props} name={name} />
          <LinkActions {...props} name={name} />
        </div>
      </fieldset>
    </li>
  );
}
