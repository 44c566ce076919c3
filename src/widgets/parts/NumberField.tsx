import { useId, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { fieldText } from '../../text/field-text.ts';
import { type UnitName, unitText } from '../../text/units.ts';
import { afterLeaving, afterReading, NO_DRAFT, typed as typedDraft } from './draft.ts';
import { Problem } from './Problem.tsx';
import { useDecimal } from './use-decimal.ts';

/** What reading a text gives: a number, or a sentence on what is wrong and what was expected. */
export type Reading =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly problem: string };

export interface NumberFieldProps {
  /** Heard only: what it is for stands above or before it. */
  readonly label: string;
  /** The value as text with a point, in the form the reader would type it; the reader's own decimal sign comes in here. */
  readonly shown: string;
  readonly unit: UnitName;
  /** What stands behind the unit, with its space: what a percentage is of. */
  readonly of?: string | undefined;
  /** May load what it reads with, on first use. */
  readonly read: (text: string) => Promise<Reading>;
  readonly onValue: (value: number) => void;
}

/**
 * A field for one number with its unit. What is typed stays as typed while it is being edited or is wrong; a value that
 * changes elsewhere (a drag, an undo) replaces it.
 */
export function NumberField({ label, shown, unit, of = '', read, onValue }: NumberFieldProps) {
  const [{ text: draft, problem }, setDraft] = useState(NO_DRAFT);
  const typed = useRef<string | undefined>(undefined);
  const editing = useRef(false);
  const id = useId();
  const decimal = useDecimal();
  // In the turn of the drawing itself: an effect that is put off could belong to the drawing before and take the draft away.
  useLayoutEffect(() => {
    if (editing.current) return;
    typed.current = undefined; // nor may what was typed before, and is read late, undo what has changed since
    setDraft(NO_DRAFT);
  }, [shown]);
  useLayoutEffect(() => {
    editing.current = false;
  });
  const edit = async (text: string): Promise<void> => {
    typed.current = text;
    setDraft((now) => typedDraft(now, text));
    const reading = await read(text);
    // What was typed since then is read by its own turn.
    if (typed.current !== text) return;
    editing.current = reading.ok;
    setDraft((now) => afterReading(now, text, reading)); // draws anew even where the value stays, so that the mark of editing goes
    if (reading.ok) onValue(reading.value);
  };
  return (
    <div class="number-field">
      <label for={id} class="visually-hidden">
        {label}
      </label>
      <span class="number-field-entry">
        <input
          id={id}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          spellcheck={false}
          value={draft ?? fieldText(shown, decimal)}
          aria-invalid={problem ? 'true' : undefined}
          aria-describedby={`${id}u ${id}p`}
          onInput={(event) => edit(event.currentTarget.value)}
          onBlur={() => setDraft(afterLeaving)}
        />
        <span class="number-field-unit" aria-hidden="true">
          {unitText('shown', unit, '2') + of}
        </span>
        <span id={`${id}u`} hidden>
          {unitText('spoken', unit, '2') + of}
        </span>
      </span>
      <Problem id={`${id}p`}>{problem}</Problem>
    </div>
  );
}
