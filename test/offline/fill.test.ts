import { describe, expect, test } from 'vitest';
import { answer, isOurs, keptPaths } from '../../src/offline/answer.ts';
import { fill, NotKeptError, type Place, sweep } from '../../src/offline/fill.ts';
import { bytesOf, cacheName } from '../../src/offline/listed.ts';
import { hashOfText, host, listed, MemoryCache, origin, place } from './kept.ts';

const files = { '': 'start', 'learn/': 'lessons', '_astro/a.js': 'code', '404.html': 'no such page' };
const gone: Place['fetch'] = () => Promise.reject(new TypeError('no network'));

async function asks(here: Place, path: string, mode: RequestMode = 'navigate'): Promise<Response> {
  const url = `${origin}${here.listed.base}${path}`;
  return answer({ url, mode }, here, keptPaths(here));
}
const textOf = async (here: Place, path: string, mode?: RequestMode): Promise<string> =>
  (await asks(here, path, mode)).text();

const whyNot = (work: Promise<void>): Promise<unknown> =>
  work.then(
    () => 'kept',
    (error: unknown) => (error instanceof NotKeptError ? error.why : error),
  );

describe('keeping a site', () => {
  test('fetches each file once, and nothing again that is kept', async () => {
    const cache = new MemoryCache();
    const { fetch, asked } = host(files);
    await fill(place(cache, listed(files), fetch));
    expect(asked.sort()).toEqual(Object.keys(files).sort());
    await fill(place(cache, listed(files), fetch));
    expect(asked).toHaveLength(4);
  });

  test('goes on where the network failed', async () => {
    const cache = new MemoryCache();
    const { fetch, asked } = host(files);
    const list = listed(files);
    const breaks: Place['fetch'] = (request) =>
      asked.length < 2 ? fetch(request) : Promise.reject(new TypeError('gone'));
    expect(await whyNot(fill(place(cache, list, breaks)))).toBe('network');
    const before = cache.held.size;
    expect(before).toBeGreaterThan(0);
    asked.length = 0;
    await fill(place(cache, list, fetch));
    expect(asked).toHaveLength(4 - before);
  });

  test('refuses a file that the host does not have, but for the page that says so', async () => {
    const without = (path: string): Place['fetch'] => {
      const { [path]: _, ...rest } = files as Record<string, string>;
      return host(rest).fetch;
    };
    expect(await whyNot(fill(place(new MemoryCache(), listed(files), without('learn/'))))).toBe('network');
    expect(await whyNot(fill(place(new MemoryCache(), listed(files), without('404.html'))))).toBe('kept');
  });

  test('keeps nothing that is not what was built, whatever answers with it', async () => {
    const login = (path: string): Place['fetch'] =>
      host({ ...files, [path]: '<h1>Welcome to the network of the hut</h1>' }).fetch;
    for (const path of Object.keys(files)) {
      const cache = new MemoryCache();
      expect(await whyNot(fill(place(cache, listed(files), login(path)))), path).toBe('altered');
      expect([...cache.held.keys()].filter((url) => url.startsWith(`${origin}/${path}?`))).toEqual([]);
      expect(await whyNot(fill(place(cache, listed(files), host(files).fetch)))).toBe('kept');
      expect(await textOf(place(cache, listed(files), gone), '')).toBe('start');
    }
  });

  test('waits for the rest of a version of which the host has only a part', async () => {
    const cache = new MemoryCache();
    const { fetch } = host({ ...files, 'learn/': 'lessons of the version before' });
    expect(await whyNot(fill(place(cache, listed(files), fetch)))).toBe('altered');
    await fill(place(cache, listed(files), host(files).fetch));
    expect(await textOf(place(cache, listed(files), gone), 'learn/')).toBe('lessons');
  });

  test('keeps the page for wrong addresses by its own name, and none that the host made', async () => {
    const answers =
      (status: number, text: string): Place['fetch'] =>
      (request) =>
        request.url.endsWith('/404.html')
          ? Promise.resolve(new Response(text, { status }))
          : host(files).fetch(request);
    const pageAfter = async (status: number, text: string): Promise<string> => {
      const cache = new MemoryCache();
      const why = await whyNot(fill(place(cache, listed(files), answers(status, text))));
      const answered = await asks(place(cache, listed(files), gone), 'no/such/');
      return `${why}: ${answered.type === 'error' ? 'error' : await answered.text()}`;
    };
    expect(await pageAfter(404, 'no such page')).toBe('kept: no such page');
    expect(await pageAfter(404, 'the host’s own words')).toBe('kept: error');
    expect(await pageAfter(500, 'no such page')).toBe('network: error');
    expect(await pageAfter(200, 'the start page')).toBe('altered: error');
  });

  test('takes out what it put in where there is no room', async () => {
    const cache = new MemoryCache(2);
    expect(await whyNot(fill(place(cache, listed(files), host(files).fetch)))).toBe('full');
    expect([...cache.held]).toEqual([]);
  });

  test('takes out what an earlier try had put in as well, and nothing of the version at work', async () => {
    const cache = new MemoryCache();
    const older = { '': 'old start', '_astro/a.js': 'code' };
    const atWork = place(cache, listed(older), host(older).fetch);
    await fill(atWork);
    await sweep(atWork);
    const before = [...cache.held.keys()].sort();
    const half: Place['fetch'] = (request) =>
      request.url.endsWith('404.html') ? gone(request) : host(files).fetch(request);
    expect(await whyNot(fill(place(cache, listed(files), half)))).toBe('network');
    expect(cache.held.size).toBeGreaterThan(before.length);
    expect(await whyNot(fill(place(cache, listed(files), half), 1))).toBe('full');
    expect([...cache.held.keys()].sort()).toEqual(before);
  });

  test('does not begin where the browser says that there is no room', async () => {
    const { fetch, asked } = host(files);
    const list = listed(files);
    const needed = 2 * bytesOf(list.files);
    expect(await whyNot(fill(place(new MemoryCache(), list, fetch), needed - 1))).toBe('full');
    expect(asked).toEqual([]);
    expect(await whyNot(fill(place(new MemoryCache(), list, fetch), needed))).toBe('kept');
  });

  test('tells a browser that refuses', async () => {
    const refuses = new MemoryCache();
    refuses.put = () => Promise.reject(new DOMException('no', 'SecurityError'));
    expect(await whyNot(fill(place(refuses, listed(files), host(files).fetch)))).toBe('refused');
  });

  test('has a cache of its own for each path of a host', () => {
    expect(cacheName(listed({}, '/club/'))).not.toBe(cacheName(listed({})));
  });
});

