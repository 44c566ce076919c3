import { useId } from 'preact/hooks';
import { keepDecimal } from '../../store/keep-decimal.ts';
import { DECIMALS } from '../../text/style.ts';
import { decimalStrings as strings } from './decimal-strings.ts';
import { useDecimal } from './use-decimal.ts';

/** The reader's decimal sign, one choice for the whole site. `help` says what it holds for where it stands. */
export function DecimalChoice({ help }: { readonly help: string }) {
  const decimal = useDecimal();
  const id = useId();
  return (
    <fieldset class="copy-forms needs-script" aria-describedby={`${id}h`}>
      <legend>{strings.legend}</legend>
      {DECIMALS.map((sign) => (
        <label key={sign} class="switch">
          <input
            type="radio"
            id={`${id}${sign}`}
            name={id}
            checked={sign === decimal}
            onChange={() => keepDecimal(sign)}
          />
          <span>{strings.signs[sign]}</span>
        </label>
      ))}
      <p class="field-help measure" id={`${id}h`}>
        {help}
      </p>
    </fieldset>
  );
}
