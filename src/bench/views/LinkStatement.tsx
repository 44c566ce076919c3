import { type EntryForm, type LinkTextKey, TABLED_BY } from '../../sheet/entries.ts';
import { type LinkUnit, UNITS_OF } from '../../sheet/method.ts';
import { SelectField } from '../../widgets/parts/SelectField.tsx';
import { controlId, linkPath } from '../form/keys.ts';
import { FORM_KEYS, hasUnit } from '../read/link-spec.ts';
import { LONGEST_TABLE } from '../read/spec.ts';
import { strings } from '../strings.ts';
import { editLink, LinkField, type LinkProps } from './LinkField.tsx';

const { formGroups } = strings.link;

/** Forms of a statement under where they are found; those of a data sheet first. */
export const FORM_GROUPS: readonly { readonly label: string; readonly options: readonly EntryForm[] }[] = [
  { label: formGroups.sheet, options: ['rectangular', 'asymmetric', 'terms', 'displayStep'] },
  { label: formGroups.certificate, options: ['expanded', 'coverage', 'corrections'] },
  { label: formGroups.measured, options: ['readings', 'standard', 'swr'] },
  {
    label: formGroups.judged,
    options: ['arcsine', 'triangular', 'trapezoid', 'uncertainLimits', 'halfWithin'],
  },
];
const FORMS = FORM_GROUPS.flatMap(({ options }) => options);

/** Texts that stand beside the form; degrees of freedom are folded away, terms have a place of their own. */
const besideForm = (form: EntryForm): readonly LinkTextKey[] =>
  form === 'terms' ? [] : FORM_KEYS[form].filter((key) => key !== 'freedom');

/** What a link may be wrong by: in which form it is stated, how much, in which unit. */
export function LinkStatement(props: LinkProps) {
  const { link, method, send } = props;
  const units: readonly LinkUnit[] = UNITS_OF[method];
  const [form, unit] = [linkPath(link.id, 'form'), linkPath(link.id, 'unit')];
  return (
    <>
      <SelectField
        id={controlId(form)}
        class="link-form"
        label={strings.link.labels.form}
        help={strings.link.formHelp[link.form]}
        value={link.form}
        options={FORMS}
        groups={FORM_GROUPS}
        words={strings.link.forms}
        onChoice={(chosen) => send(editLink(link.id, 'form', { form: chosen }))}
      />
      {link.form === 'corrections' && (
        <SelectField
          id={controlId(linkPath(link.id, 'by'))}
          label={strings.link.labels.by}
          value={link.by}
          options={TABLED_BY}
          words={strings.link.tabledBy}
          onChoice={(by) => send(editLink(link.id, 'by', { by }))}
        />
      )}
      {besideForm(link.form).map((key) => (
        <LinkField
          key={key}
          {...props}
          name={key}
          class={key === 'table' ? 'link-table' : 'link-number-field'}
          {...(key === 'table' && { rows: 4, maxLength: LONGEST_TABLE })}
          inputMode={key === 'lower' || key === 'upper' ? 'text' : 'decimal'}
        />
      ))}
      {hasUnit(link.form) && (
        <SelectField
          id={controlId(unit)}
          class="link-unit"
          label={strings.link.labels.unit}
          value={link.unit}
          // a unit that the method does not know stays in sight, beside the sentence on it
          options={units.includes(link.unit) ? units : [link.unit, ...units]}
          words={strings.link.units}
          onChoice={(chosen) => send(editLink(link.id, 'unit', { unit: chosen }))}
        />
      )}
    </>
  );
}
