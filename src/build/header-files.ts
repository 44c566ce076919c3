import type { HeaderRule } from './header-rules.ts';

const lines = ({ headers }: HeaderRule, write: (name: string, value: string) => string): string =>
  Object.entries(headers)
    .map(([name, value]) => write(name, value))
    .join('\n');

/** The rules as the text file `_headers` that several hosts of static files read: a path, and its headers indented below. */
export const headersText = (rules: readonly HeaderRule[]): string =>
  rules.map((rule) => `${rule.path}\n${lines(rule, (name, value) => `  ${name}: ${value}`)}\n`).join('\n');

/** The rules that such a file states. */
export function readHeadersText(text: string): readonly HeaderRule[] {
  return text
    .split(/\n(?=\S)/)
    .map((block) => block.split('\n').filter((line) => line.trim() !== ''))
    .filter(([path]) => path?.startsWith('/'))
    .map(([path = '', ...stated]) => ({
      path,
      headers: Object.fromEntries(
        stated.map((line) => {
          const [, name = '', value = ''] = /^\s*([^:\s]+):\s*(.*)$/.exec(line) ?? [];
          return [name, value];
        }),
      ),
    }));
}

/** The headers of pages, which stand for everything that has none of its own. */
function usual(rules: readonly HeaderRule[], base: string): HeaderRule {
  const rule = rules.find(({ path }) => path === base);
  if (rule === undefined) throw new Error(`usual: wish a rule for ${base}, got none`);
  return rule;
}

/** Rules for folders that differ from the usual one. */
function special(rules: readonly HeaderRule[], base: string): readonly HeaderRule[] {
  const told = JSON.stringify(usual(rules, base).headers);
  return rules.filter(({ path, headers }) => path.endsWith('/*') && JSON.stringify(headers) !== told);
}

/** How long to keep counts for what is there alone: a missing file may be there tomorrow. */
const onlyOfWhatIsThere = (name: string, value: string): boolean =>
  name === 'Cache-Control' && value.includes('immutable');

const types = [
  ['font/woff2', '.woff2'],
  ['application/manifest+json', '.webmanifest'],
] as const;

/** The rules as a file `.htaccess` in the site's folder, for Apache httpd 2.4 with `mod_headers`. */
export function htaccessText(rules: readonly HeaderRule[], base: string): string {
  const set = (rule: HeaderRule, indent: string): string =>
    lines(rule, (name, value) => {
      const set = `${indent}Header always set ${name} "${value}"`;
      if (!onlyOfWhatIsThere(name, value)) return set;
      return `${indent}Header always unset ${name}\n${set.replace('always ', '')}`;
    });
  const names = Object.keys(usual(rules, base).headers);
  const folders = special(rules, base).map((rule) => {
    const unset = names
      .filter((name) => !(name in rule.headers))
      .map((name) => `    Header always unset ${name}\n`)
      .join('');
    const path = rule.path.slice(0, -1).replaceAll('.', '\\.');
    return `  <If "%{REQUEST_URI} =~ m#^${path}#">\n${unset}${set(rule, '    ')}\n  </If>\n`;
  });
  return [
    '# For Apache httpd 2.4; the folder needs AllowOverride FileInfo.',
    `ErrorDocument 404 ${base}404.html`,
    ...types.map(([type, extension]) => `AddType ${type} ${extension}`),
    '<IfModule mod_headers.c>',
    set(usual(rules, base), '  '),
    `${folders.join('')}</IfModule>\n`,
  ].join('\n');
}

/** The rules as blocks for nginx, to be included in the server's own block beside its `root`. */
export function nginxText(rules: readonly HeaderRule[], base: string): string {
  const location = (path: string, rule: HeaderRule): string =>
    [
      `location ${path} {`,
      '  index index.html;',
      `  error_page 404 ${base}404.html;`,
      lines(rule, (name, value) => {
        const always = onlyOfWhatIsThere(name, value) ? '' : ' always';
        return `  add_header ${name} "${value}"${always};`;
      }),
      '}\n',
    ].join('\n');
  return [
    `# For nginx: include this file in the server block whose root holds the site at ${base}`,
    location(base, usual(rules, base)),
    ...special(rules, base).map((rule) => location(rule.path.slice(0, -1), rule)),
  ].join('\n');
}
