import { useEffect, useRef } from 'preact/hooks';
import type { SheetEntries } from '../../sheet/entries.ts';
import type { Measurement } from '../../sheet/measurement.ts';
import { copyStrings as strings } from '../copy-strings.ts';
import { useCopy } from '../use-copy.ts';

const AREA_ID = 'result-text';

export interface CopyPartProps {
  readonly measurement: Measurement;
  readonly entries: SheetEntries;
  /** What the validity checks say, a sentence each, asked for when the text is made. */
  readonly checks: () => readonly string[] | Promise<readonly string[]>;
  /** Address that opens the same sheet; undefined where it would be too long. */
  readonly link: () => Promise<string | undefined>;
}

/** Copies the record as text; where the browser refuses, the text stands there selected. The text is made on request. */
export function CopyPart({ measurement, entries, checks, link }: CopyPartProps) {
  const { copied, copy, forget } = useCopy();
  const area = useRef<HTMLTextAreaElement>(null);
  const isRefused = copied.state === 'refused';
  useEffect(() => {
    if (isRefused) area.current?.select();
  }, [isRefused]);
  useEffect(forget, [measurement, entries]);
  const onCopy = async (): Promise<void> => {
    const { recordAsText } = await import('../plain-text.ts');
    await copy(recordAsText({ measurement, entries, checks: await checks(), link: await link() }));
  };
  return (
    <section class="needs-script" aria-labelledby="copy">
      <h2 id="copy">{strings.heading}</h2>
      <p class="measure">{strings.address}</p>
      <p>
        <button type="button" onClick={onCopy}>
          {strings.button}
        </button>
      </p>
      <p role="status">
        {copied.state === 'idle' ? '' : copied.state === 'done' ? strings.done : strings.refused}
      </p>
      {isRefused && (
        <p>
          <label for={AREA_ID}>{strings.area}</label>
          <textarea id={AREA_ID} ref={area} class="result-text" readOnly rows={12} value={copied.text} />
        </p>
      )}
    </section>
  );
}
