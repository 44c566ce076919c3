import type { SearchDocument } from '../../search/document.ts';
import { otherNames } from '../../search/synonyms.ts';
import { wordIds, wordOf } from '../words.ts';
import { exampleDocuments, formulaDocuments, pageDocuments, tableDocuments } from './beside.ts';
import { checkDocuments } from './checks.ts';
import { type FoundLesson, lessonDocuments, questionDocuments } from './lessons.ts';
import { practiceDocuments, topicDocuments } from './practice.ts';
import type { Unnamed } from './unnamed.ts';

const wordDocuments = (): readonly Unnamed[] =>
  wordIds().map((id) => {
    const { term, also = '', means, mind = '' } = wordOf(id);
    const text = `${means} ${mind}`.trim();
    return {
      kind: 'word',
      title: term,
      path: `/reference/words/#${id}`,
      names: also === '' ? [] : also.split(', '),
      parts: [{ at: '', title: '', text }],
    };
  });

/** Names that the vocabulary gives for one thing; a single letter names too many. */
const namesOfWords = (): readonly (readonly string[])[] =>
  wordIds()
    .map((id) => wordOf(id))
    .map(({ term, also = '' }) => [term, ...also.split(', ')].filter((name) => name.length > 1))
    .filter((names) => names.length > 1);

/** Everything on this site that can be found, from the lessons given and from all data beside them. */
export function findable(lessons: readonly FoundLesson[]): readonly SearchDocument[] {
  const others = otherNames(namesOfWords());
  const all: readonly Unnamed[] = [
    ...lessonDocuments(lessons),
    ...exampleDocuments(),
    ...wordDocuments(),
    ...formulaDocuments(),
    ...questionDocuments(lessons),
    ...practiceDocuments(),
    ...topicDocuments(),
    ...tableDocuments(),
    ...checkDocuments(),
    ...pageDocuments,
  ];
  return all.map((document) => {
    const { kind, title, path, names, parts } = document;
    const text = [title, ...names, ...parts.flatMap((part) => [part.title, part.text])].join('\n');
    return { ...document, id: `${kind} ${path} ${title}`, also: others(text) };
  });
}
