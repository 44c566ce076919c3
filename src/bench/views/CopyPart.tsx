import { useEffect, useRef, useState } from 'preact/hooks';
import { resultAsText } from '../plain-text.ts';
import type { BenchResult } from '../result.ts';
import { resultStrings } from '../result-strings.ts';

const strings = resultStrings.copy;
const AREA_ID = 'result-text';

/** Copies the result as text; where the browser refuses, the text stands there selected. */
export function CopyPart({ result, link }: { result: BenchResult; link: () => string | undefined }) {
  const [state, setState] = useState<{ copied: boolean; text: string } | undefined>(undefined);
  const area = useRef<HTMLTextAreaElement>(null);
  useEffect(() => {
    if (state?.copied === false) area.current?.select();
  }, [state]);
  useEffect(() => setState(undefined), [result]);
  const copy = async (): Promise<void> => {
    const text = resultAsText(result, link());
    try {
      await navigator.clipboard.writeText(text);
      setState({ copied: true, text });
    } catch {
      setState({ copied: false, text });
    }
  };
  return (
    <section class="needs-script" aria-labelledby="copy">
      <h2 id="copy">{strings.heading}</h2>
      <p class="measure">{strings.address}</p>
      <p>
        <button type="button" onClick={copy}>
          {strings.button}
        </button>
      </p>
      <p role="status">{state === undefined ? '' : state.copied ? strings.done : strings.refused}</p>
      {state?.copied === false && (
        <p>
          <label for={AREA_ID}>{strings.area}</label>
          <textarea id={AREA_ID} ref={area} class="result-text" readOnly rows={12} value={state.text} />
        </p>
      )}
    </section>
  );
}
