import { useContext, useState } from 'preact/hooks';
import { MOST_PAPERS, topicTitles, USUAL_SHEETS, worksheetAddress } from '../paper.ts';
import type { ShownSitting } from '../shown.ts';
import { strings } from '../strings.ts';
import { type PapersWish, usePapers } from '../use-papers.ts';
import { useQuery } from '../use-query.ts';
import { useSign } from '../use-sign.ts';
import { AroundContext } from './context.ts';
import { PaperFields, WholeField } from './PaperSettings.tsx';
import { PrintedAnswers, PrintedPaper } from './PrintedPaper.tsx';
import { Problems } from './Problems.tsx';
import { Waiting } from './Waiting.tsx';

const ANSWERS = ['none', 'after'] as const;

interface SheetWish extends PapersWish {
  readonly answers: (typeof ANSWERS)[number];
}

/** One to ten papers to print. The page is written with the first, so that it prints without script. */
export function Worksheet({ sittings }: { readonly sittings: readonly ShownSitting[] }) {
  const { topics } = useContext(AroundContext);
  const [written] = useState({ seed: USUAL_SHEETS.seed, topics: [], sittings });
  const [wish, setWish] = useState<SheetWish>(USUAL_SHEETS);
  const [isChanged, setChanged] = useState(false);
  const state = isChanged ? wish : undefined;
  const problems = useQuery({ spec: worksheetAddress, state, open: setWish });
  const { papers: drawn, isWaiting, isLost, retry } = usePapers(wish, USUAL_SHEETS, written);
  const { seen } = useSign();
  const papers = drawn.map((paper) => ({ ...paper, sittings: paper.sittings.map(seen) }));
  const change = (part: Partial<SheetWish>): void => {
    setWish((before) => ({ ...before, ...part }));
    setChanged(true);
  };
  return (
    <div>
      <section class="practice-form screen-only needs-script" aria-labelledby="to-print">
        <h2 id="to-print">{strings.worksheet.settings}</h2>
        <Problems problems={problems} isLost={false} />
        <SheetFields wish={wish} onChange={change} />
        <p class="practice-actions">
          <button type="button" disabled={isWaiting} onClick={() => print()}>
            {strings.worksheet.print}
          </button>
        </p>
        {(isWaiting || isLost) && <Waiting isLost={isLost} retry={retry} />}
      </section>
      {papers.map((paper) => (
        <PrintedPaper key={paper.seed} {...paper} topics={topicTitles(paper.topics, topics)} />
      ))}
      {wish.answers === 'after' && papers.map((paper) => <PrintedAnswers key={paper.seed} {...paper} />)}
    </div>
  );
}

interface SheetFieldsProps {
  readonly wish: SheetWish;
  readonly onChange: (part: Partial<SheetWish>) => void;
}

const SheetFields = ({ wish, onChange }: SheetFieldsProps) => (
  <>
    <WholeField
      label={strings.settings.papers}
      value={wish.papers}
      least={1}
      most={MOST_PAPERS}
      onValue={(papers) => onChange({ papers })}
    />
    <PaperFields {...wish} onChange={onChange} />
    <fieldset class="practice-ticks">
      <legend>{strings.settings.answers}</legend>
      {ANSWERS.map((answers) => (
        <label key={answers} class="choice-option">
          <input
            type="radio"
            name="answers"
            checked={wish.answers === answers}
            onChange={() => onChange({ answers })}
          />
          <span>{strings.worksheet[answers]}</span>
        </label>
      ))}
    </fieldset>
  </>
);
