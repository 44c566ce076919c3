import { useEffect, useRef, useState } from 'preact/hooks';
import { forgetPaper, type Keeping, type LyingPaper } from '../store/begun.ts';
import { type BegunPaper, begunOf } from './begun-paper.ts';
import { type LeftPapers, leftPapers, NOTHING_LEFT } from './left-papers.ts';
import { ownPaper } from './own-paper.ts';
import type { PaperWish } from './paper.ts';
import type { PaperState } from './paper-state.ts';

export interface BegunUse extends LeftPapers {
  /** Whether the paper on the table is kept; `changed` and `gone` where another tab has gone on with it, or ended it. */
  readonly keeping: Keeping;
  /** Forgets one that was left. */
  readonly forget: (left: LyingPaper) => void;
  /** Says that one that was left comes on the table. */
  readonly take: (left: LyingPaper) => void;
  /** Says that a new one comes on the table. */
  readonly letGo: () => void;
  /** The paper of this tab as the other has it, for this tab to go on with; undefined where there is none. */
  readonly others: () => BegunPaper | undefined;
  /** Keeps what is on the table beside what the other tab has. */
  readonly keepApart: () => void;
}

/** Calls when the page is left or comes back: the time that was spent counts up to then. */
function onLeaving(call: () => void): () => void {
  addEventListener('pagehide', call);
  document.addEventListener('visibilitychange', call);
  return () => {
    removeEventListener('pagehide', call);
    document.removeEventListener('visibilitychange', call);
  };
}

/** Keeps the paper on the table with every answer and when the page is left, until it is handed in. */
export function useBegun(paper: PaperState | undefined, wish: PaperWish): BegunUse {
  const [papers, setPapers] = useState(NOTHING_LEFT);
  const [keeping, setKeeping] = useState<Keeping>('kept');
  const { current: own } = useRef(ownPaper());
  const latest = useRef({ paper, wish });
  latest.current = { paper, wish };
  const keep = (): void => {
    const { paper: table, wish: made } = latest.current;
    if (table !== undefined && table.handed === undefined)
      setKeeping(own.keep(JSON.stringify(begunOf(table, made, Date.now()))));
  };
  useEffect(() => onLeaving(keep), []);
  useEffect(() => {
    const look = (): void => {
      const standing = own.standing();
      if (standing === undefined) setPapers(leftPapers());
      else setKeeping(standing);
    };
    addEventListener('storage', look);
    return () => removeEventListener('storage', look);
  }, []);
  useEffect(() => {
    if (paper !== undefined && paper.handed === undefined) return keep();
    own.end();
    setKeeping('kept');
    setPapers(leftPapers());
  }, [paper]);
  return {
    ...papers,
    keeping,
    forget: (left) => {
      forgetPaper(left);
      setPapers(leftPapers());
    },
    take: own.take,
    letGo: own.apart,
    others: own.others,
    keepApart: () => {
      own.apart();
      keep();
    },
  };
}
