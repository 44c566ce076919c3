import { CHECK_FIELDS, type CheckKind } from '../validity/check-kinds.ts';
import { checkOutcomes } from '../validity/check-outcome.ts';
import { checkQuestion } from '../validity/check-question.ts';
import { checkStrings as strings } from '../validity/check-strings.ts';
import { allowanceNote, checkLine } from '../validity/check-words.ts';
import { CheckField } from './CheckField.tsx';
import type { DefenceProps } from './ValidityPart.tsx';

/** Every check that the method offers: why, its fields, and what it says. */
export function ValidityChecks(props: DefenceProps) {
  const { entries, measurement, shown } = props;
  const question = checkQuestion(entries, measurement, shown);
  const { method } = measurement.setup;
  const note = allowanceNote('shown', question);
  const reasons: Readonly<Partial<Record<CheckKind, string>>> = strings.why[method];
  return (
    <div class="checks-made">
      {checkOutcomes(question).map((outcome) => {
        const { check } = outcome;
        const line = checkLine('shown', outcome);
        const problems = outcome.status === 'begun' ? outcome.problems : [];
        return (
          <fieldset key={check} class="check" id={`check-${check}`}>
            <legend>{line.name}</legend>
            <p class="measure">{reasons[check]}</p>
            <div class="fields">
              {CHECK_FIELDS[check].map((name) => (
                <CheckField
                  key={name}
                  name={name}
                  method={method}
                  text={entries.checks[name]}
                  problems={problems}
                  note={note}
                  send={props.send}
                />
              ))}
            </div>
            <p class={`check-status check-${line.status}`}>
              <strong>{strings.statuses[line.status]}</strong>
              {line.says !== '' && `: ${line.says}`}
              {line.status === 'failed' && ` ${strings.remedy[check]}`}
            </p>
          </fieldset>
        );
      })}
    </div>
  );
}
