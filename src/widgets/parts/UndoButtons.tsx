interface UndoButtonsProps {
  /** What can be taken back, and what can be done again. */
  readonly state: { readonly past: readonly unknown[]; readonly future: readonly unknown[] };
  readonly send: (action: { readonly type: 'undo' | 'redo' }) => void;
  readonly words: Readonly<Record<'undo' | 'redo', string>>;
  /** By which the focus finds the buttons again. */
  readonly ids?: Readonly<Record<'undo' | 'redo', string>>;
  /** Whether what they stand in is not hidden without script already. */
  readonly alone?: boolean;
}

/** Takes the last change back, or does it again. */
export function UndoButtons({ state, send, words, ids, alone = false }: UndoButtonsProps) {
  const left = { undo: state.past.length, redo: state.future.length };
  return (
    <p class={alone ? 'undo needs-script' : 'undo'}>
      {(['undo', 'redo'] as const).map((type) => (
        <button
          key={type}
          type="button"
          class="plain"
          id={ids?.[type]}
          disabled={left[type] === 0}
          onClick={() => send({ type })}
        >
          {words[type]}
        </button>
      ))}
    </p>
  );
}
