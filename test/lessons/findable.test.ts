import { describe, expect, it } from 'vitest';
import { examples } from '../../src/examples/index.ts';
import { FIRST_SEED } from '../../src/layouts/practice/topics.ts';
import { findable } from '../../src/lessons/findable/index.ts';
import { wordIds, wordOf } from '../../src/lessons/words.ts';
import { bankQuestions } from '../../src/questions/bank/index.ts';
import { sitting } from '../../src/questions/bank/sitting.ts';
import { questionIds, questionOf } from '../../src/questions/index.ts';
import type { Kind } from '../../src/search/document.ts';
import { find, makeIndex } from '../../src/search/engine.ts';
import { lineOf } from '../../src/search/line.ts';
import { lessonFiles } from './lesson-files.ts';

const lessons = lessonFiles();
const documents = findable(lessons);
const index = makeIndex(documents);
const titlesOf = (kind: Kind): readonly string[] =>
  documents.filter((document) => document.kind === kind).map(({ title }) => title);

describe('what can be found', () => {
  it('is every lesson, example, word and question, each once', () => {
    expect(titlesOf('lesson')).toEqual(lessons.map(({ data }) => data.title));
    expect(lessons.length).toBeGreaterThan(20);
    expect(titlesOf('example')).toEqual(examples.map(({ title }) => title));
    expect(titlesOf('word')).toEqual(wordIds().map((id) => wordOf(id).term));
    expect(titlesOf('question').toSorted()).toEqual(
      [
        ...questionIds().map((id) => questionOf(id).stem),
        // as a question's page has it without script: with the numbers of the first seed
        ...bankQuestions().map((question) => sitting(question, FIRST_SEED).stem),
      ].toSorted(),
    );
    for (const kind of ['formula', 'table', 'checks', 'page'] as const)
      expect(titlesOf(kind), kind).not.toEqual([]);
    expect(new Set(documents.map(({ id }) => id)).size).toBe(documents.length);
  });

  it('is found by its title first', () => {
    const others = documents.flatMap(({ title }) => {
      const [first] = find(index, title).hits;
      return first?.title.toLowerCase() === title.toLowerCase() ? [] : [`${title}: ${first?.title}`];
    });
    // the page of corrections comes after the word that it is named for
    expect(others).toEqual(['Corrections: correction']);
  });

  it('has no marks, tags or holes in its text', () => {
    for (const { title, parts } of documents.filter(({ kind }) => kind === 'lesson'))
      for (const { text } of parts) {
        expect(text, title).not.toMatch(/[<>{}]|\*\*|\]\(|undefined|NaN|\\n/);
        expect(text.length, title).toBeGreaterThan(0);
      }
  });

  it('does not give away what is right', () => {
    for (const id of questionIds()) {
      const { stem, worked } = questionOf(id);
      const { parts } = documents.find(({ kind, title }) => kind === 'question' && title === stem) ?? {};
      expect(JSON.stringify(parts), id).not.toContain(worked);
    }
  });
});

describe('a reader who asks for', () => {
  it.each([
    ['attenuator', 'word', 'pad'],
    ['what is a guard band', 'word', 'guard band'],
    ['expanded uncertanty', 'word', 'expanded uncertainty'],
    ['PEP', 'word', 'peak envelope power'],
    ['calibrated', 'word', 'calibration'],
    ['dummy load safety', 'page', 'Cautions'],
    ['formula sheet', 'page', 'Formula sheet'],
    ['practice reflections', 'page', 'Practice: reflections'],
    ['all lessons', 'page', 'All lessons'],
    ['published values', 'page', 'How we know the sums are right'],
  ])('%s finds the %s “%s” among the first three', (query, kind, title) => {
    const first = find(index, query).hits.slice(0, 3);
    expect(first.map((hit) => `${hit.kind} ${hit.title}`)).toContain(`${kind} ${title}`);
  });

  it.each(['scope bandwidth', 'VSWR', 'feeder loss', 'color of the band', 'Monte Carlo', 'aerial gain'])(
    '%s finds a lesson, and sees why',
    (query) => {
      const lesson = find(index, query).hits.find(({ kind }) => kind === 'lesson');
      expect(lesson).toBeDefined();
      if (lesson) expect(lineOf(lesson.parts, lesson.terms).pieces).not.toEqual([]);
    },
  );
});
