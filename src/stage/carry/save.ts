import { readTalk } from '../talk.ts';
import { carried, type Kit } from './assemble.ts';
import { borrowSteps } from './borrow-steps.ts';
import { faceFiles, withoutIdleFaces } from './faces.ts';
import { fetched, pageAt, pagesOf, textOf } from './pages.ts';

const base = import.meta.env.BASE_URL.replace(/\/$/, '');

/** Bytes in base64. */
function lettersOf(bytes: ArrayBuffer): string {
  return btoa(Array.from(new Uint8Array(bytes), (byte) => String.fromCharCode(byte)).join(''));
}

/** SHA-256 as a content policy writes it. Browsers have none on a page that came without encryption from another machine. */
async function digest(text: string): Promise<string | undefined> {
  if (crypto.subtle === undefined) return undefined;
  return `'sha256-${lettersOf(await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text)))}'`;
}

/** A text compressed, in letters. */
async function packed(text: string): Promise<string> {
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream('gzip'));
  return lettersOf(await new Response(stream).arrayBuffer());
}

/** The style sheets of the pages, each once and in order, with the typefaces inside that any of them asks for. */
async function styleOf(pages: readonly Document[]): Promise<string> {
  const own = pages.flatMap((page) =>
    [...page.querySelectorAll('style')].map((style) => style.textContent ?? ''),
  );
  const sheets = pages.flatMap((page) =>
    [...page.querySelectorAll('link[rel="stylesheet"]')].map((sheet) => sheet.getAttribute('href') ?? ''),
  );
  const texts = await Promise.all([...new Set(sheets)].map(textOf));
  const css = withoutIdleFaces([...new Set(own), ...texts].join('\n'), (selector) =>
    pages.some((page) => page.querySelector(selector) !== null),
  );
  const files = await Promise.all(
    faceFiles(css).map(async (file) => [file, await (await fetched(file)).arrayBuffer()] as const),
  );
  return files.reduce(
    (all, [file, bytes]) => all.replaceAll(file, `data:font/woff2;base64,${lettersOf(bytes)}`),
    css,
  );
}

/** Everything that the pages need. @param page where the first of them stands on the net. */
async function kitOf(pages: readonly Document[], page: string): Promise<Kit> {
  const [script, css] = await Promise.all([textOf(`${base}/carry/carry.js`), styleOf(pages)]);
  return { packed: await packed(script), css, page, digest };
}

/** The stage that is open, as one file to take along: a lesson, an example, or a talk with all the steps that it borrows. */
export async function carriedStage({ pathname, search }: Pick<Location, 'pathname' | 'search'>) {
  const source = await pageAt(pathname);
  const canonical = source.querySelector('link[rel="canonical"]')?.getAttribute('href') ?? location.href;
  const parts = readTalk(search);
  const pages = await pagesOf(parts);
  // The folder on the net that this page stands in, whatever machine serves it now.
  const kit = await kitOf([source, ...pages.values()], new URL(pathname, canonical).href);
  borrowSteps(source, parts, pages);
  const name = pathname.split('/').filter(Boolean).at(-1) ?? 'stage';
  return { name: `${name}.html`, html: await carried(source, kit) };
}

/** Hands a text to the reader as a file. */
export function handOver({ name, html }: { readonly name: string; readonly html: string }): void {
  const address = URL.createObjectURL(new Blob([html], { type: 'text/html' }));
  const anchor = document.createElement('a');
  anchor.href = address;
  anchor.download = name;
  anchor.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
