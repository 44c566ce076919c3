import { FIRST_SEED, practiceTopics } from '../../layouts/practice/topics.ts';
import { bankQuestions } from '../../questions/bank/index.ts';
import { sitting } from '../../questions/bank/sitting.ts';
import { TOPICS } from '../../questions/bank/topics.ts';
import type { Unnamed } from './unnamed.ts';

/** The questions to practise, by their words; the answers stay out, or a search would give them away. */
export const practiceDocuments = (): readonly Unnamed[] =>
  bankQuestions().map((question) => ({
    kind: 'question',
    title: sitting(question, FIRST_SEED).stem,
    path: `/practice/q/${question.id}/`,
    names: [],
    parts: [{ at: '', title: '', text: `${TOPICS[question.topic].title}. ${TOPICS[question.topic].words}` }],
  }));

/** The topics to practise, by what they ask about. */
export const topicDocuments = (): readonly Unnamed[] =>
  practiceTopics().map(({ id, title, words }) => ({
    kind: 'page',
    title: `Practice: ${title.charAt(0).toLowerCase()}${title.slice(1)}`,
    path: `/practice/${id}/`,
    names: [],
    parts: [{ at: '', title: '', text: words }],
  }));
