import { LINK_KINDS } from '../../sheet/sheet.ts';
import { sourceWords } from '../../text/words.ts';
import { SelectField } from '../../widgets/parts/SelectField.tsx';
import { controlId, linkPath } from '../keys.ts';
import { FORM_KEYS, LONGEST_LABEL, PERCENT_OF, SOURCES } from '../spec.ts';
import { strings } from '../strings.ts';
import { editLink, LinkField, type LinkProps } from './LinkField.tsx';

/** What is less often changed of a link, folded away. It opens where something in it cannot be used. */
export function LinkMore(props: LinkProps & { name: string }) {
  const { link, problems, send, name } = props;
  const id = (key: keyof typeof link): string => controlId(linkPath(link.id, key));
  const inside = ['freedom', 'rated', 'cause'].map((key) => linkPath(link.id, key));
  const faulty = problems.some(({ path }) => inside.includes(path));
  return (
    <details class="link-more" {...(faulty && { open: true })}>
      <summary>
        {`${strings.link.more} `}
        <span class="visually-hidden">{strings.link.moreOf(name)}</span>
      </summary>
      <div class="fields">
        <SelectField
          id={id('kind')}
          label={strings.link.labels.kind}
          value={link.kind}
          options={LINK_KINDS}
          words={strings.link.kinds}
          onChoice={(kind) => send(editLink(link.id, 'kind', { kind }))}
        />
        <SelectField
          id={id('source')}
          label={strings.link.labels.source}
          value={link.source}
          options={SOURCES}
          words={sourceWords}
          onChoice={(source) => send(editLink(link.id, 'source', { source }))}
        />
        {link.unit !== 'dB' && (
          <SelectField
            id={id('percentOf')}
            label={strings.link.labels.percentOf}
            help={strings.link.help.percentOf}
            value={link.percentOf}
            options={PERCENT_OF}
            words={strings.link.percentsOf}
            onChoice={(percentOf) => send(editLink(link.id, 'percentOf', { percentOf }))}
          />
        )}
        <LinkField {...props} name="rated" />
        {FORM_KEYS[link.form].includes('freedom') && (
          <LinkField {...props} name="freedom" inputMode="decimal" />
        )}
        <LinkField {...props} name="cause" maxLength={LONGEST_LABEL} />
      </div>
    </details>
  );
}
