import { useEffect, useId, useReducer } from 'preact/hooks';
import type { Question } from '../../questions/question.ts';
import { keepGuess, keptGuess } from '../../store/guesses.ts';
import { chosenOption, noChoice, reduceChoice } from './state.ts';
import { type ChoiceUse, strings } from './strings.ts';

export interface ChoiceProps {
  readonly question: Question;
  readonly use: ChoiceUse;
}

/**
 * One question with options. After using it a reader knows whether their picture of the matter was right, and which
 * misconception it was if not. A guess is kept in the browser and compared with the answer when the reader opens it.
 */
export default function Choice({ question, use }: ChoiceProps) {
  const [state, send] = useReducer(reduceChoice, noChoice);
  const name = useId();
  const words = strings[use];
  useEffect(() => {
    const kept = use === 'guess' ? keptGuess(question.id) : undefined;
    // A guess at an option that the question no longer has is no guess.
    if (question.options.some(({ id }) => id === kept) && kept !== undefined)
      send({ type: 'recall', option: kept });
  }, [question, use]);
  const chosen = chosenOption(question, state);
  const give = (): void => {
    send({ type: 'give' });
    if (use === 'guess' && state.chosen !== undefined) keepGuess(question.id, state.chosen);
  };
  return (
    <section class="choice" aria-labelledby={`${name}h ${name}l`}>
      <h3 id={`${name}h`}>{words.heading}</h3>
      <fieldset>
        <legend id={`${name}l`}>{question.stem}</legend>
        {question.options.map(({ id, text }) => (
          <label key={id} class="choice-option">
            <input
              type="radio"
              name={name}
              value={id}
              checked={state.chosen === id}
              disabled={state.given}
              onChange={() => send({ type: 'choose', option: id })}
            />
            <span>{text}</span>
          </label>
        ))}
      </fieldset>
      <p class="choice-actions needs-script">
        {state.given ? (
          <button type="button" onClick={() => send({ type: 'again' })}>
            {strings.again}
          </button>
        ) : (
          <button type="button" onClick={give} disabled={state.chosen === undefined}>
            {words.give}
          </button>
        )}
      </p>
      <div role="status" class="choice-reply">
        {state.given && chosen && (
          <p>
            {use === 'guess'
              ? words.kept(chosen.text)
              : `${words.verdict(chosen.id === question.answer)} ${chosen.reply}`}
          </p>
        )}
      </div>
      <details class="answer">
        <summary>{words.answer}</summary>
        {state.given && chosen && use === 'guess' && (
          <p>{`${words.verdict(chosen.id === question.answer)} ${chosen.id === question.answer ? '' : chosen.reply}`}</p>
        )}
        <p>
          <strong>{question.options.find(({ id }) => id === question.answer)?.text}</strong> {question.worked}
        </p>
      </details>
    </section>
  );
}
