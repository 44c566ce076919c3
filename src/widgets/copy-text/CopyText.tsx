import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { DecimalChoice } from '../parts/DecimalChoice.tsx';
import { useCopy } from '../parts/use-copy.ts';
import { useDecimal } from '../parts/use-decimal.ts';
import { strings } from './strings.ts';

const told = { idle: '', done: strings.done, refused: strings.refused } as const;

/** One text in one form. */
export interface CopyForm {
  /** "Plain text", "Markdown". */
  readonly name: string;
  readonly text: string;
  /** The same with decimal commas, where it has decimals. */
  readonly comma?: string;
}

/**
 * A result as text to paste elsewhere, in several forms. After using it a reader can answer in a forum with numbers that
 * stand on their own. Without script the first form stands there to be selected by hand.
 */
export default function CopyText({
  forms,
  decimalHelp,
}: {
  readonly forms: readonly CopyForm[];
  /** What the decimal sign holds for. */
  readonly decimalHelp: string;
}) {
  const [chosen, setChosen] = useState(0);
  const { copied, copy } = useCopy();
  const area = useRef<HTMLTextAreaElement>(null);
  const id = useId();
  const decimal = useDecimal();
  const form = forms[chosen];
  const text = (decimal === 'comma' ? form?.comma : undefined) ?? form?.text ?? '';
  // of another text than the one that stands here nothing is told
  const state = copied.text === text ? copied.state : 'idle';
  useEffect(() => {
    if (state === 'refused') area.current?.select();
  }, [copied]);
  return (
    <div class="copy-text">
      <fieldset class="copy-forms needs-script">
        <legend>{strings.form}</legend>
        {forms.map(({ name }, index) => (
          <label key={name} class="switch">
            <input type="radio" name={id} checked={index === chosen} onChange={() => setChosen(index)} />
            <span>{name}</span>
          </label>
        ))}
      </fieldset>
      <DecimalChoice help={decimalHelp} />
      <label for={`${id}a`}>{strings.area}</label>
      <textarea id={`${id}a`} ref={area} readOnly rows={14} value={text} />
      <p class="needs-script">
        <button type="button" onClick={() => copy(text)}>
          {strings.copy}
        </button>
      </p>
      <p role="status">{told[state]}</p>
    </div>
  );
}
