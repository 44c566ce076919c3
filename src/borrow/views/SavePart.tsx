import { useState } from 'preact/hooks';
import { LONGEST_TEXT } from '../../bench/read/spec.ts';
import type { InstrumentKind } from '../../instruments/instrument.ts';
import { fieldTexts } from '../../text/field-texts.ts';
import { isolated } from '../../text/isolate.ts';
import { SelectField } from '../../widgets/parts/SelectField.tsx';
import { TextField } from '../../widgets/parts/TextField.tsx';
import { useDecimal } from '../../widgets/parts/use-decimal.ts';
import type { Outcome } from '../outcome.ts';
import { saveStrings as strings } from '../save-strings.ts';
import { fitting, kindsFor, savedTo } from '../saved.ts';
import { NEW, useInstruments } from '../use-instruments.ts';

interface SavePartProps {
  readonly outcome: Outcome;
  /** What the reader calls it in the form. */
  readonly name: string;
  readonly dated: boolean;
  readonly usable: boolean;
  /** Address of the list of instruments. */
  readonly list: string;
}

/** Saves what was found to one of the reader's instruments, or to a new one. The store is opened when it is asked for. */
export function SavePart(props: SavePartProps) {
  const { list: all, open, put, told } = useInstruments();
  const [chosen, setChosen] = useState(NEW);
  const [kind, setKind] = useState<InstrumentKind>();
  const [typed, setTyped] = useState<string>();
  const decimal = useDecimal();
  const { outcome } = props;
  const kinds = kindsFor(outcome);
  const list = all && fitting(outcome, all);
  const own = kinds.find((each) => each === kind) ?? kinds[0] ?? 'other';
  const name = typed ?? props.name;
  const kept = list?.find(({ id }) => id === chosen);
  const save = (): void => {
    if (outcome.kind === 'none') return;
    const entries = fieldTexts(savedTo(outcome, kept?.value ?? { kind: own }), decimal, kept?.value);
    put(kept, kept ? entries : { ...entries, label: name.trim() });
  };
  const nameless = kept === undefined && name.trim() === '';
  return (
    <section class="bench-part save-part needs-script" aria-labelledby="save">
      <h2 id="save">{strings.heading}</h2>
      <p class="field-help measure">{strings.help}</p>
      {list === undefined ? (
        <p class="point-actions">
          <button type="button" class="plain" onClick={open}>
            {strings.open}
          </button>
        </p>
      ) : (
        <>
          <div class="fields">
            <SelectField
              id="save-which"
              label={strings.which}
              value={kept?.id ?? NEW}
              options={[NEW, ...list.map(({ id }) => id)]}
              words={Object.fromEntries([
                [NEW, strings.fresh],
                ...list.map((each) => [each.id, isolated(each.name) || strings.unnamed]),
              ])}
              onChoice={setChosen}
            />
            {kept === undefined && (
              <>
                <SelectField
                  id="save-kind"
                  label={strings.kind}
                  value={own}
                  options={kinds}
                  words={strings.kinds}
                  onChoice={setKind}
                />
                <TextField
                  id="save-name"
                  label={strings.name}
                  value={name}
                  maxLength={LONGEST_TEXT}
                  problem={nameless ? strings.nameNeeded : undefined}
                  onText={setTyped}
                />
              </>
            )}
          </div>
          {!props.dated && <p class="measure">{strings.noDate}</p>}
          {!props.usable && <p class="measure">{strings.notUsable}</p>}
          <p class="point-actions">
            <button
              type="button"
              class="plain"
              disabled={nameless || !props.usable || outcome.kind === 'none'}
              onClick={save}
            >
              {strings.save}
            </button>
          </p>
        </>
      )}
      <p role="status" class="measure">
        {told} {told !== undefined && <a href={props.list}>{strings.list}</a>}
      </p>
    </section>
  );
}
