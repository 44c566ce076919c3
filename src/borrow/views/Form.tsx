import { useLayoutEffect, useRef } from 'preact/hooks';
import { controlId } from '../../bench/form/keys.ts';
import { DecimalChoice } from '../../widgets/parts/DecimalChoice.tsx';
import { FIELDS_HELP } from '../../widgets/parts/decimal-help.ts';
import { InTurn } from '../../widgets/parts/InTurn.tsx';
import { SelectField } from '../../widgets/parts/SelectField.tsx';
import { UndoButtons } from '../../widgets/parts/UndoButtons.tsx';
import { DEMONSTRATIONS } from '../demonstration.ts';
import { BORROW_KINDS } from '../entries.ts';
import type { BorrowState } from '../state.ts';
import { strings } from '../strings.ts';
import type { PartProps } from './context.ts';
import { EntryFields } from './EntryField.tsx';
import { AlongField, InstrumentForm } from './InstrumentForm.tsx';
import { DcForm, SwapForm } from './PartForm.tsx';
import { PlacesPart } from './PlacesPart.tsx';

/** Everything that is typed. */
export function Form({ state, send }: { readonly state: BorrowState; readonly send: PartProps['send'] }) {
  const { entries, problems } = state;
  const props = { entries, problems, send };
  const byTurns = entries.kind === 'alternation';
  return (
    <section class="bench-form" aria-labelledby="entries">
      <h2 id="entries">{strings.form}</h2>
      <DecimalChoice help={FIELDS_HELP} />
      <UndoButtons state={state} send={send} words={strings} alone />
      <InTurn>
        <fieldset class="bench-part">
          <legend>{strings.sections.what}</legend>
          <div class="fields">
            <SelectField
              id={controlId('kind')}
              class="field-double"
              label={strings.labels.kind}
              value={entries.kind}
              options={BORROW_KINDS}
              words={strings.kinds}
              onChoice={(kind) => send({ type: 'edit', path: 'kind', change: { kind } })}
            />
            {byTurns && <AlongField {...props} />}
          </div>
          <EntryFields
            {...props}
            names={byTurns ? ['own', 'lender', 'date', 'conditions'] : ['part', 'date', 'conditions']}
          />
        </fieldset>
      </InTurn>
      <InTurn>
        {byTurns && <PlacesPart {...props} />}
        {entries.kind === 'dc' && <DcForm {...props} />}
        {entries.kind === 'swap' && <SwapForm {...props} />}
      </InTurn>
      <InTurn>
        {byTurns && <InstrumentForm {...props} />}
        <Begin send={send} />
      </InTurn>
    </section>
  );
}

/** Prepared calibrations and empty forms; undo brings back what stood here. The form begins anew at its head: there the focus goes. */
function Begin({ send }: { readonly send: PartProps['send'] }) {
  const begun = useRef(false);
  useLayoutEffect(() => {
    if (begun.current) document.getElementById(controlId('kind'))?.focus();
    begun.current = false;
  });
  const begin: PartProps['send'] = (action) => {
    begun.current = true;
    send(action);
  };
  return (
    <fieldset class="bench-part needs-script">
      <legend>{strings.begin}</legend>
      <p class="point-actions">
        {DEMONSTRATIONS.map((name) => (
          <button
            key={name}
            type="button"
            class="plain"
            onClick={() => begin({ type: 'demonstration', name })}
          >
            {strings.demonstrations[name]}
          </button>
        ))}
      </p>
      <p class="point-actions">
        {BORROW_KINDS.map((kind) => (
          <button key={kind} type="button" class="plain" onClick={() => begin({ type: 'fresh', kind })}>
            {strings.beginKinds[kind]}
          </button>
        ))}
      </p>
    </fieldset>
  );
}
