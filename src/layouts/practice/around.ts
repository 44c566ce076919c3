import type { Around } from '../../practice/facts.ts';
import { bankQuestions } from '../../questions/bank/index.ts';
import { MISCONCEPTIONS } from '../../questions/bank/misconceptions.ts';
import type { Sitting } from '../../questions/bank/types.ts';
import { link } from '../link.ts';
import { practiceTopics } from './topics.ts';

/** As much of a lesson as practice tells of it. */
interface Titled {
  readonly id: string;
  readonly data: { readonly title: string };
}

/** What pages with many questions know: all questions, all topics, and the lessons that questions and mistakes belong to. */
export function practiceAround(lessons: readonly Titled[]): Around {
  const questions = bankQuestions();
  return {
    root: link('/'),
    questions: questions.map(({ id, topic }) => ({ id, topic })),
    topics: practiceTopics(),
    lessons: titlesOf(lessons, [
      ...questions.map(({ lesson }) => lesson),
      ...Object.values(MISCONCEPTIONS).map(({ cure }) => cure),
    ]),
  };
}

/** What the page of one question knows: its own topic, its lesson, and those of the mistakes that it can tell. */
export function questionAround(lessons: readonly Titled[], sitting: Sitting): Around {
  const all: Readonly<Record<string, { readonly cure: string }>> = MISCONCEPTIONS;
  const cures = mistakesIn(sitting).flatMap((id) => all[id]?.cure ?? []);
  return {
    root: link('/'),
    questions: [],
    topics: practiceTopics().filter(({ id }) => id === sitting.topic),
    lessons: titlesOf(lessons, [sitting.lesson, ...cures]),
  };
}

const named = ({ misconception }: { readonly misconception?: string | undefined }): readonly string[] =>
  misconception === undefined ? [] : [misconception];

function mistakesIn({ payload }: Sitting): readonly string[] {
  switch (payload.kind) {
    case 'choice':
      return payload.options.flatMap(named);
    case 'place':
      return payload.places.flatMap(named);
    case 'typed':
      return payload.near.flatMap(named);
    case 'order':
      return [payload.reversed, payload.otherwise].flatMap(named);
  }
}

const titlesOf = (lessons: readonly Titled[], ids: readonly string[]): Around['lessons'] =>
  Object.fromEntries(lessons.filter(({ id }) => ids.includes(id)).map(({ id, data }) => [id, data.title]));

/** The place of a question within its topic, counted from one, and how many there are. */
export function placeInTopic(id: string): {
  readonly number: number;
  readonly before: string | undefined;
  readonly after: string | undefined;
} {
  const all = bankQuestions();
  const topic = all.find((question) => question.id === id)?.topic;
  const own = all.filter((question) => question.topic === topic).map((question) => question.id);
  const at = own.indexOf(id);
  return { number: at + 1, before: own[at - 1], after: own[at + 1] };
}

/** The beginning of a text for a search engine, cut between words. */
export const opening = (text: string, most = 150): string =>
  text.length <= most ? text : `${text.slice(0, text.lastIndexOf(' ', most))} …`;
