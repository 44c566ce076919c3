import type { TopicId } from '../questions/bank/topics.ts';
import type { Listed } from './plan.ts';
import type { ShownSitting } from './shown.ts';

/** A question as pages list it: no numbers yet, and nothing of how it is made. */
export interface ListedQuestion extends Listed {
  readonly topic: TopicId;
}

export interface TopicFacts {
  readonly id: TopicId;
  readonly title: string;
  readonly words: string;
}

/** What every page of practice knows from the build. */
export interface Around {
  /** Address of the start page, with the slash at its end. */
  readonly root: string;
  /** Titles of the lessons that may be pointed at, by track and slug. */
  readonly lessons: Readonly<Record<string, string>>;
  readonly questions: readonly ListedQuestion[];
  readonly topics: readonly TopicFacts[];
}

/** What a page of practice shows. */
export type Shown =
  | { readonly page: 'home' | 'revision' | 'paper' }
  | { readonly page: 'topic'; readonly topic: TopicId }
  | { readonly page: 'question'; readonly sitting: ShownSitting }
  | { readonly page: 'worksheet'; readonly sittings: readonly ShownSitting[] };

export type PracticeProps = Around & Shown;
