import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { join } from 'node:path';
import compression from 'compression';
import sirv from 'sirv';
import { readHeadersText } from './header-files.ts';
import { type HeaderRule, headersFor } from './header-rules.ts';

export interface SiteOptions {
  /** Folder of the built site. */
  readonly directory: string;
  /** Base path the site was built for. */
  readonly base: string;
  /** Address to listen on; other machines reach it only if this one says so. */
  readonly host: string;
  /** First port to try, 1 to 65535; 0 lets the system choose. */
  readonly port: number;
  /** Whether it sends the headers that the built site asks for; it does unless told not to. */
  readonly headers?: boolean;
}

export interface RunningSite {
  /** Address of the start page, with the port that was really taken. */
  readonly url: string;
  close(): Promise<void>;
}

/** How many ports in a row are tried before giving up. */
const portsTried = 50;

/** Address of the page that stands for what is not there; the host's rules say its headers. */
const missingPage = (base: string): string => `${base.replace(/\/?$/, '/')}404.html`;

/** What files of headers have stated, and when they were written. */
const read = new Map<string, { readonly writtenMs: number; readonly rules: readonly HeaderRule[] }>();

/** What the site's own file states; read anew when it was written anew, as the files themselves are. */
function statedRules(directory: string): readonly HeaderRule[] {
  const file = join(directory, '_headers');
  const writtenMs = statSync(file, { throwIfNoEntry: false })?.mtimeMs;
  if (writtenMs === undefined) return [];
  const before = read.get(file);
  if (before?.writtenMs === writtenMs) return before.rules;
  const rules = readHeadersText(readFileSync(file, 'utf8'));
  read.set(file, { writtenMs, rules });
  return rules;
}

function setHeaders(stated: Readonly<Record<string, string>>, response: ServerResponse): void {
  for (const [name, value] of Object.entries(stated)) response.setHeader(name, value);
}

function notFound({ directory, base, headers = true }: SiteOptions, response: ServerResponse): void {
  // not those of a file that is there: it may be kept for a year
  if (headers) setHeaders(headersFor(statedRules(directory), missingPage(base)), response);
  response.writeHead(404, { 'content-type': 'text/html;charset=utf-8' });
  response.end(readFileSync(join(directory, '404.html')));
}

/** Whether the address lacks the slash at the end of a page's own. Nothing is told of what lies outside the folder. */
function lacksSlash(directory: string, path: string): boolean {
  if (path.endsWith('/')) return false;
  try {
    const page = join(directory, decodeURIComponent(path), 'index.html');
    return page.startsWith(join(directory, '/')) && existsSync(page);
  } catch {
    return false; // a malformed escape is no page
  }
}

/** What a host of static files does: files under the base path, a redirect to the slash, the site's own page for the rest; texts compressed. */
function handler(options: SiteOptions) {
  const { directory, base, headers = true } = options;
  const prefix = base.replace(/\/$/, '');
  const files = sirv(directory, {
    dev: true, // reads the folder anew, so that a rebuilt site is served at once
    onNoMatch: (_request, response) => notFound(options, response),
  });
  const compress = compression();
  return (request: IncomingMessage, response: ServerResponse): void => {
    // put behind a host as it is: one that begins with two slashes would be taken for a host itself
    const asked = request.url?.startsWith('/') ? request.url.replace(/^\/+/, '/') : '/';
    const { pathname, search } = new URL(`http://site.invalid${asked}`);
    const path = pathname.slice(prefix.length);
    if (headers) setHeaders(headersFor(statedRules(directory), pathname), response);
    if (prefix !== '' && !`${pathname}/`.startsWith(`${prefix}/`)) {
      notFound(options, response);
    } else if (lacksSlash(directory, path)) {
      response.writeHead(301, { location: `${pathname}/${search}` }).end();
    } else {
      request.url = path + search;
      compress(request, response, () => files(request, response));
    }
  };
}

/** Listens on the port, or answers `false` if another program holds it. */
function listens(server: Server, { host, port }: { host: string; port: number }): Promise<boolean> {
  return new Promise((resolve, reject) => {
    const failed = (error: NodeJS.ErrnoException): void =>
      error.code === 'EADDRINUSE' ? resolve(false) : reject(error);
    server.once('error', failed);
    server.listen({ host, port }, () => {
      server.off('error', failed);
      resolve(true);
    });
  });
}

function running(server: Server, { host, base }: SiteOptions): RunningSite {
  const taken = server.address();
  if (taken === null || typeof taken === 'string') throw new Error('serveSite: wish a TCP address');
  const shown = host.includes(':') ? `[${host}]` : host;
  return {
    url: `http://${shown}:${taken.port}${base.replace(/\/?$/, '/')}`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

/**
 * Serves the built site, on the first free port from the wished one on.
 * @throws Error if the folder holds no site, or none of 50 ports is free
 */
export async function serveSite(options: SiteOptions): Promise<RunningSite> {
  const { directory, host, port } = options;
  if (!existsSync(join(directory, '404.html'))) {
    throw new Error(`serveSite: wish a built site (npm run build), got ${directory}`);
  }
  const server = createServer(handler(options));
  for (let next = port; next < port + portsTried; next += 1) {
    if (await listens(server, { host, port: next })) return running(server, options);
  }
  throw new Error(`serveSite: wish a free port from ${port} to ${port + portsTried - 1}, got none`);
}
