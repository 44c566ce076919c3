import { useState } from 'preact/hooks';
import { LARGEST_SEED } from '../answers.ts';
import type { PaperWish } from '../paper.ts';
import { strings } from '../strings.ts';
import { PaperFields } from './PaperSettings.tsx';

const CLOCKS = ['none', 'each'] as const;

interface PaperFormProps {
  readonly wish: PaperWish;
  readonly onChange: (part: Partial<PaperWish>) => void;
  readonly onBegin: (hasClock: boolean) => void;
}

/** What a paper is to be made of, and with which clock. */
export function PaperForm({ wish, onChange, onBegin }: PaperFormProps) {
  const [hasClock, setClock] = useState(false);
  const [told, setTold] = useState('');
  const another = (): void => {
    const seed = 1 + Math.floor(LARGEST_SEED * Math.random());
    onChange({ seed });
    setTold(strings.paper.heading(seed));
  };
  return (
    <form
      class="practice-form"
      onSubmit={(event) => {
        event.preventDefault();
        onBegin(hasClock);
      }}
    >
      <PaperFields {...wish} onChange={onChange} />
      <fieldset class="practice-ticks">
        <legend>{strings.paper.clock}</legend>
        {CLOCKS.map((clock) => (
          <label key={clock} class="choice-option">
            <input
              type="radio"
              name="clock"
              checked={hasClock === (clock === 'each')}
              onChange={() => setClock(clock === 'each')}
            />
            <span>{strings.paper.clocks[clock]}</span>
          </label>
        ))}
      </fieldset>
      <p class="practice-actions">
        <button type="submit">{strings.paper.begin}</button>
        {/* any other paper will do; its number, which is shown, gives the same one again */}
        <button type="button" onClick={another}>
          {strings.paper.other}
        </button>
        <span class="visually-hidden" role="status">
          {told}
        </span>
      </p>
      <p class="small muted">{strings.paper.same}</p>
    </form>
  );
}
