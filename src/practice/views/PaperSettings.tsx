import { useContext, useId } from 'preact/hooks';
import { LARGEST_SEED } from '../answers.ts';
import { chosenTopics, PAPER, topicsText } from '../paper.ts';
import { strings } from '../strings.ts';
import { AroundContext } from './context.ts';

interface WholeFieldProps {
  readonly label: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly onValue: (value: number) => void;
}

/** A field for a whole number; what is out of range becomes the nearest that may be, and what is no number is not taken. */
export function WholeField({ label, value, least, most, onValue }: WholeFieldProps) {
  const id = useId();
  return (
    <div class="practice-field">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="number"
        min={least}
        max={most}
        step={1}
        value={value}
        onChange={({ currentTarget }) => {
          const typed = Math.round(currentTarget.valueAsNumber);
          if (Number.isFinite(typed)) onValue(Math.min(most, Math.max(least, typed)));
          else currentTarget.value = String(value);
        }}
      />
    </div>
  );
}

interface PaperFieldsProps {
  readonly seed: number;
  readonly length: number;
  /** As in an address: ids with full stops between, empty for all. */
  readonly topics: string;
  readonly onChange: (change: { seed?: number; length?: number; topics?: string }) => void;
}

/** What a paper is made of: its number, how many questions, and from which topics. */
export function PaperFields({ seed, length, topics: text, onChange }: PaperFieldsProps) {
  const { topics } = useContext(AroundContext);
  const all = topics.map(({ id }) => id);
  const ticked = text === '' ? [] : chosenTopics(text, all);
  const tick = (id: string, isOn: boolean): void => {
    const chosen = all.filter((each) => (each === id ? isOn : ticked.includes(each)));
    onChange({ topics: topicsText(chosen, all) });
  };
  return (
    <>
      <WholeField
        label={strings.settings.length}
        value={length}
        least={PAPER.least}
        most={PAPER.most}
        onValue={(value) => onChange({ length: value })}
      />
      <WholeField
        label={strings.settings.seed}
        value={seed}
        least={1}
        most={LARGEST_SEED}
        onValue={(value) => onChange({ seed: value })}
      />
      <fieldset class="practice-ticks">
        <legend>{strings.settings.topics}</legend>
        <p class="small muted">{strings.settings.allTopics}</p>
        {topics.map(({ id, title }) => (
          <label key={id} class="choice-option">
            <input
              type="checkbox"
              checked={ticked.includes(id)}
              onChange={(event) => tick(id, event.currentTarget.checked)}
            />
            <span>{title}</span>
          </label>
        ))}
      </fieldset>
    </>
  );
}
