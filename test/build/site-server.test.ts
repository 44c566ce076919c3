import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type RunningSite, serveSite } from '../../src/build/site-server.ts';

let directory = '';
const running: RunningSite[] = [];
const host = '127.0.0.1';

/** Serves the folder for the length of the tests. */
async function serve({ base = '/', port = 0 }: { base?: string; port?: number }): Promise<string> {
  const site = await serveSite({ directory, base, host, port });
  running.push(site);
  return site.url;
}

/** Status and text of an answer, and where it sends the reader; redirects are not followed. */
async function get(url: string): Promise<{ status: number; text: string; location: string | null }> {
  const answer = await fetch(url, { redirect: 'manual' });
  return { status: answer.status, text: await answer.text(), location: answer.headers.get('location') };
}

beforeAll(() => {
  directory = mkdtempSync(join(tmpdir(), 'site-'));
  mkdirSync(join(directory, 'learn'));
  writeFileSync(join(directory, 'index.html'), 'start');
  writeFileSync(join(directory, '404.html'), 'no such page');
  writeFileSync(join(directory, 'learn/index.html'), 'learn');
});
afterAll(async () => {
  for (const site of running) await site.close();
  rmSync(directory, { recursive: true, force: true });
});

describe.each(['/', '/club/watt/', '/club/watt'])('a site built for %s', (base) => {
  test('opens its pages, and sends those who forget the slash to it', async () => {
    const url = await serve({ base });
    expect(url).toMatch(/\/$/);
    expect(await get(url)).toMatchObject({ status: 200, text: 'start' });
    expect(await get(`${url}learn/`)).toMatchObject({ status: 200, text: 'learn' });
    expect(await get(`${url}learn?a=1`)).toMatchObject({
      status: 301,
      location: `${new URL(url).pathname}learn/?a=1`,
    });
  });

  test('answers a wrong address, a malformed one included, with its own page', async () => {
    const url = await serve({ base });
    for (const wrong of ['nothing', 'learn/nothing/', '%E0%A4%A', '..%2f..%2fetc/']) {
      expect(await get(url + wrong)).toMatchObject({ status: 404, text: 'no such page' });
    }
  });
});

test('long texts travel compressed where the browser takes it, and pictures do not', async () => {
  const long = 'watt '.repeat(1000);
  writeFileSync(join(directory, 'long.html'), long);
  writeFileSync(join(directory, 'long.png'), long);
  const url = await serve({});
  const bytesOf = async (file: string, encoding: string): Promise<number> => {
    const { promise, resolve, reject } = Promise.withResolvers<number>();
    const asked = request(url + file, { headers: { 'accept-encoding': encoding } }, (answer) => {
      let bytes = 0;
      answer.on('data', (part: Buffer) => {
        bytes += part.length;
      });
      answer.on('end', () => resolve(bytes));
    });
    asked.on('error', reject).end();
    return promise;
  };
  expect(await bytesOf('long.html', 'gzip')).toBeLessThan(200);
  expect(await bytesOf('long.html', 'identity')).toBe(long.length);
  expect(await bytesOf('long.png', 'gzip')).toBe(long.length);
  expect(await (await fetch(`${url}long.html`)).text()).toBe(long);
});

test('what lies outside the base path is not the site', async () => {
  const { origin } = new URL(await serve({ base: '/club/watt/' }));
  for (const wrong of ['/', '/club/', '/club/wattage/']) {
    expect(await get(origin + wrong)).toMatchObject({ status: 404, text: 'no such page' });
  }
});

test('an address that begins with several slashes is one of the site, and sends nobody elsewhere', async () => {
  const url = await serve({});
  const asked = (path: string) =>
    new Promise<{ status: number | undefined; location: string | undefined }>((done, fail) => {
      const { hostname, port } = new URL(url);
      request({ hostname, port, path }, (answer) => {
        answer.resume();
        done({ status: answer.statusCode, location: answer.headers.location });
      })
        .on('error', fail)
        .end();
    });
  expect(await asked('//')).toMatchObject({ status: 200 });
  expect(await asked('//learn')).toEqual({ status: 301, location: '/learn/' });
  expect(await asked('http://elsewhere.invalid/learn')).toMatchObject({ status: 200 });
});

test('nothing is told of folders beside the site', async () => {
  const beside = mkdtempSync(join(tmpdir(), 'beside-'));
  writeFileSync(join(beside, 'index.html'), 'not the site');
  const url = await serve({});
  expect(await get(`${url}..%2f${basename(beside)}`)).toMatchObject({ status: 404, text: 'no such page' });
  rmSync(beside, { recursive: true });
});

test('a taken port is left to its owner, and the next one is told', async () => {
  const first = new URL(await serve({}));
  const second = new URL(await serve({ port: Number(first.port) }));
  expect(Number(second.port)).toBeGreaterThan(Number(first.port));
  expect(await get(second.href)).toMatchObject({ status: 200 });
});

test('a folder without a site is refused', async () => {
  const empty = { directory: join(directory, 'learn'), base: '/', host, port: 0 };
  await expect(serveSite(empty)).rejects.toThrow('serveSite: wish a built site (npm run build), got ');
});

describe('a site that states its headers', () => {
  const stated = `/
  Referrer-Policy: no-referrer
  X-Of: the start

/404.html
  Cache-Control: no-cache
  X-Of: what is not there

/lasting/*
  Cache-Control: immutable

/learn/*
  Referrer-Policy: no-referrer
  Cache-Control: no-cache
  X-Of: lessons
`;
  const age = async (url: string): Promise<string | null> =>
    (await fetch(url, { cache: 'no-store' })).headers.get('cache-control');
  const of = async (url: string): Promise<string | null> => (await fetch(url)).headers.get('x-of');
  beforeAll(() => writeFileSync(join(directory, '_headers'), stated));
  afterAll(() => rmSync(join(directory, '_headers')));

  test('is served with them, wrong addresses with those of the page that says so', async () => {
    const url = await serve({});
    expect(await of(url)).toBe('the start');
    expect(await of(`${url}learn/`)).toBe('lessons');
    expect(await of(`${url}no/such/`)).toBe('what is not there');
    expect(await age(`${url}learn/`)).toBe('no-cache');
    expect(await age(`${url}lasting/none.js`), 'what is missing may be there tomorrow').toBe('no-cache');
  });

  test('is served without them on request', async () => {
    const site = await serveSite({ directory, base: '/', host, port: 0, headers: false });
    running.push(site);
    expect(await of(site.url)).toBeNull();
  });

  test('is served with those of a build that was made meanwhile', async () => {
    const url = await serve({});
    expect(await of(url)).toBe('the start');
    writeFileSync(join(directory, '_headers'), stated.replace('the start', 'a newer start'));
    expect(await of(url)).toBe('a newer start');
  });
});
