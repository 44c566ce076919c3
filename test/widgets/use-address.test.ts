import { useState } from 'preact/hooks';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { writeQuery } from '../../src/widgets/parts/address.ts';
import { LOST_ADDRESS } from '../../src/widgets/parts/opening.ts';
import { type QueryCodec, useQuery } from '../../src/widgets/parts/use-address.ts';
import { probe } from '../hooks/probe.ts';
import { stubWindow } from '../hooks/window.ts';

const page = { href: '', refuses: false };
const location = {
  get href() {
    return page.href;
  },
  get search() {
    return new URL(page.href).search;
  },
};

beforeEach(() => {
  stubWindow();
  Object.assign(document, {
    documentElement: { setAttribute: vi.fn(), removeAttribute: vi.fn() },
    getElementById: () => null,
  });
  Object.assign(page, { href: 'https://club.example/learn/', refuses: false });
  vi.stubGlobal('location', location);
  vi.stubGlobal('history', {
    state: null,
    replaceState: (_state: unknown, _title: string, url: string) => {
      if (page.refuses) throw new DOMException('too many', 'SecurityError');
      page.href = new URL(url, page.href).href;
    },
  });
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

const db = { type: 'number', key: 'db', label: 'Pad', kind: 'gain', min: -30, max: 30, step: 1 } as const;
const spec = { version: 1, fields: { db: { ...db, decimals: 0, default: 0 } } } as const;
const write = (value: number, instance?: string): void =>
  writeQuery({ spec, state: { db: value }, instance });

describe('a state that is put into the query', () => {
  it('stands there beside what another figure has put there', () => {
    write(3);
    write(4, 'two');
    expect(location.search).toBe('?db=3&v=1&two.db=4&two.v=1');
  });

  it('comes later where the browser refuses it for a while, and does not take that of another figure away', () => {
    vi.useFakeTimers();
    page.refuses = true;
    write(3);
    write(4, 'two');
    expect(location.search).toBe('');
    page.refuses = false;
    vi.advanceTimersByTime(60_000);
    expect(location.search).toBe('?db=3&v=1&two.db=4&two.v=1');
  });
});

describe('an address', () => {
  const codec: QueryCodec<string> = {
    read: (query) => ({ opened: query.slice(1), problems: [] }),
    write: (state) => {
      page.href = `https://club.example/learn/?${state}`;
    },
  };
  const figure = (fetched: () => Promise<QueryCodec<string>>) =>
    probe(() => {
      const [text, open] = useState('begun');
      return { text, problems: useQuery({ codec: fetched, state: undefined, open }) };
    });

  it('is opened', async () => {
    page.href = 'https://club.example/learn/?sent';
    const { now, end } = await figure(() => Promise.resolve(codec));
    await expect.poll(() => now().text).toBe('sent');
    expect(now().problems).toEqual([]);
    end();
  });

  it('that nothing could be fetched to read with is not passed over in silence', async () => {
    page.href = 'https://club.example/learn/?sent';
    const { now, end } = await figure(() => Promise.reject(new TypeError('no network')));
    await expect.poll(() => now().problems).toEqual([LOST_ADDRESS]);
    expect(now().text).toBe('begun');
    end();
  });
});
