import type { ComponentChildren } from 'preact';
import { type AddressSpec, defaultState } from '../../address/field-spec.ts';
import { AddressProblems } from './AddressProblems.tsx';
import { Announcer } from './Announcer.tsx';
import type { PlainFields } from './fields.ts';
import { PlainAnswers, type PlainAnswersProps } from './PlainAnswers.tsx';
import { Settings, type SettingsWords } from './Settings.tsx';
import type { FieldsUse } from './use-fields.ts';

export interface FieldsWidgetProps<Of extends PlainFields> extends PlainAnswersProps, FieldsUse<Of> {
  /** Which style sheet its figure follows. */
  readonly kind: 'plain-widget' | 'ruler-widget';
  readonly spec: AddressSpec<Of>;
  /** Name of this widget in the address, where two share a page. */
  readonly instance: string | undefined;
  readonly figure: ComponentChildren;
  /** What stands between the answers and the settings, and below the settings. */
  readonly between?: ComponentChildren;
  readonly below?: ComponentChildren;
  /** Names of the fields to show, in order. */
  readonly show: readonly (keyof Of & string)[];
  readonly words: {
    readonly settings: SettingsWords;
    readonly noScript: string;
    readonly reset: string;
  };
  readonly note?: string;
  /** The settled state in one spoken sentence. */
  readonly summary: string;
}

/** A widget of plain fields: its figure, answers, what can be set, and the way back to what was prepared. */
export function FieldsWidget<Of extends PlainFields>({
  kind,
  spec: { fields },
  instance,
  state,
  send,
  problems,
  figure,
  answers,
  between,
  below,
  show,
  words,
  note,
  summary,
}: FieldsWidgetProps<Of>) {
  return (
    <figure class={kind} id={instance ?? 'figure'}>
      <AddressProblems problems={problems} />
      {figure}
      <PlainAnswers answers={answers} />
      {between}
      <Settings
        fields={fields}
        show={show}
        values={state.values}
        words={words.settings}
        onValue={(name, value) => send({ type: 'set', name, value })}
      />
      {below}
      {note && <p class="small muted">{note}</p>}
      <p class="no-script-only">{words.noScript}</p>
      <p class="needs-script">
        <button type="button" onClick={() => send({ type: 'reset', values: defaultState(fields) })}>
          {words.reset}
        </button>
      </p>
      <Announcer summary={summary} />
    </figure>
  );
}
