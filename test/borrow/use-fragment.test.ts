import { useState } from 'preact/hooks';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type FragmentCodec, useFragment } from '../../src/borrow/use-fragment.ts';
import { LOST_ADDRESS } from '../../src/widgets/parts/opening.ts';
import { probe } from '../hooks/probe.ts';
import { stubWindow } from '../hooks/window.ts';

/** Entries that are one text: an address has them behind `t=`, and no more than five letters of them. */
const codec: FragmentCodec<string> = {
  write: (entries) => (entries.length > 5 ? undefined : entries === 'begun' ? '' : `t=${entries}`),
  read: (fragment) => ({
    entries: fragment.startsWith('t=') ? fragment.slice(2) : undefined,
    problems: fragment.startsWith('x') ? ['damaged'] : [],
  }),
};

let events: EventTarget;
const location = { pathname: '/there/', search: '', hash: '' };
beforeEach(() => {
  events = stubWindow();
  location.hash = '';
  Object.assign(document, { documentElement: { setAttribute: vi.fn(), removeAttribute: vi.fn() } });
  vi.stubGlobal('location', location);
  vi.stubGlobal('history', {
    state: null,
    replaceState: (_state: unknown, _title: string, url: string) => {
      location.hash = url.includes('#') ? url.slice(url.indexOf('#')) : '';
    },
  });
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

/** A page whose codec comes when it is let to. */
async function page({ slow = false, lost = false } = {}) {
  let arrive = (): void => undefined;
  const coming = slow ? new Promise<void>((resolve) => (arrive = resolve)) : Promise.resolve();
  const fetched = () => (lost ? Promise.reject(new TypeError('no network')) : coming.then(() => codec));
  const refused: string[] = [];
  const use = await probe(() => {
    const [entries, type] = useState('begun');
    const tooLong = useFragment({
      entries,
      codec: fetched,
      open: type,
      refuse: (told) => void refused.push(...told),
    });
    return { entries, type, tooLong };
  });
  return { ...use, refused, arrive: () => arrive() };
}

function follow(hash: string): void {
  location.hash = hash;
  events.dispatchEvent(new Event('hashchange'));
}

describe('what stands in a form', () => {
  it('is in the address after a rest, or said to be too long for it', async () => {
    const { now, does, end } = await page();
    await does(({ type }) => type('mine'));
    await expect.poll(() => location.hash).toBe('#t=mine');
    await does(({ type }) => type('much too long'));
    await expect.poll(() => now().tooLong).toBe(true);
    expect(location.hash).toBe('#t=mine');
    end();
  });

  it('comes back into the address where the reader goes to a place on the page', async () => {
    const { now, does, end } = await page();
    await does(({ type }) => type('mine'));
    await expect.poll(() => location.hash).toBe('#t=mine');
    await does(() => follow('#main'));
    await expect.poll(() => location.hash).toBe('#t=mine');
    expect(now().entries).toBe('mine');
    end();
  });
});

describe('an address', () => {
  it('opens what it carries when the page wakes, and when another link is followed', async () => {
    location.hash = '#t=sent';
    const { now, does, refused, end } = await page();
    await expect.poll(() => now().entries).toBe('sent');
    await does(() => follow('#t=other'));
    await expect.poll(() => now().entries).toBe('other');
    await does(() => follow('#xx'));
    await expect.poll(() => refused).toEqual(['damaged']);
    expect(location.hash).toBe('#xx');
    end();
  });

  it('that nothing could be fetched to read with is not passed over in silence', async () => {
    location.hash = '#t=sent';
    const { now, refused, end } = await page({ lost: true });
    await expect.poll(() => refused).toEqual([LOST_ADDRESS]);
    expect(now().entries).toBe('begun');
    end();
  });

  it('that comes while a change still rests has the last word, however late it is read', async () => {
    const { now, does, arrive, end } = await page({ slow: true });
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    await does(({ type }) => type('mine'));
    await does(() => follow('#t=sent'));
    await does(() => void vi.advanceTimersByTime(1000)); // longer than a change rests
    vi.useRealTimers();
    await does(arrive);
    await expect.poll(() => now().entries).toBe('sent');
    expect(location.hash).toBe('#t=sent');
    end();
  });
});
