import { useEffect, useState } from 'preact/hooks';
import { drawn } from './bank.ts';
import type { ListedQuestion } from './facts.ts';
import type { ShownSitting } from './shown.ts';

export interface Drawn {
  /** Nothing until it is there. */
  readonly sitting: ShownSitting | undefined;
  /** Whether it could not be fetched; `retry` tries again. */
  readonly isLost: boolean;
  readonly retry: () => void;
}

/** A question with the numbers of a seed; fetches what makes it. */
export function useDrawn(question: ListedQuestion, seed: number): Drawn {
  const [sitting, setSitting] = useState<ShownSitting>();
  const [isLost, setLost] = useState(false);
  const [attempt, setAttempt] = useState(0);
  useEffect(() => {
    let isWanted = true;
    setLost(false);
    drawn(question, seed).then(
      (found) => isWanted && setSitting(found),
      () => isWanted && setLost(true),
    );
    return () => {
      isWanted = false;
    };
  }, [question, seed, attempt]);
  return { sitting, isLost, retry: () => setAttempt((before) => before + 1) };
}
