import { useId } from 'preact/hooks';
import type { PlacePayload, TypedPayload } from '../../questions/bank/types.ts';
import { unitText } from '../../text/units.ts';
import type { Given } from '../answering.ts';
import { said } from '../said.ts';
import type { ShownSitting } from '../shown.ts';
import { strings } from '../strings.ts';
import { OrderFields } from './OrderFields.tsx';
import { PlaceFigure } from './PlaceFigure.tsx';

export interface AnswerFieldsProps {
  readonly sitting: ShownSitting;
  readonly given: Given;
  readonly onGiven: (given: Given) => void;
  /** Once it is marked nothing can be changed. */
  readonly isDone: boolean;
  /** What is wrong with what was typed. */
  readonly problem?: string | undefined;
  /** Id of what says where the question stands among others. */
  readonly place?: string | undefined;
}

/** The four ways to answer, by controls that the browser knows; the question itself is their legend. */
export function AnswerFields(props: AnswerFieldsProps) {
  const { sitting, given } = props;
  const { payload } = sitting;
  const id = useId();
  const how = `${id}how`;
  return (
    <fieldset
      class="ask"
      aria-describedby={props.place === undefined ? how : `${props.place} ${how}`}
      tabIndex={-1}
    >
      <legend>{sitting.stem}</legend>
      <p class="small muted" id={how}>
        {strings.kinds[payload.kind]}
      </p>
      {payload.kind === 'choice' && <OneOf {...props} name={id} options={payload.options} />}
      {payload.kind === 'place' && <PlaceField {...props} name={id} payload={payload} />}
      {payload.kind === 'typed' && <TypedField {...props} id={id} payload={payload} />}
      {payload.kind === 'order' && (
        <OrderFields {...props} payload={payload} order={typeof given === 'string' ? [] : given} />
      )}
    </fieldset>
  );
}

interface OneOfProps extends AnswerFieldsProps {
  readonly name: string;
  readonly options: readonly { readonly id: string; readonly text: string }[];
}

const OneOf = ({ name, options, given, onGiven, isDone }: OneOfProps) => (
  <div class="ask-options">
    {options.map(({ id, text }) => (
      <label key={id} class="choice-option">
        <input
          type="radio"
          name={name}
          value={id}
          checked={given === id}
          disabled={isDone}
          onChange={() => onGiven(id)}
        />
        <span>{text}</span>
      </label>
    ))}
  </div>
);

function PlaceField({ payload, ...props }: AnswerFieldsProps & { name: string; payload: PlacePayload }) {
  const { sitting, given, onGiven, isDone } = props;
  const options = payload.places.map(({ id, words }) => ({ id, text: words }));
  return (
    <>
      {sitting.drawing && (
        <PlaceFigure
          name={payload.figure.name}
          drawing={sitting.drawing}
          chosen={typeof given === 'string' ? given : ''}
          onChoose={isDone ? undefined : onGiven}
        />
      )}
      <OneOf {...props} options={options} />
    </>
  );
}

function TypedField(props: AnswerFieldsProps & { id: string; payload: TypedPayload }) {
  const { id, sitting, payload, given, onGiven, isDone, problem } = props;
  return (
    <div class="ask-typed">
      <label for={`${id}t`}>{strings.form.answer}</label>
      <span class="ask-line">
        <input
          id={`${id}t`}
          type="text"
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          value={String(given)}
          readOnly={isDone}
          aria-invalid={problem === undefined ? undefined : 'true'}
          aria-describedby={problem === undefined ? `${id}u` : `${id}u reply`}
          onInput={(event) => onGiven(event.currentTarget.value)}
        />{' '}
        <span aria-hidden="true">
          {sitting.unit} <span class="muted">{payload.within}</span>
        </span>
        <span id={`${id}u`} class="visually-hidden">
          {strings.form.wanted(unitText('spoken', payload.unit, '2'), said(payload.within))}
        </span>
      </span>
    </div>
  );
}
