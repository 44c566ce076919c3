import { useContext, useMemo, useState } from 'preact/hooks';
import { notedAnswer } from '../answering.ts';
import { LARGEST_SEED } from '../answers.ts';
import { drawn } from '../bank.ts';
import { questionAddress } from '../paper.ts';
import type { ShownSitting } from '../shown.ts';
import { strings } from '../strings.ts';
import { useBook } from '../use-book.ts';
import { useQuery } from '../use-query.ts';
import { AskForm } from './AskForm.tsx';
import { AroundContext } from './context.ts';
import { Problems } from './Problems.tsx';
import { StoreNote } from './StoreNote.tsx';

/** One question by its address, so that somebody can be shown it; the address holds the numbers. */
export function OneQuestion({ sitting: written }: { readonly sitting: ShownSitting }) {
  const { root, topics } = useContext(AroundContext);
  const [sitting, setSitting] = useState(written);
  const [isLost, setLost] = useState(false);
  const [isAskedAnew, setAskedAnew] = useState(false);
  const book = useBook();
  const open = async (seed: number): Promise<void> => {
    const found = await drawn(written, seed).catch(() => undefined);
    setLost(found === undefined);
    if (found) setSitting(found);
  };
  const state = useMemo(() => (sitting === written ? undefined : { seed: sitting.seed }), [sitting, written]);
  const problems = useQuery({
    spec: questionAddress,
    state,
    open: ({ seed }) => open(seed),
  });
  const askAnew = async (): Promise<void> => {
    await open((sitting.seed % LARGEST_SEED) + 1);
    setAskedAnew(true);
  };
  const isDrawn = Object.keys(sitting.drawn).length > 0;
  const topic = topics.find(({ id }) => id === written.topic)?.title ?? '';
  return (
    <div class="round">
      <Problems problems={problems} isLost={isLost} />
      <AskForm
        sitting={sitting}
        after={undefined}
        inTurn={isAskedAnew}
        onMarked={({ marked, unsure }) =>
          void book.note(sitting.id, notedAnswer(sitting, marked, { unsure, at: new Date().toISOString() }))
        }
      />
      <div class="needs-script">
        {isDrawn && (
          <p>
            <button type="button" onClick={() => void askAnew()}>
              {strings.question.other}
            </button>
          </p>
        )}
        <p class="small muted">{strings.question.seed(sitting.seed)}</p>
        <StoreNote book={book} />
      </div>
      <p>
        <a href={`${root}practice/${sitting.topic}/`}>{strings.question.all(topic)}</a>
      </p>
    </div>
  );
}
