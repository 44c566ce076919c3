import { useState } from 'preact/hooks';
import { LINK_KINDS, type LinkKind } from '../../sheet/sheet.ts';
import { SelectField } from '../../widgets/parts/SelectField.tsx';
import { FORM_CONTROLS } from '../form/focus-after.ts';
import { controlId } from '../form/keys.ts';
import { MOST_LINKS } from '../read/spec.ts';
import { strings } from '../strings.ts';
import type { PartProps } from './context.ts';

/** Adds a link of a chosen kind at the foot of the chain. */
export function AddLink({ count, send }: Pick<PartProps, 'send'> & { count: number }) {
  const [kind, setKind] = useState<LinkKind>('pad');
  const full = count >= MOST_LINKS;
  return (
    <div class="add-link">
      <SelectField
        id={controlId('new-kind')}
        label={strings.links.addKind}
        value={kind}
        options={LINK_KINDS}
        words={strings.link.kinds}
        onChoice={setKind}
      />
      <button
        type="button"
        id={FORM_CONTROLS.addLink}
        disabled={full}
        onClick={() => send({ type: 'add', kind, label: strings.link.newLabels[kind] })}
      >
        {strings.links.add}
      </button>
      {full && <p>{strings.links.most(MOST_LINKS)}</p>}
    </div>
  );
}
