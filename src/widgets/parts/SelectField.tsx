import { useMemo } from 'preact/hooks';

export interface SelectFieldProps<Code extends string> {
  readonly id: string;
  readonly label: string;
  readonly value: Code;
  /** Codes in the order in which they are offered, with their words. */
  readonly options: readonly Code[];
  /** Where the choices are many: the same codes under headings; `options` then says which may be chosen. */
  readonly groups?: undefined | readonly { readonly label: string; readonly options: readonly Code[] }[];
  readonly words: Readonly<Record<Code, string>>;
  /** One short sentence on what belongs here. */
  readonly help?: string | undefined;
  /** Ids of what stands elsewhere and says more of it. */
  readonly about?: string | undefined;
  readonly class?: string;
  readonly onChoice: (code: Code) => void;
}

/** A labelled choice of one of several. */
export function SelectField<Code extends string>(props: SelectFieldProps<Code>) {
  const { id, label, value, options, groups, words, help, about, onChoice } = props;
  const choose = (text: string): void => {
    const code = options.find((option) => option === text);
    if (code !== undefined) onChoice(code);
  };
  const children = useMemo(() => offered({ value, options, groups, words }), [value, options, groups, words]);
  return (
    <div class={`field ${props.class ?? ''}`.trim()}>
      <label for={id}>{label}</label>
      <select
        id={id}
        value={value}
        aria-describedby={[help && `${id}-help`, about].filter(Boolean).join(' ') || undefined}
        onChange={(event) => choose(event.currentTarget.value)}
      >
        {children}
      </select>
      {help !== undefined && (
        <p class="field-help" id={`${id}-help`}>
          {help}
        </p>
      )}
    </div>
  );
}

/** What can be chosen, under headings where there are any. */
function offered<Code extends string>({
  value,
  options,
  groups,
  words,
}: Pick<SelectFieldProps<Code>, 'value' | 'options' | 'groups' | 'words'>) {
  const each = (codes: readonly Code[]) =>
    codes.map((option) => (
      <option key={option} value={option} selected={option === value}>
        {words[option]}
      </option>
    ));
  if (groups === undefined) return each(options);
  return groups.map((group) => (
    <optgroup key={group.label} label={group.label}>
      {each(group.options)}
    </optgroup>
  ));
}
