import { Problem } from './Problem.tsx';

export interface TextFieldProps {
  /** Id of the control in the page. */
  readonly id: string;
  readonly label: string;
  readonly value: string;
  /** One short sentence on what belongs here. */
  readonly help?: string | undefined;
  /** What is wrong with what stands here. */
  readonly problem?: string | undefined;
  /** How what stands here was understood, where that is not plain. */
  readonly note?: string | undefined;
  /** Keyboard that a touch screen offers; `decimal` has neither letters nor a minus. */
  readonly inputMode?: 'text' | 'decimal';
  readonly maxLength?: number;
  /** Lines of a field for several; one line unless given. */
  readonly rows?: number;
  /** Id of a list of texts to choose from. */
  readonly list?: string | undefined;
  readonly class?: string;
  readonly onText: (text: string) => void;
}

/** A labelled field whose text, right or wrong, is kept by its owner. */
export function TextField(props: TextFieldProps) {
  const { id, label, value, help, problem, note, rows, onText, inputMode, maxLength } = props;
  const isEmpty = value.trim() === '';
  const described = [help && `${id}-help`, `${id}-problem`, note && `${id}-note`];
  const shared = {
    id,
    value,
    maxLength,
    dir: 'auto' as const,
    autoComplete: 'off',
    spellcheck: false,
    'aria-invalid': problem ? ('true' as const) : undefined,
    'aria-describedby': described.filter(Boolean).join(' '),
  };
  return (
    <div class={`field ${isEmpty ? 'field-empty ' : ''}${props.class ?? ''}`.trim()}>
      <label for={id}>{label}</label>
      {rows === undefined ? (
        <input
          {...shared}
          type="text"
          inputMode={inputMode}
          list={props.list}
          onInput={(event) => onText(event.currentTarget.value)}
        />
      ) : (
        <textarea {...shared} rows={rows} onInput={(event) => onText(event.currentTarget.value)} />
      )}
      {note && (
        <p class="field-note" id={`${id}-note`}>
          {note}
        </p>
      )}
      <Problem id={`${id}-problem`} aria-live={isEmpty ? 'off' : undefined}>
        {problem}
      </Problem>
      {help && (
        <p class="field-help" id={`${id}-help`}>
          {help}
        </p>
      )}
    </div>
  );
}
