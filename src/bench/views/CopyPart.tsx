import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { TEXT_FORMS, type TextForm, textFormNames } from '../../text/summary/forms.ts';
import { type Copied, useCopy } from '../../widgets/parts/use-copy.ts';
import { useDecimal } from '../../widgets/parts/use-decimal.ts';
import { copyStrings as strings } from '../export/copy-strings.ts';
import { forumLink, LONGEST_FOR_FORUM } from '../export/forum.ts';
import type { Taken } from '../export/taken.ts';
import { textStrings } from '../export/text-strings.ts';
import { partStrings } from '../part-strings.ts';
import { sheetAddress } from '../use-address.ts';

const AREA_ID = 'result-text';

export interface CopyPartProps {
  /** What goes out, made when it is asked for. */
  readonly take: () => Taken;
  /** Changes whenever something else would go out: what was said of the copy before is then no longer true. */
  readonly of: readonly unknown[];
}

/** Copies the record as text or the address; where the browser refuses, the text stands there selected. Made on request. */
export function CopyPart({ take, of }: CopyPartProps) {
  const { copied, copy, forget } = useCopy();
  const [form, setForm] = useState<TextForm>('ascii');
  const [done, setDone] = useState('');
  const decimal = useDecimal();
  const area = useRef<HTMLTextAreaElement>(null);
  const isRefused = copied.state === 'refused';
  useEffect(() => {
    if (isRefused) area.current?.select();
  }, [isRefused]);
  useEffect(forget, [...of, decimal]);
  // what makes the text is fetched with the first of it
  const tried = (make: () => Promise<void>) => () => make().catch(() => forget(partStrings.failed));
  const onRecord = tried(async () => {
    const taken = take();
    const [{ recordAsText }, { takenChecks }] = await Promise.all([
      import('../export/plain-text.ts'),
      import('../export/taken.ts'),
    ]);
    const linked = forumLink(await sheetAddress(taken.linked), textStrings.noLink);
    setDone('link' in linked ? strings.done : strings.withoutAddress);
    await copy(
      recordAsText({ ...taken, checks: await takenChecks(taken, decimal), ...linked, decimal }, form),
    );
  });
  const onAddress = tried(async () => {
    const address = await sheetAddress(take().linked);
    const letters = address?.length ?? 0;
    setDone(letters > LONGEST_FOR_FORUM ? strings.longAddress(letters) : strings.doneAddress(letters));
    if (address === undefined) forget(strings.noAddress);
    else await copy(address);
  });
  return (
    <>
      <FormChoice form={form} onForm={setForm} />
      <p class="copy-buttons">
        <button type="button" onClick={onRecord}>
          {strings.button}
        </button>
        <button type="button" onClick={onAddress}>
          {strings.addressButton}
        </button>
      </p>
      <p role="status">{toldOf(copied, done)}</p>
      {isRefused && (
        <p>
          <label for={AREA_ID}>{strings.area}</label>
          <textarea id={AREA_ID} ref={area} class="result-text" readOnly rows={12} value={copied.text} />
        </p>
      )}
    </>
  );
}

function toldOf({ state, text }: Copied, done: string): string {
  if (state === 'idle') return text;
  return state === 'done' ? done : strings.refused;
}

function FormChoice({ form, onForm }: { form: TextForm; onForm: (form: TextForm) => void }) {
  const name = useId();
  return (
    <fieldset class="copy-forms">
      <legend>{strings.form}</legend>
      {TEXT_FORMS.map((each) => (
        <label key={each} class="switch">
          <input type="radio" name={name} checked={each === form} onChange={() => onForm(each)} />
          <span>{textFormNames[each]}</span>
        </label>
      ))}
    </fieldset>
  );
}
