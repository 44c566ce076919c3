import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { attributeValues } from '../site/links.ts';
import type { BuiltPage } from '../site/pages.ts';

const corpus = fileURLToPath(new URL('../corpus/', import.meta.url));

/** Whether the text is an address of the site that carries a state. */
const carriesState = (text: string): boolean => /^\/\S*[?#]\S+$/.test(text);

/** Addresses in a text file, one a line, or anywhere in a JSON file. */
function addressesIn(file: string): readonly string[] {
  const text = readFileSync(corpus + file, 'utf8');
  if (file.endsWith('.txt')) return text.split('\n').map((line) => line.trim());
  const found: string[] = [];
  JSON.parse(text, (_key, value: unknown) => {
    if (typeof value === 'string') found.push(value);
    return value;
  });
  return found;
}

/** Where the links of a page lead that carry a state: "try it" in a lesson, "with your own numbers" below an example. */
const linksWithState = ({ path, html }: BuiltPage): readonly string[] =>
  attributeValues(html, ['href'])
    .map((href) => new URL(href, `http://site.invalid${path}`))
    .filter(
      ({ hostname, search, hash }) => hostname === 'site.invalid' && (search !== '' || hash.includes('=')),
    )
    .map(({ pathname, search, hash }) => pathname + search + hash);

/** The addresses of states that were ever given out, which have to open for ever, and those that the site itself gives out. */
export function stateAddresses(pages: readonly BuiltPage[]): readonly string[] {
  const files = existsSync(corpus) ? readdirSync(corpus).filter((file) => /\.(txt|json)$/.test(file)) : [];
  const kept = files.flatMap(addressesIn).filter(carriesState);
  return [...new Set([...kept, ...pages.flatMap(linksWithState)])];
}
