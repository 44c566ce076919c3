import { useEffect, useRef, useState } from 'preact/hooks';
import type { Sitting } from '../questions/bank/types.ts';
import { blankGiven, type Given, type Marked } from './answering.ts';
import { marked as markOf } from './bank.ts';

/** An answer in the making, and what it was worth. */
export interface Attempt {
  readonly given: Given;
  readonly unsure: boolean;
  /** Undefined until it is marked. */
  readonly marked: Marked | undefined;
  /** Why it could not be marked. */
  readonly problem: string | undefined;
  readonly give: (given: Given) => void;
  readonly doubt: (unsure: boolean) => void;
  /** Marks what was given; answers with the mark, or nothing where there is none, or where something was changed or asked for meanwhile. */
  readonly check: () => Promise<Marked | undefined>;
  readonly again: () => void;
}

/** One answer to one question; another question begins anew. */
export function useAttempt(sitting: Sitting, lost: string): Attempt {
  const [given, setGiven] = useState<Given>(() => blankGiven(sitting.payload));
  const [unsure, doubt] = useState(false);
  const [marked, setMarked] = useState<Marked>();
  const [problem, setProblem] = useState<string>();
  /** What marks is fetched with the first mark: by then the form may say something else, or have been sent once more. */
  const turn = useRef(0);
  const again = (): void => {
    turn.current += 1;
    setGiven(blankGiven(sitting.payload));
    doubt(false);
    setMarked(undefined);
    setProblem(undefined);
  };
  useEffect(again, [sitting]);
  return {
    given,
    unsure,
    marked,
    problem,
    doubt: (next) => {
      turn.current += 1;
      doubt(next);
    },
    again,
    give: (next) => {
      turn.current += 1;
      setGiven(next);
      setProblem(undefined);
    },
    check: async () => {
      turn.current += 1;
      const mine = turn.current;
      const found = await markOf(sitting, given).catch(() => undefined);
      if (mine !== turn.current) return undefined;
      if (found === undefined || found.outcome === 'unread') {
        setProblem(found?.reply ?? lost);
        return undefined;
      }
      setMarked(found);
      return found;
    },
  };
}
