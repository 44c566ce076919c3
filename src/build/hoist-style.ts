import { createHash } from 'node:crypto';

/** Class by declaration, gathered over all pages. */
export type Rules = Map<string, string>;

/** Parts of a page where what looks like a tag is none. */
const opaque = /(<script\b[\s\S]*?<\/script>|<style\b[\s\S]*?<\/style>|<!--[\s\S]*?-->)/i;
const tag = /<\/?[a-z][^\s>/]*(?:\s+[^\s=>"'/]+(?:=(?:"[^"]*"|'[^']*'|[^\s>"']+))?)*\s*\/?>/gi;
const styleAttribute = /\sstyle="([^"]*)"/;

const classOf = (declaration: string): string =>
  `s-${createHash('sha256').update(declaration).digest('hex').slice(0, 8)}`;

function withClass(start: string, name: string): string {
  return /\sclass="/.test(start)
    ? start.replace(/\sclass="/, ` class="${name} `)
    : start.replace(/^<[^\s>/]+/, `$& class="${name}"`);
}

/** The declarations of a style attribute, one an entry; a semicolon inside quotes ends none. */
const declarations = (attribute: string): readonly string[] =>
  attribute
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&')
    .split(/;(?=(?:[^"]*"[^"]*")*[^"]*$)/)
    .map((one) => one.trim())
    .filter((one) => one !== '');

function hoistTag(start: string, style: RegExpExecArray, rules: Rules): string {
  const declaration = declarations(style[1] ?? '')
    .map((one) => `${one}!important`)
    .join(';');
  const name = rules.get(declaration) ?? classOf(declaration);
  rules.set(declaration, name);
  return withClass(start.replace(style[0], ''), name);
}

/**
 * The page with each `style="…"` replaced by a class, whose rule goes into `rules`.
 * @throws Error on a style inside an island: its rule would be `!important`, and what the script moves would stand still.
 */
export function hoistStyles(html: string, rules: Rules): string {
  let islands = 0;
  const rewrite = (start: string): string => {
    if (/^<astro-island\b/i.test(start)) islands += 1;
    if (/^<\/astro-island\b/i.test(start)) islands -= 1;
    const style = styleAttribute.exec(start);
    if (!style) return start;
    if (islands > 0) throw new Error(`hoistStyles: no style attribute inside an island, got ${start}`);
    return hoistTag(start, style, rules);
  };
  const parts = html.split(opaque);
  return parts.map((part, i) => (i % 2 ? part : part.replace(tag, rewrite))).join('');
}

/** The stylesheet of the gathered rules, in an order that does not depend on that of the pages. */
export function hoistedCss(rules: Rules): string {
  const sorted = [...rules].sort(([a], [b]) => (a < b ? -1 : 1));
  return sorted.map(([declaration, name]) => `.${name}{${declaration}}`).join('\n');
}
