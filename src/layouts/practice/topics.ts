import type { Around } from '../../practice/facts.ts';
import { bankQuestions } from '../../questions/bank/index.ts';
import { TOPICS, type TopicId } from '../../questions/bank/topics.ts';

/** Which numbers a question has before a reader asks for others: on its page, in lists, for the search. */
export const FIRST_SEED = 1;

/** Topics that have questions, in their order. */
export const practiceTopics = (): Around['topics'] => {
  const asked = new Set(bankQuestions().map(({ topic }) => topic));
  return (Object.keys(TOPICS) as TopicId[])
    .filter((id) => asked.has(id))
    .map((id) => ({ id, ...TOPICS[id] }));
};
