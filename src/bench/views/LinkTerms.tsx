import { Folded } from '../../widgets/parts/Folded.tsx';
import { linkPath } from '../form/keys.ts';
import { strings } from '../strings.ts';
import { faultyAt } from './context.ts';
import { LinkField, type LinkProps } from './LinkField.tsx';

const PLAIN = ['ofReading', 'ofScale', 'fullScale', 'digits', 'step', 'floor'] as const;
const OUTSIDE = ['perKelvin', 'coldest', 'warmest', 'temperature', 'perYear', 'years'] as const;

/** A limit as data sheets add it up; what temperature and age add is folded away. */
export function LinkTerms(props: LinkProps & { name: string }) {
  const { link, problems, name } = props;
  return (
    <div class="link-terms">
      <p class="field-help">{strings.link.termsIntro}</p>
      <div class="term-fields">
        {PLAIN.map((key) => (
          <LinkField key={key} {...props} name={key} inputMode="decimal" />
        ))}
      </div>
      <Folded
        summary={strings.link.termsMore}
        of={strings.link.of(name)}
        faulty={faultyAt(
          problems,
          OUTSIDE.map((key) => linkPath(link.id, key)),
        )}
      >
        <div class="term-fields">
          {OUTSIDE.map((key) => (
            <LinkField key={key} {...props} name={key} />
          ))}
        </div>
      </Folded>
    </div>
  );
}
