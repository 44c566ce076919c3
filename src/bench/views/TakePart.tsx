import { useState } from 'preact/hooks';
import { DecimalChoice } from '../../widgets/parts/DecimalChoice.tsx';
import { copyStrings as strings } from '../export/copy-strings.ts';
import { takenOf } from '../export/taken.ts';
import { CopyPart } from './CopyPart.tsx';
import { FilesPart } from './FilesPart.tsx';
import type { PartsProps } from './Parts.tsx';
import type { DefenceProps } from './ValidityPart.tsx';

const HELP_ID = 'nameless-help';

/** What leaves the bench and what comes back: the record and the address to be copied, files to be saved and opened. */
export function TakePart({
  entries,
  send,
  measurement,
  shown,
  own,
  version,
  standing,
}: DefenceProps & Pick<PartsProps, 'own' | 'version' | 'standing'>) {
  const [nameless, setNameless] = useState(false);
  const take = () => {
    const { problems, ...now } = standing();
    return takenOf({ ...now, version, usable: problems.length === 0 }, nameless);
  };
  return (
    <>
      {own && (
        <section class="needs-script" aria-labelledby="copy">
          <h2 id="copy">{strings.heading}</h2>
          <p class="measure">{strings.address}</p>
          <label class="switch">
            <input
              type="checkbox"
              checked={nameless}
              aria-describedby={HELP_ID}
              onChange={(event) => setNameless(event.currentTarget.checked)}
            />
            <span>{strings.nameless}</span>
          </label>
          <p class="field-help measure" id={HELP_ID}>
            {strings.namelessHelp}
          </p>
          <DecimalChoice help={strings.decimalHelp} />
          <CopyPart take={take} of={[measurement, entries, nameless]} />
        </section>
      )}
      <FilesPart take={take} inRange={shown.inRange} own={own} send={send} />
    </>
  );
}
