import { LINK_KINDS } from '../../sheet/sheet.ts';
import { sourceWords } from '../../text/words.ts';
import { Folded } from '../../widgets/parts/Folded.tsx';
import { SelectField } from '../../widgets/parts/SelectField.tsx';
import { controlId, linkPath } from '../form/keys.ts';
import { FORM_KEYS, hasUnit } from '../read/link-spec.ts';
import { LONGEST_LABEL, PERCENT_OF, SOURCES } from '../read/spec.ts';
import { strings } from '../strings.ts';
import { BetterField, betterProblem } from './BetterField.tsx';
import { faultyAt } from './context.ts';
import { editLink, LinkField, type LinkProps } from './LinkField.tsx';

/** Id of the list of causes that links of the sheet already share. */
export const CAUSES_ID = 'bench-causes';

const DIRECTIONS = ['with', 'against'] as const;
const INSIDE = ['freedom', 'rated', 'cause', 'reliability', 'percentOf'] as const;

/** What is less often changed of a link, folded away. It unfolds where something in it cannot be used. */
export function LinkMore(props: LinkProps & { name: string }) {
  const { link, problems, name } = props;
  const inside = INSIDE.map((key) => linkPath(link.id, key));
  const faulty = faultyAt(problems, inside) || betterProblem(link) !== undefined;
  return (
    <Folded class="link-more" summary={strings.link.more} of={strings.link.of(name)} faulty={faulty}>
      <div class="fields">
        <LinkChoices {...props} />
        <LinkField {...props} name="rated" />
        {FORM_KEYS[link.form].includes('freedom') && (
          <LinkField {...props} name="freedom" inputMode="decimal" />
        )}
        {link.source === 'judged' && <LinkField {...props} name="reliability" inputMode="decimal" />}
        <LinkField {...props} name="cause" maxLength={LONGEST_LABEL} list={CAUSES_ID} />
        {link.cause.trim() !== '' && <LinkDirection {...props} />}
        <BetterField {...props} />
      </div>
    </Folded>
  );
}

/** Kind and source of a link, and what its percentages are of. */
function LinkChoices({ link, send }: LinkProps) {
  const id = (key: keyof typeof link): string => controlId(linkPath(link.id, key));
  return (
    <>
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
      {hasUnit(link.form) && link.unit.startsWith('percent') && (
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
    </>
  );
}

/** Which way a shared cause moves a link. */
function LinkDirection({ link, send }: LinkProps) {
  return (
    <SelectField
      id={controlId(linkPath(link.id, 'direction'))}
      label={strings.link.labels.direction}
      help={strings.link.help.direction}
      value={link.direction}
      options={DIRECTIONS}
      words={strings.link.directions}
      onChoice={(direction) => send(editLink(link.id, 'direction', { direction }))}
    />
  );
}
