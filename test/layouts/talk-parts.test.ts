import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { examples } from '../../src/examples/index.ts';
import { exampleSource, lessonSource } from '../../src/layouts/talk-parts.ts';
import { isPart } from '../../src/stage/talk.ts';
import { filesBelow } from '../rules/sources.ts';

type Lesson = Parameters<typeof lessonSource>[0];
const steps = JSON.parse(readFileSync(new URL('../lessons/steps.json', import.meta.url), 'utf8')) as Readonly<
  Record<string, readonly string[]>
>;
const lessons = filesBelow('src/lessons', ['.mdx']).map(({ path, text }) => ({
  id: path.replace(/^src\/lessons\/|\.mdx$/g, ''),
  body: text,
  data: { title: path } as Lesson['data'],
}));

describe('what a talk can be made of', () => {
  it('is every step of every lesson, by the names that people have linked to', () => {
    for (const lesson of lessons) {
      const source = lessonSource(lesson);
      const ids = source.steps.map(({ id }) => id);
      // a step with several slides goes on under its own name with a number
      expect(ids.filter((id) => !/-\d+$/.test(id))).toEqual(steps[lesson.id]);
      expect(new Set(ids).size).toBe(ids.length);
      expect(source.steps.every(({ part, title }) => isPart(part) && title.length > 2)).toBe(true);
    }
    expect(lessons.length).toBe(Object.keys(steps).length);
  });

  it('is every step of an example, the question first and the answer behind the sum', () => {
    for (const example of examples) {
      const ids = exampleSource(example).steps.map(({ id }) => id);
      expect(new Set(ids).size).toBe(ids.length);
      expect(ids[0]).toBe('question');
      const names = ids.filter((id) => !/-\d+$/.test(id) || id.startsWith('step-'));
      const band = example.kind === 'chain' ? ['chain', 'tries'] : ['figure'];
      expect(names.slice(-3 - band.length)).toEqual([...band, 'answer', 'mistake', 'care']);
      expect(names).toHaveLength(example.steps().length + band.length + 4);
    }
  });

  it('is every slide of a step that has several, each mistake by what is done', () => {
    const body = `<Step id="a" title="One">\n\n<Mistake what="first" costs="x">\n\n<More>y</More>\n\n</Mistake>\n\n<Mistake what="second" costs="x">\n\n</Mistake>\n\n</Step>
<Step id="b" title="Two">\n\nSaid.\n\n<StageBreak />\n\nSaid again.\n\n<More>\n\n<Mistake what="z" costs="x"></Mistake>\n\n</More>\n\n</Step>`;
    const source = lessonSource({ id: 'x/y', body, data: { title: 't' } as Lesson['data'] });
    expect(source.steps.map(({ id, title }) => `${id}: ${title}`)).toEqual([
      'a: One: first',
      'a-2: One: second',
      'b: Two',
      'b-2: Two (2 of 2)',
    ]);
  });
});
