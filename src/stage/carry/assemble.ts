import { strings } from '../strings.ts';
import { LOADER, PACKED } from './loader.ts';

/** What a carried file is made from beside its pages. */
export interface Kit {
  /** Every stage script in one, compressed by gzip and written in base64. */
  readonly packed: string;
  /** Style sheets of all pages whose steps it holds, typefaces inside. */
  readonly css: string;
  /** Where the page stands on the net: what leads out of the file leads there. */
  readonly page: string;
  /** Digest of a text as the content policy writes it; undefined where the browser has none to offer. */
  readonly digest: (text: string) => Promise<string | undefined>;
}

/** The element that stands for an island of the site: its own script would look for files that a carried one has not. */
export const CARRIED = 'carry-island';

const GOES =
  'script, link:not([rel="canonical"]), style, meta[http-equiv], template[id^="offline"], [data-carry]';

/** Every island under the name of its component, with what it was given and the number that its ids are made of. */
function renameIslands(document: Document): void {
  for (const island of document.querySelectorAll('astro-island')) {
    const renamed = document.createElement(CARRIED);
    const { name } = JSON.parse(island.getAttribute('opts') ?? '{}') as { name?: string };
    renamed.dataset.name = name ?? '';
    renamed.dataset.props = island.getAttribute('props') ?? '{}';
    renamed.dataset.island = island.getAttribute('data-preact-island-id') ?? '';
    renamed.append(...island.childNodes);
    island.replaceWith(renamed);
  }
}

/** Links that lead out of the file lead to the site; a place on the page stays one. */
function leadOut(document: Document, page: string): void {
  for (const anchor of document.querySelectorAll<HTMLAnchorElement>('a[href]')) {
    const href = anchor.getAttribute('href') ?? '';
    if (!href.startsWith('#')) anchor.setAttribute('href', new URL(href, page).href);
  }
}

async function policyOf(css: string, digest: Kit['digest']): Promise<string> {
  const [ofScript, ofStyle] = [await digest(LOADER), await digest(css)];
  return [
    "default-src 'none'",
    `script-src blob: ${ofScript ?? "'unsafe-inline'"}`,
    `style-src ${ofStyle ?? "'unsafe-inline'"}`,
    'font-src data:',
    'img-src data: blob:',
    'worker-src blob:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
}

/**
 * A stage page as one file that needs no other: script, style and typefaces inside, under a policy that lets nothing else in. Its islands
 * begin as they were prepared, whatever was changed on the page.
 * @param source the page as it was built; it is changed on the way.
 */
export async function carried(source: Document, kit: Kit): Promise<string> {
  for (const gone of source.querySelectorAll(GOES)) gone.remove();
  renameIslands(source);
  leadOut(source, kit.page);
  // An end of a style sheet within one would end it.
  const css = `${kit.css}\n${CARRIED}{display:contents}`.replace(/<\/(style)/gi, '<\\/$1');
  const policy = await policyOf(css, kit.digest);
  const head = `<meta http-equiv="content-security-policy" content="${policy}"><style>${css}</style>`;
  const foot = `<p class="carried-from">${strings.carriedFrom}</p><script type="text/plain" id="${PACKED}">${kit.packed}</script><script>${LOADER}</script>`;
  return `<!doctype html>\n${source.documentElement.outerHTML}`
    .replace('</title>', () => `</title>${head}`)
    .replace('</body>', () => `${foot}</body>`);
}
