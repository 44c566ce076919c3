import { questionOf } from '../../questions/index.ts';
import { partsOf, questionsIn } from '../source/parts.ts';
import type { Unnamed } from './unnamed.ts';

/** As much of a lesson as can be found by it. */
export interface FoundLesson {
  readonly id: string;
  readonly body?: string | undefined;
  readonly data: {
    readonly title: string;
    readonly summary: string;
    readonly objectives: readonly string[];
  };
}

/** The lessons, each with its steps. */
export const lessonDocuments = (lessons: readonly FoundLesson[]): readonly Unnamed[] =>
  lessons.map(({ id, body = '', data: { title, summary, objectives } }) => ({
    kind: 'lesson',
    title,
    path: `/learn/${id}/`,
    names: [],
    parts: [{ at: '', title: '', text: `${summary} ${objectives.join('. ')}.` }, ...partsOf(body)],
  }));

/** The questions, each in the lesson that asks it; what is right is not given away. */
export const questionDocuments = (lessons: readonly FoundLesson[]): readonly Unnamed[] =>
  lessons.flatMap(({ id, body = '', data }) =>
    [...questionsIn(body)].map(([question, step]): Unnamed => {
      const { stem, options } = questionOf(question);
      const answers = options.map(({ text }) => text).join(' · ');
      return {
        kind: 'question',
        title: stem,
        path: `/learn/${id}/${step === '' ? '' : `#${step}`}`,
        names: [],
        parts: [{ at: '', title: data.title, text: answers }],
      };
    }),
  );
