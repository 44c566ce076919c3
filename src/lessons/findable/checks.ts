import { chapters } from '../../checks/index.ts';
import type { Unnamed } from './unnamed.ts';

/** The chapters of published checks, by their sources and what agrees. */
export const checkDocuments = (): readonly Unnamed[] =>
  chapters().map(({ id, title, about, sources }) => ({
    kind: 'checks',
    title,
    path: `/reference/checks/${id}/`,
    names: [],
    parts: [
      { at: '', title: '', text: about },
      ...sources.map(({ name, citation, checks }) => ({
        at: '',
        title: name,
        text: [citation, ...checks.map((check) => check.title)].join(' '),
      })),
    ],
  }));
