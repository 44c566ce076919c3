import { readdirSync } from 'node:fs';
import { describe, expect, it, vi } from 'vitest';
import { practiceTopics } from '../../src/layouts/practice/topics.ts';
import { bankQuestion, bankQuestions } from '../../src/questions/bank/index.ts';
import { sitting } from '../../src/questions/bank/sitting.ts';

vi.mock('../../src/layouts/link.ts', () => ({ link: (path: string) => `/club${path}` }));
const { opening, placeInTopic, practiceAround, questionAround } = await import(
  '../../src/layouts/practice/around.ts'
);

const folder = new URL('../../src/lessons/', import.meta.url);
/** Every lesson that there is, with an invented title. */
const lessons = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.mdx'))
  .map((file) => file.replaceAll('\\', '/').replace(/\.mdx$/, ''))
  .map((id) => ({ id, data: { title: `Title of ${id}` } }));

describe('what pages of practice know from the build', () => {
  const around = practiceAround(lessons);

  it('is every question once, with its topic and nothing of how it is made', () => {
    expect(around.questions).toEqual(bankQuestions().map(({ id, topic }) => ({ id, topic })));
    expect(new Set(around.questions.map(({ id }) => id)).size).toBe(around.questions.length);
  });

  it('is every topic that has questions', () => {
    expect(around.topics).toEqual(practiceTopics());
    for (const { id, title, words } of around.topics) {
      expect(around.questions.some(({ topic }) => topic === id)).toBe(true);
      expect(`${title}${words}`).not.toBe('');
    }
  });

  it('has a title for the lesson of each question', () => {
    for (const { lesson } of bankQuestions()) expect(around.lessons[lesson]).toBe(`Title of ${lesson}`);
  });

  it('has the address of the start page under whatever base', () => {
    expect(around.root).toBe('/club/');
  });
});

describe('what the page of one question knows', () => {
  it.each(bankQuestions().map(({ id }) => id))('is its topic, and the lessons it may point at: %s', (id) => {
    const drawn = sitting(bankQuestion(id), 1);
    const around = questionAround(lessons, drawn);
    expect(around.topics.map((topic) => topic.id)).toEqual([drawn.topic]);
    expect(around.lessons[drawn.lesson]).toBeDefined();
    const all = practiceAround(lessons);
    for (const lesson of Object.keys(around.lessons)) expect(all.lessons[lesson]).toBeDefined();
    expect(Object.keys(around.lessons).length).toBeLessThan(10);
  });
});

describe('the place of a question', () => {
  it('leads from the first of its topic to the last and back', () => {
    for (const { id: topic } of practiceTopics()) {
      const own = bankQuestions().filter((question) => question.topic === topic);
      const places = own.map(({ id }) => placeInTopic(id));
      expect(places.map(({ number }) => number)).toEqual(own.map((_, at) => at + 1));
      expect(places.map(({ before }) => before)).toEqual([
        undefined,
        ...own.slice(0, -1).map(({ id }) => id),
      ]);
      expect(places.map(({ after }) => after)).toEqual([...own.slice(1).map(({ id }) => id), undefined]);
    }
  });
});

describe('the beginning of a text', () => {
  it('is the text where it is short', () => {
    expect(opening('Short.')).toBe('Short.');
  });

  it('ends between words where it is cut', () => {
    expect(opening('one two three four', 9)).toBe('one two …');
    expect(opening('one two three four', 13)).toBe('one two three …');
  });

  it('tells one question from another', () => {
    const all = bankQuestions().map((question) => `${question.topic} ${opening(sitting(question, 1).stem)}`);
    const twice = all.filter((text, at) => all.indexOf(text) !== at);
    expect(twice).toEqual([]);
  });
});
