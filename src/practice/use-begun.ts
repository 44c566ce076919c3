import { useEffect, useRef, useState } from 'preact/hooks';
import { forgetBegun, keepBegun, keptBegun } from '../store/begun.ts';
import { type BegunPaper, begunFrom, begunOf } from './begun-paper.ts';
import type { PaperWish } from './paper.ts';
import type { PaperState } from './paper-state.ts';

export interface BegunUse {
  /** What was left on the table another time; undefined where nothing was. */
  readonly begun: BegunPaper | undefined;
  /** Whether the paper on the table could not be kept. */
  readonly isRefused: boolean;
  /** Forgets what was left. */
  readonly forget: () => void;
}

/** Keeps the paper on the table with every answer and when the page is left, until it is handed in. */
export function useBegun(paper: PaperState | undefined, wish: PaperWish): BegunUse {
  const [begun, setBegun] = useState<BegunPaper>();
  const [isRefused, setRefused] = useState(false);
  const latest = useRef({ paper, wish });
  latest.current = { paper, wish };
  const keep = (): void => {
    const { paper: table, wish: made } = latest.current;
    if (table !== undefined && table.handed === undefined)
      setRefused(!keepBegun(begunOf(table, made, Date.now())));
  };
  useEffect(() => {
    setBegun(begunFrom(keptBegun()));
    // the time that was spent counts up to the moment when the page is left
    addEventListener('pagehide', keep);
    document.addEventListener('visibilitychange', keep);
    return () => {
      removeEventListener('pagehide', keep);
      document.removeEventListener('visibilitychange', keep);
    };
  }, []);
  useEffect(() => {
    if (paper === undefined) return;
    setBegun(undefined);
    if (paper.handed === undefined) keep();
    else forgetBegun();
  }, [paper]);
  const forget = (): void => {
    forgetBegun();
    setBegun(undefined);
  };
  return { begun, isRefused, forget };
}
