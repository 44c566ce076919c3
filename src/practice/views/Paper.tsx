import { useRef, useState } from 'preact/hooks';
import { LARGEST_SEED } from '../answers.ts';
import type { BegunPaper } from '../begun-paper.ts';
import { PAPER, type PaperWish, paperAddress } from '../paper.ts';
import { strings } from '../strings.ts';
import { useBegun } from '../use-begun.ts';
import { useBook } from '../use-book.ts';
import { usePaper } from '../use-paper.ts';
import { useQuery } from '../use-query.ts';
import { BegunOffer } from './BegunOffer.tsx';
import { PaperReview } from './PaperReview.tsx';
import { PaperFields } from './PaperSettings.tsx';
import { PaperTable } from './PaperTable.tsx';
import { Problems } from './Problems.tsx';
import { StoreNote } from './StoreNote.tsx';

const CLOCKS = ['none', 'each'] as const;
const USUAL: PaperWish = { seed: 1, length: PAPER.usual, topics: '' };

/** A mock paper: chosen, answered in any order, handed in, and looked through again. */
export function Paper() {
  const book = useBook();
  const [wish, setWish] = useState(USUAL);
  const [isChanged, setChanged] = useState(false);
  const { paper, isLost, begin, resume, give, handIn, leave } = usePaper(book);
  const { begun, isRefused, forget } = useBegun(paper, wish);
  const state = isChanged ? wish : undefined;
  const problems = useQuery({ spec: paperAddress, state, open: setWish });
  const change = (part: Partial<PaperWish>): void => {
    setWish((before) => ({ ...before, ...part }));
    setChanged(true);
  };
  const section = useRef<HTMLElement>(null);
  const goOn = (left: BegunPaper): void => {
    change({ seed: left.seed, length: left.length, topics: left.topics });
    void resume(left);
  };
  const drop = (): void => {
    forget();
    section.current?.focus(); // its button goes away
  };
  // a paper that is there can be printed, with what was answered so far
  return (
    <section class={paper ? 'round' : 'round needs-script'} ref={section} tabIndex={-1}>
      <Problems problems={problems} isLost={isLost} />
      {begun && <BegunOffer begun={begun} onResume={() => goOn(begun)} onForget={drop} />}
      {paper === undefined && (
        <PaperForm wish={wish} onChange={change} onBegin={(hasClock) => void begin(wish, hasClock)} />
      )}
      {paper && paper.handed === undefined && (
        <PaperTable
          paper={paper}
          wish={wish}
          isRefused={isRefused}
          onGiven={give}
          onHandIn={() => void handIn()}
        />
      )}
      {paper?.handed && <PaperReview paper={paper} wish={wish} handed={paper.handed} onAgain={leave} />}
      <StoreNote book={book} />
    </section>
  );
}

interface PaperFormProps {
  readonly wish: PaperWish;
  readonly onChange: (part: Partial<PaperWish>) => void;
  readonly onBegin: (hasClock: boolean) => void;
}

function PaperForm({ wish, onChange, onBegin }: PaperFormProps) {
  const [hasClock, setClock] = useState(false);
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
        <button
          type="button"
          onClick={() => onChange({ seed: 1 + Math.floor(LARGEST_SEED * Math.random()) })}
        >
          {strings.paper.other}
        </button>
      </p>
      <p class="small muted">{strings.paper.same}</p>
    </form>
  );
}
