import { HtmlValidate } from 'html-validate';
import type { Site } from './links.ts';

/** Astro's own rule for its islands, which stands in the body beside the first of them: every browser reads it there. */
const islandStyle = /<style>astro-island,astro-slot[^<]*<\/style>/g;

/** Rules of style, not of validity, are off: empty and boolean attributes, the doctype and the like are how Astro writes. */
const validator = new HtmlValidate({
  root: true,
  extends: ['html-validate:recommended'],
  elements: ['html5', { 'astro-island': { flow: true, phrasing: true, transparent: true } }],
  rules: {
    'attribute-boolean-style': 'off',
    'attribute-empty-style': 'off',
    'doctype-style': 'off',
    'element-required-attributes': 'error',
    'long-title': 'off',
    'no-inline-style': 'error',
    'no-trailing-whitespace': 'off',
    'void-style': 'off',
    'require-sri': 'off',
    'valid-id': ['error', { relaxed: true }],
  },
});

/** What the validator finds against the standard of HTML, page by page. */
export function invalidMarkup({ pages }: Site): readonly string[] {
  return pages.flatMap(({ file, html }) =>
    validator
      .validateStringSync(html.replace(islandStyle, ''), file)
      .results.flatMap(({ messages }) =>
        messages.map(
          ({ ruleId, message, line, column }) => `${file}:${line}:${column}: ${ruleId}: ${message}`,
        ),
      ),
  );
}

/** Style attributes: the content policy refuses them. */
export const inlineStyles = ({ pages }: Site): readonly string[] =>
  pages
    .filter(({ html }) => /<[a-z][^>]*\sstyle="/i.test(html.replace(/<(script|style)\b[\s\S]*?<\/\1>/g, '')))
    .map(({ file }) => `${file}: a style attribute`);

/** Pages whose content policy is missing or lets inline code or other hosts in. */
export const weakPolicies = ({ pages }: Site): readonly string[] =>
  pages
    .filter(({ html }) => {
      const policy = /<meta http-equiv="content-security-policy" content="([^"]*)"/i.exec(html)?.[1] ?? '';
      const strict = ["default-src 'self'", "object-src 'none'", "base-uri 'none'"].every((part) =>
        policy.includes(part),
      );
      return !strict || /unsafe-|https?:|\*/.test(policy);
    })
    .map(({ file }) => `${file}: a weak content policy`);

/** What a page would fetch from elsewhere; a link that the reader follows is none. */
export const fetchedFromElsewhere = ({ pages }: Site): readonly string[] =>
  pages.flatMap(({ file, html }) => {
    const links = html.match(/<link\b[^>]*rel="(?!canonical)[^"]*"[^>]*>/g) ?? [];
    const sources =
      html.match(/\s(?:src|srcset|poster|component-url|renderer-url)="(?:https?:)?\/\/[^"]*"/g) ?? [];
    const found = [...links.filter((link) => /href="(?:https?:)?\/\//.test(link)), ...sources];
    return found.map((one) => `${file}: ${one.trim()}`);
  });

/** The wall, and figures in a frame on other people's pages: they have no foot. */
const withoutFoot = /<html[^>]* class="stage"|<main class="embed"/;

/** Pages that do not say the version at their foot. */
export const withoutVersion = ({ pages }: Site, version: string): readonly string[] =>
  pages
    .filter(({ html }) => !withoutFoot.test(html) && !html.includes(`Version ${version}. `))
    .map(({ file }) => `${file}: does not say version ${version}`);

/** Pages without one heading of the first order, or whose title or description another page has as well. */
export function headProblems({ pages }: Site): readonly string[] {
  const part = (html: string, pattern: RegExp): string => pattern.exec(html)?.[1]?.trim() ?? '';
  const seen = new Map<string, string>();
  return pages.flatMap(({ file, html }) => {
    const problems: string[] = [];
    const once = { title: /<title>([^<]*)</, description: /<meta name="description" content="([^"]*)"/ };
    for (const [what, pattern] of Object.entries(once)) {
      const key = `${what}: ${part(html, pattern)}`;
      if (part(html, pattern) === '') problems.push(`${file}: no ${what}`);
      // a stage page is the same lesson for the wall, a frame at an old address the same figure: both name the page that counts
      else if (seen.has(key) && !/^(stage|embed)\//.test(file))
        problems.push(`${file}: the ${what} of ${seen.get(key)}`);
      seen.set(key, file);
    }
    if ((html.match(/<h1\b/g) ?? []).length !== 1) problems.push(`${file}: wish one h1`);
    return problems;
  });
}