describe('an answer without a network', () => {
  const kept = async (base = '/'): Promise<Place> => {
    const cache = new MemoryCache();
    await fill(place(cache, listed(files, base), host(files, base).fetch));
    return place(cache, listed(files, base), gone);
  };

  test.each(['/', '/club/watt/'])('is the page, whatever state its address carries, at %s', async (base) => {
    const here = await kept(base);
    expect(await textOf(here, '')).toBe('start');
    expect(await textOf(here, 'learn/?a=1&v=1')).toBe('lessons');
    expect(await textOf(here, 'learn/index.html')).toBe('lessons');
    expect(await textOf(here, '%6Cear%6e/')).toBe('lessons');
    expect(await textOf(here, '_astro/a.js', 'cors')).toBe('code');
  });

  test('leads to the slash at the end', async () => {
    const answered = await asks(await kept(), 'learn?a=1');
    expect(answered.status).toBe(301);
    expect(answered.headers.get('location')).toBe(`${origin}/learn/?a=1`);
  });

  test('to an unknown address is the page that says so, and to an unknown part an error', async () => {
    const here = await kept();
    const page = await asks(here, 'no/such/');
    expect([page.status, await page.text()]).toEqual([404, 'no such page']);
    expect((await asks(here, 'learn/%E0%A4%A')).status).toBe(404);
    expect((await asks(here, 'no.png', 'no-cors')).type).toBe('error');
  });

  test('is an error where not even that page is kept', async () => {
    const here = place(new MemoryCache(), listed({}), gone);
    expect((await asks(here, 'no/such/')).type).toBe('error');
  });

  test('is given to what this site is asked for, and to nothing else', async () => {
    const here = await kept('/club/');
    const ours = (url: string, method = 'GET'): boolean => isOurs({ url, method }, here);
    expect(ours(`${origin}/club/learn/`)).toBe(true);
    expect(ours(`${origin}/club/learn/`, 'POST')).toBe(false);
    expect(ours(`${origin}/other/`)).toBe(false);
    expect(ours('https://elsewhere.example/club/')).toBe(false);
  });
});

describe('a newer version', () => {
  const older = { '': 'old start', '_astro/a.js': 'old code', 'same.svg': 'same' };
  const newer = { '': 'new start', '_astro/b.js': 'new code', 'same.svg': 'same' };
  const newest = { '': 'newest start', 'same.svg': 'same' };

  async function update(cache: MemoryCache, now: Record<string, string>): Promise<Place> {
    const { fetch, asked } = host(now);
    const here = place(cache, listed(now), fetch);
    await fill(here);
    if (now !== older) expect(asked).not.toContain('same.svg');
    return here;
  }

  test('leaves the old one whole until it takes over', async () => {
    const cache = new MemoryCache();
    const before = await update(cache, older);
    await sweep(before);
    await update(cache, newer);
    expect(await textOf({ ...before, fetch: gone }, '')).toBe('old start');
  });

  test('answers with its own pages, and with old parts for a page that is still open', async () => {
    const cache = new MemoryCache();
    await sweep(await update(cache, older));
    const here = await update(cache, newer);
    await sweep(here);
    expect(await textOf({ ...here, fetch: gone }, '')).toBe('new start');
    expect(await textOf({ ...here, fetch: gone }, '_astro/a.js', 'cors')).toBe('old code');
  });

  test('lets go of what is two versions old', async () => {
    const cache = new MemoryCache();
    await sweep(await update(cache, older));
    await sweep(await update(cache, newer));
    await sweep(await update(cache, newest));
    const paths = [...cache.held.keys()].map((url) => url.slice(origin.length));
    expect(paths.sort()).toEqual([
      '/?kept-list',
      ...[newer[''], newest['']].map((start) => `/?kept=${hashOfText(start)}`).sort(),
      `/_astro/b.js?kept=${hashOfText('new code')}`,
      `/same.svg?kept=${hashOfText('same')}`,
    ]);
  });
});
