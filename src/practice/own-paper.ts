import {
  forgetPaper,
  type Keeping,
  keepPaper,
  type LyingPaper,
  lyingPaper,
  newPaperId,
  standingOf,
} from '../store/begun.ts';
import type { BegunPaper } from './begun-paper.ts';
import { paperIn } from './left-papers.ts';

/**
 * The paper of one tab, and as what this tab last saw it in the browser: where another tab has gone on with it, this one writes nothing
 * over it.
 */
export interface OwnPaper {
  /** Keeps the paper as it is now. */
  keep(text: string): Keeping;
  /** How it stands to what lies in the browser; undefined where this tab has kept none. */
  standing(): Keeping | undefined;
  /** Makes one that was left this tab's own. */
  take(left: LyingPaper): void;
  /** The paper as another tab has kept it, which is this tab's to go on with from now on; undefined where there is none to read. */
  others(): BegunPaper | undefined;
  /** Whatever is kept next is a paper of its own. */
  apart(): void;
  /** It is handed in: forgets it. */
  end(): void;
}

/** Where the paper of a tab lies, and its text as seen last; undefined where it was never kept. */
interface Seen {
  readonly id: string;
  readonly text: string | undefined;
}

const isKept = (seen: Seen | undefined): seen is LyingPaper => seen?.text !== undefined;

export function ownPaper(): OwnPaper {
  let own: Seen | undefined;
  return {
    keep(text) {
      const { id, text: seen } = own ?? { id: newPaperId(), text: undefined };
      const came = keepPaper({ id, text }, seen);
      own = { id, text: came === 'kept' ? text : seen };
      return came;
    },
    standing: () => (isKept(own) ? standingOf(own) : undefined),
    take: ({ id, text }) => {
      own = { id, text };
    },
    others() {
      const text = own && lyingPaper(own.id);
      const paper = text === undefined ? undefined : paperIn(text);
      if (own && paper) own = { id: own.id, text };
      return paper;
    },
    apart: () => {
      own = undefined;
    },
    end() {
      if (isKept(own)) forgetPaper(own);
      own = undefined;
    },
  };
}
