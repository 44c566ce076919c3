import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Answer } from '../../src/practice/answers.ts';
import { type AnswerBook, answerBook } from '../../src/practice/kept-answers.ts';
import { DATABASE } from '../../src/store/database.ts';
import { keptStore } from '../../src/store/kept.ts';
import { freshDatabase, noteForm } from '../store/fresh-database.ts';

const opened: { close(): void }[] = [];
function tab(): AnswerBook {
  const book = answerBook();
  opened.push(book);
  return book;
}

beforeEach(() => {
  freshDatabase();
});
afterEach(() => {
  vi.restoreAllMocks();
  for (const each of opened.splice(0)) each.close();
});

const answer = (minute: number, change: Partial<Answer> = {}): Answer => ({
  at: new Date(Date.parse('2031-05-04T10:00:00.000Z') + 60_000 * minute).toISOString(),
  seed: 1,
  grade: 'right',
  mistake: '',
  ...change,
});

const keptOf = async (book: AnswerBook): Promise<unknown> => {
  const all = await book.all();
  return all.ok ? Object.fromEntries(all.value.answers) : all.problem;
};

/** Writes past the book what another version may have left. */
async function lay(id: string, change: object): Promise<void> {
  await tab().all();
  const database = await openDB(DATABASE);
  const head = { id, name: '', created: '', changed: '', revision: 7, version: 1 };
  await database.put('practice', { ...head, value: [answer(0)], ...change });
  database.close();
}

describe('answers in this browser', () => {
  it('come back in another tab, question by question, in the order of time', async () => {
    const book = tab();
    await book.add(new Map([['b', [answer(2)]]]));
    await book.add(
      new Map([
        ['a', [answer(1)]],
        ['b', [answer(0)]],
      ]),
    );
    expect(await keptOf(tab())).toEqual({ a: [answer(1)], b: [answer(0), answer(2)] });
  });

  it('are not counted twice when a file is added a second time', async () => {
    const book = tab();
    const file = new Map([['a', [answer(1), answer(2)]]]);
    await book.add(file);
    await book.add(file);
    expect(await keptOf(book)).toEqual({ a: [answer(1), answer(2)] });
  });

  it('of two tabs at the same moment are all kept', async () => {
    // more than any number of tries would let through one after the other
    const tabs = Array.from({ length: 12 }, tab);
    const added = await Promise.all(tabs.map((book, at) => book.add(new Map([['a', [answer(at)]]]))));
    expect(added.every(({ ok }) => ok)).toBe(true);
    expect(await keptOf(tab())).toEqual({ a: tabs.map((_, at) => answer(at)) });
  });

  it('are forgotten all at once, and nothing else is', async () => {
    const notes = keptStore('sheets', noteForm);
    opened.push(notes);
    await notes.put({ id: 'n', name: 'n', value: { text: 'stays' }, revision: undefined });
    const book = tab();
    await book.add(
      new Map([
        ['a', [answer(1)]],
        ['b', [answer(1)]],
      ]),
    );
    expect(await book.clear()).toEqual({ ok: true, value: undefined });
    expect(await keptOf(book)).toEqual({});
    expect((await notes.get('n')).ok).toBe(true);
  });

  it('are told of to other tabs', async () => {
    const heard = vi.fn();
    const [one, two] = [tab(), tab()];
    const end = one.watch(heard);
    await two.add(new Map([['a', [answer(1)]]]));
    await vi.waitFor(() => expect(heard).toHaveBeenCalled());
    end();
  });
});

describe('what another version wrote', () => {
  it('is counted, left as it is, and never added to', async () => {
    await lay('a', { version: 2, value: { other: 'shape' } });
    const book = tab();
    expect(await book.all()).toEqual({ ok: true, value: { answers: new Map(), unreadable: 1 } });
    expect(await book.add(new Map([['a', [answer(1)]]]))).toEqual({ ok: false, problem: 'newer' });
    const database = await openDB(DATABASE);
    expect(await database.get('practice', 'a')).toMatchObject({ version: 2, value: { other: 'shape' } });
    database.close();
  });

  it('does not keep answers to other questions from being added', async () => {
    await lay('a', { version: 2 });
    const book = tab();
    const both = new Map([
      ['a', [answer(1)]],
      ['b', [answer(1)]],
    ]);
    expect(await book.add(both)).toEqual({ ok: false, problem: 'newer' });
    expect(await keptOf(book)).toEqual({ b: [answer(1)] });
  });

  it.each(['text', [answer(0), { at: 'soon' }]])(
    'and cannot be read (%j) is damaged, not empty',
    async (value) => {
      await lay('a', { value });
      expect(await tab().all()).toEqual({ ok: true, value: { answers: new Map(), unreadable: 1 } });
      expect(await tab().add(new Map([['a', [answer(1)]]]))).toEqual({ ok: false, problem: 'damaged' });
    },
  );

  it('goes with the rest when the reader forgets all', async () => {
    await lay('a', { version: 2 });
    const book = tab();
    await book.clear();
    expect(await book.all()).toEqual({ ok: true, value: { answers: new Map(), unreadable: 0 } });
  });
});

describe('a browser', () => {
  it('that kept sheets before there was practice keeps both', async () => {
    const old = await openDB(DATABASE, 1, {
      upgrade(database) {
        for (const store of ['sheets', 'instruments']) database.createObjectStore(store, { keyPath: 'id' });
        database.createObjectStore('counters');
      },
    });
    const note = {
      id: 'n',
      name: 'n',
      created: '',
      changed: '',
      revision: 3,
      version: 2,
      value: { text: 'old' },
    };
    await old.put('sheets', note);
    await old.put('counters', 3, 'sheets');
    old.close();
    const notes = keptStore('sheets', noteForm);
    opened.push(notes);
    expect(await tab().add(new Map([['a', [answer(1)]]]))).toEqual({ ok: true, value: undefined });
    expect(await notes.get('n')).toMatchObject({ ok: true, value: { revision: 3, value: { text: 'old' } } });
    const put = await notes.put({ id: 'm', name: 'm', value: { text: 'new' }, revision: undefined });
    expect(put.ok && put.value.revision, 'counting goes on').toBe(4);
  });

  it('that keeps nothing says so and throws nothing', async () => {
    vi.stubGlobal('indexedDB', undefined);
    const book = tab();
    expect(await book.all()).toEqual({ ok: false, problem: 'refused' });
    expect(await book.add(new Map([['a', [answer(1)]]]))).toEqual({ ok: false, problem: 'refused' });
    expect(await book.clear()).toEqual({ ok: false, problem: 'refused' });
    vi.unstubAllGlobals();
  });
});
