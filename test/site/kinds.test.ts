import { expect, test } from 'vitest';
import { kindProblems, pageOfEachKind } from './kinds.ts';

const page = (path: string, html = '') => ({ path, file: `${path.slice(1)}index.html`, html });
const kinds = [
  { name: 'Start', paths: /^\/$/ },
  { name: 'Lesson', paths: /^\/learn\/[^/]+\/$/ },
];

test('a page of no kind, a page of two, and a kind without a page are told', () => {
  expect(kindProblems([page('/'), page('/learn/a/')], kinds)).toEqual([]);
  expect(kindProblems([page('/'), page('/new/')], kinds)).toEqual(['/new/: no kind', 'Lesson: no page']);
  expect(kindProblems([page('/')], [...kinds.slice(0, 1), { name: 'All', paths: /^\// }])).toEqual([
    '/: Start and All',
  ]);
});

test('of each kind the page with most on it is taken, and a kind without a page is left out', () => {
  const pages = [page('/learn/a/', 'short'), page('/learn/b/', 'longer than that'), page('/', 'x')];
  expect(pageOfEachKind(pages, kinds).map(({ path }) => path)).toEqual(['/', '/learn/b/']);
  expect(pageOfEachKind(pages.slice(0, 2), kinds).map(({ name }) => name)).toEqual(['Lesson']);
});
