import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Site } from './links.ts';
import type { BuiltPage } from './pages.ts';
import { modulesOf, readCode } from './read-code.ts';

/** What a page's head must say for a preview, besides the card. */
const NAMES = [
  'og:type',
  'og:site_name',
  'og:title',
  'og:description',
  'og:url',
  'og:image',
  'og:image:alt',
  'twitter:card',
];

const unescaped = (text: string): string =>
  text.replaceAll('&#38;', '&').replaceAll('&amp;', '&').replaceAll('&quot;', '"').replaceAll('&#39;', "'");

/** Everything that `meta` tags say, by name or property. */
const metas = (html: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    [...html.matchAll(/<meta (?:name|property)="([^"]+)" content="([^"]*)"/g)].map(([, name, content]) => [
      name,
      unescaped(content ?? ''),
    ]),
  );

const canonicalOf = (html: string): string =>
  unescaped(/<link rel="canonical" href="([^"]*)"/.exec(html)?.[1] ?? '');

/** Width and height of a PNG, from its header (PNG, third edition, 11.2.1); undefined if it is none. */
function sizeOf(png: Buffer): { readonly width: string; readonly height: string } | undefined {
  if (png.subarray(1, 4).toString('latin1') !== 'PNG') return undefined;
  return { width: String(png.readUInt32BE(16)), height: String(png.readUInt32BE(20)) };
}

function imageProblems(
  site: Site,
  said: Readonly<Record<string, string>>,
  origin: string,
): readonly string[] {
  const image = said['og:image'] ?? '';
  const inSite = `${origin}${site.base}`;
  if (!image.startsWith(inSite)) return [`the card must lie at ${inSite}, got ${image}`];
  const file = join(site.directory, image.slice(inSite.length));
  if (!existsSync(file)) return [`no card at ${image}`];
  const png = readFileSync(file);
  const size = sizeOf(png);
  const hash = createHash('sha256').update(png).digest('hex');
  const problems = [];
  if (size?.width !== '1200' || size.height !== '630')
    problems.push(`a card of ${size?.width} x ${size?.height}`);
  if (said['og:image:width'] !== size?.width || said['og:image:height'] !== size?.height)
    problems.push('a card of another size than is said');
  const [, inName = ''] = /\.([0-9a-f]{10,})\.png$/.exec(image) ?? [];
  if (inName === '' || !hash.startsWith(inName))
    problems.push('the address of a card without the hash of its bytes');
  return problems;
}

function problemsOf(site: Site, { html }: BuiltPage, origin: string): readonly string[] {
  const said = metas(html);
  const missing = NAMES.filter((name) => (said[name] ?? '').length < 5).map((name) => `no ${name}`);
  const canonical = canonicalOf(html);
  const address = `${origin}${site.base}`;
  return [
    ...missing,
    ...(canonical.startsWith(address) ? [] : [`canonical must begin with ${address}, got ${canonical}`]),
    ...(said['og:url'] === canonical ? [] : ['og:url is not the canonical address']),
    ...(said['twitter:card'] === 'summary_large_image' ? [] : ['no large card']),
    ...imageProblems(site, said, origin),
  ];
}

/** Pages whose head has no whole preview, or whose card is not there as it is said. */
export const cardProblems = (site: Site, origin: string): readonly string[] =>
  site.pages.flatMap((page) => problemsOf(site, page, origin).map((problem) => `${page.file}: ${problem}`));

/** Pages that print an address: each lesson and each example must, unless it only leads on to where it stands now. */
const printed = /^\/(?:learn\/[^/]+|examples)\/[^/]+\/$/;

/** Pages whose printed code is missing or leads elsewhere than to the page's own address, which stands beside it in words. */
export const codeProblems = ({ base, pages }: Site): readonly string[] =>
  pages.flatMap(({ file, path, html }) => {
    const [, size, drawn] =
      /<svg viewBox="0 0 (\d+) \d+"[^>]*data-code[^>]*><path d="([^"]*)"/.exec(html) ?? [];
    const address = canonicalOf(html);
    if (size === undefined || drawn === undefined) {
      const own = address.endsWith(base + path.slice(1));
      return own && printed.test(path) ? [`${file}: no code of its address`] : [];
    }
    const read = readCode(modulesOf(Number(size), drawn));
    const beside = /class="printed-address"[\s\S]*?<\/div>/.exec(html)?.[0] ?? '';
    return [
      ...(read === address ? [] : [`${file}: the code leads to ${read}`]),
      ...(beside.includes(`>${address}<`) ? [] : [`${file}: the address does not stand beside its code`]),
    ];
  });
