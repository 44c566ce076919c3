import { useState } from 'preact/hooks';
import { type Day, dayIn, dayOf } from '../../instruments/day.ts';
import { Problem } from '../../widgets/parts/Problem.tsx';
import { SelectField } from '../../widgets/parts/SelectField.tsx';
import { controlId, linkPath } from '../form/keys.ts';
import type { LinkInstrumentProps } from '../views/LinkInstrument.tsx';
import { ageWords, linkAgeWords } from './age-words.ts';
import { choiceStrings as strings } from './choice-strings.ts';
import { fullName, statementLine } from './instrument-words.ts';
import { type Known, taken, whyNot } from './take.ts';
import { useKeptInstruments } from './use-instruments.ts';

/** The day of the measurement where the record names one, else today by the clock of the device. */
const dayOfUse = (day: string): Day => dayIn(day) ?? dayOf(new Date());

/** How old the calibration is that a link was taken from; a warning where it is too old for the day of the measurement. */
export function LinkAge({ link, day }: LinkInstrumentProps) {
  const words = linkAgeWords(link, dayOfUse(day));
  if (words === undefined) return null;
  return (
    // a status: it changes while the day is typed, far from here
    <p role="status" class={words.warns ? 'link-age problem' : 'link-age field-note'}>
      {words.text}
    </p>
  );
}

/** The reader's instruments, and a button that states the link by one of them. */
export function LinkChoice(props: LinkInstrumentProps) {
  const kept = useKeptInstruments();
  if (kept === undefined) return <p role="status">{strings.waiting}</p>;
  const items = kept.ok ? kept.value.items : [];
  const told = kept.ok ? (items.length === 0 ? strings.none : undefined) : strings.problems[kept.problem];
  return (
    <div class="link-choice">
      {told !== undefined && <p role="status">{told}</p>}
      {items.length > 0 && <Choice {...props} items={items} />}
      <p>
        <a href="instruments/">{strings.go}</a>
      </p>
    </div>
  );
}

function Choice({ link, method, day, send, name, items }: LinkInstrumentProps & { items: readonly Known[] }) {
  const [chosen, setChosen] = useState(link.instrument);
  const [done, setDone] = useState('');
  const known = items.find(({ id }) => id === chosen) ?? items[0];
  if (known === undefined) return null;
  const { value } = known;
  const on = dayOfUse(day);
  const why = whyNot(value, method, link);
  const age = ageWords(value, on);
  const id = controlId(linkPath(link.id, 'instrument'));
  return (
    <>
      <SelectField
        id={id}
        label={strings.choose}
        about={`${id}-states ${id}-age`}
        value={known.id}
        options={items.map(({ id }) => id)}
        words={Object.fromEntries(items.map((item) => [item.id, fullName(item.value)]))}
        onChoice={(code) => {
          setChosen(code);
          setDone('');
        }}
      />
      <p id={`${id}-states`}>{[statementLine(value), why && strings[why]].filter(Boolean).join('. ')}</p>
      <Problem id={`${id}-age`}>{age?.warns && age.text}</Problem>
      <p>
        <button
          type="button"
          aria-label={strings.takeOf({ instrument: fullName(value), link: name })}
          disabled={why !== undefined}
          onClick={() => {
            send({ type: 'takeInstrument', taken: (sheet) => taken(sheet, { linkId: link.id, known, on }) });
            setDone(strings.taken(fullName(value)));
          }}
        >
          {strings.take}
        </button>
      </p>
      <p role="status">{done}</p>
      <p class="field-help">{strings.copied}</p>
    </>
  );
}
