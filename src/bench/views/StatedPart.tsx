import { useEffect, useRef } from 'preact/hooks';
import { styleWith } from '../../text/style.ts';
import { useCopy } from '../../widgets/parts/use-copy.ts';
import { useDecimal } from '../../widgets/parts/use-decimal.ts';
import type { BenchResult } from '../results/result.ts';
import { statedStrings as strings } from '../words/stated-strings.ts';
import { type StatedForm, statedForms } from '../words/stated-words.ts';

/** The result in the standard forms, each to be copied, and how numbers were rounded. */
export function StatedPart({ result }: { result: BenchResult }) {
  const { copied, copy, forget } = useCopy();
  const place = useRef<HTMLDListElement>(null);
  // Copied are true signs with ordinary spaces, which survive pasting.
  const decimal = useDecimal();
  const toCopy = statedForms(styleWith('unicode', decimal), result);
  const refused = copied.state === 'refused' ? copied.text : undefined;
  const refusedAt = toCopy.find(({ text }) => text === refused)?.key;
  useEffect(() => {
    const words = place.current?.querySelector(`[data-form="${refusedAt}"]`);
    if (words && refusedAt) getSelection()?.selectAllChildren(words);
  }, [refusedAt]);
  useEffect(forget, [result]);
  return (
    <section aria-labelledby="stated">
      <h2 id="stated">{strings.heading}</h2>
      <dl class="stated" ref={place}>
        {statedForms(styleWith('shown', decimal), result).map((form, index) => (
          <Form key={form.key} form={form} onCopy={() => copy(toCopy[index]?.text ?? '')} />
        ))}
      </dl>
      <p role="status" class="needs-script">
        {copied.state === 'idle' ? '' : copied.state === 'done' ? strings.done : strings.refused}
      </p>
      <p class="small measure">{strings.rounding}</p>
    </section>
  );
}

function Form({ form: { key, name, text }, onCopy }: { form: StatedForm; onCopy: () => void }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd data-form={key}>{text}</dd>
      <dd class="needs-script">
        <button type="button" aria-label={strings.copyOf(name)} onClick={onCopy}>
          {strings.copy}
        </button>
      </dd>
    </div>
  );
}
