import { METHODS } from '../../sheet/method.ts';
import { controlId } from '../form/keys.ts';
import { strings } from '../strings.ts';
import type { PartProps } from './context.ts';

/** The ways from the socket to a power, each with a sentence on when it is the right one. */
export function MethodChooser({ entries, send }: PartProps) {
  return (
    <fieldset class="methods">
      <legend>{strings.setup.methodQuestion}</legend>
      {METHODS.map((method) => {
        const { name, when } = strings.setup.methods[method];
        const id = controlId(`method-${method}`);
        return (
          <label key={method} class="method">
            <input
              type="radio"
              id={id}
              name="bench-method"
              value={method}
              checked={entries.method === method}
              aria-labelledby={`${id}-name`}
              aria-describedby={`${id}-when`}
              onChange={() => send({ type: 'chooseMethod', method })}
            />
            <span>
              <span class="method-name" id={`${id}-name`}>
                {name}
              </span>
              <span class="method-when" id={`${id}-when`}>
                {when}
              </span>
            </span>
          </label>
        );
      })}
    </fieldset>
  );
}
