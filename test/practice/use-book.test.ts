import { IDBObjectStore } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Answer, Answers } from '../../src/practice/answers.ts';
import { answerBook } from '../../src/practice/kept-answers.ts';
import { useBook } from '../../src/practice/use-book.ts';
import { probe } from '../hooks/probe.ts';
import { comesBack, stubWindow } from '../hooks/window.ts';
import { freshDatabase } from '../store/fresh-database.ts';

let events: EventTarget;
beforeEach(() => {
  freshDatabase();
  events = stubWindow();
});
afterEach(() => {
  vi.restoreAllMocks();
  vi.unstubAllGlobals();
});

const answer = (day: number): Answer => ({
  at: `2031-05-0${day}T10:00:00.000Z`,
  seed: 1,
  grade: 'right',
  mistake: '',
});
const answers = (id: string, day = 1): Answers => new Map([[id, [answer(day)]]]);

/** A tab that has kept something and is closed again. */
async function otherTab(id: string): Promise<void> {
  const book = answerBook();
  await book.add(answers(id));
  book.close();
}

async function page() {
  const use = await probe(useBook);
  return { ...use, ids: () => [...use.now().answers.keys()].sort() };
}

describe('the book of a page', () => {
  it('has what was kept before, and what is given before that is read', async () => {
    await otherTab('kept');
    const { does, now, ids, end } = await page();
    await does(({ add }) => add(answers('given')));
    await expect.poll(() => now().isRead).toBe(true);
    expect(ids()).toEqual(['given', 'kept']);
    await expect.poll(ids).toEqual(['given', 'kept']);
    end();
  });

  it('has what another page kept while this one was away', async () => {
    const { now, ids, end } = await page();
    await expect.poll(() => now().isRead).toBe(true);
    vi.stubGlobal('BroadcastChannel', undefined);
    await otherTab('kept');
    expect(ids()).toEqual([]);
    comesBack(events);
    await expect.poll(ids).toEqual(['kept']);
    end();
  });

  it('still has what could not be kept when it is read again', async () => {
    const { does, now, ids, end } = await page();
    await expect.poll(() => now().isRead).toBe(true);
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('no room', 'QuotaExceededError');
    });
    await does(({ add }) => add(answers('given')));
    expect(now().problem).toBe('full');
    vi.restoreAllMocks();
    await otherTab('kept');
    await expect.poll(ids).toEqual(['given', 'kept']);
    await does(async ({ clear }) => expect(await clear()).toBe(true));
    expect(ids()).toEqual([]);
    end();
  });

  it('says where it could not be cleared', async () => {
    await otherTab('kept');
    const { does, now, ids, end } = await page();
    await expect.poll(() => now().isRead).toBe(true);
    vi.spyOn(IDBObjectStore.prototype, 'delete').mockImplementation(() => {
      throw new DOMException('no', 'InvalidStateError');
    });
    await does(async ({ clear }) => expect(await clear()).toBe(false));
    expect(now().problem).toBe('refused');
    expect(ids()).toEqual(['kept']);
    end();
  });
});
