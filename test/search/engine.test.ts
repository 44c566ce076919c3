import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { SearchDocument } from '../../src/search/document.ts';
import { find, makeIndex, readIndex } from '../../src/search/engine.ts';

const document = (
  title: string,
  {
    kind = 'page',
    text = '',
    head = '',
    names = [],
    also = '',
  }: Partial<Omit<SearchDocument, 'parts'>> & {
    readonly text?: string;
    readonly head?: string;
  },
): SearchDocument => ({
  id: title,
  kind,
  title,
  path: `/${title}/`,
  names,
  also,
  parts: [{ at: '', title: head, text }],
});

const index = makeIndex([
  document('guard band', { kind: 'word', text: 'Room that is left for the uncertainty.' }),
  document('Where the guard stands', { kind: 'lesson', text: 'A band plays. The guard watches.' }),
  document('pad', { kind: 'word', names: ['attenuator'], text: 'Takes decibels away.' }),
  document('Attenuator tables', { kind: 'table', text: 'Attenuator by attenuator.' }),
  document('Cables', {
    kind: 'lesson',
    head: 'Colours of heat',
    text: 'An oscilloscope in a bandwidth.',
    also: 'scope',
  }),
  document('constructor', { text: 'The prototype of everything.' }),
]);
const titles = (query: string): readonly string[] => find(index, query).hits.map(({ title }) => title);

describe('a query finds', () => {
  it.each([
    ['guard band', 'guard band', 'by title'],
    ['GUARD-BAND?', 'guard band', 'whatever its letters and signs'],
    ['what is a guard band', 'guard band', 'as a question'],
    ['gaurd bnd', 'guard band', 'with slips of typing'],
    ['attenuator', 'pad', 'by another name, before what only speaks of it'],
    ['decib', 'pad', 'by a beginning'],
    ['uncertain', 'guard band', 'by its text'],
    ['scope bandwidth', 'Cables', 'by other names and text together'],
    ['color', 'Cables', 'in either spelling'],
    ['constructor', 'constructor', 'by a name that objects have as well'],
  ])('%s: %s, %s', (query, title) => expect(titles(query)[0]).toBe(title));

  it('only what has all its words, and says when it has only some', () => {
    expect(find(index, 'guard decibels')).toMatchObject({ whole: false, said: true });
    expect(titles('guard decibels').toSorted()).toEqual(['Where the guard stands', 'guard band', 'pad']);
    expect(find(index, 'takes decibels')).toMatchObject({ whole: true, said: true });
    expect(titles('takes decibels')).toEqual(['pad']);
  });

  it('nothing where there is nothing', () => {
    expect(find(index, 'zyzzyva')).toEqual({ whole: true, said: true, hits: [] });
  });

  it.each(['', '   ', 'what is it', '±/…', '<>'])(
    'nothing by “%s”, and says that it asks for nothing',
    (query) => expect(find(index, query)).toEqual({ whole: true, said: false, hits: [] }),
  );

  it('no number that is a little different', () => {
    const numbers = makeIndex([document('a', { text: '20.5 dB' }), document('b', { text: '21.5 dB' })]);
    expect(find(numbers, '20.5').hits.map(({ title }) => title)).toEqual(['a']);
  });

  it('with each hit the terms by which it was found', () => {
    expect(find(index, 'takes').hits[0]).toMatchObject({ kind: 'word', path: '/pad/', terms: ['take'] });
  });
});

describe('no query', () => {
  it('breaks the search', () => {
    const awkward = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 300 }),
      fc.constantFrom(
        '__proto__',
        'constructor toString',
        '*',
        '"guard',
        '<script>',
        '\\u0000',
        '💥 %00',
        'a'.repeat(1e5),
      ),
    );
    fc.assert(
      fc.property(awkward, (query) => {
        const { hits } = find(index, query);
        expect(hits.length).toBeLessThanOrEqual(6);
      }),
    );
  });

  it('is looked at beyond its first two hundred characters', () => {
    expect(titles(`${'x '.repeat(100)}guard`)).toEqual([]);
    expect(titles(`${'the '.repeat(40)}guard`)).toHaveLength(2);
  });
});

describe('an index', () => {
  it('finds the same once it was written and read', () => {
    const read = readIndex(JSON.stringify(index));
    for (const query of ['guard band', 'color', 'attenuator', 'nothing']) {
      expect(find(read, query)).toEqual(find(index, query));
    }
  });

  it('is refused if it is none', () => {
    expect(() => readIndex('<!doctype html>')).toThrow();
  });
});
