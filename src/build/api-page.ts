import type { ApiEntry } from './api-entries.ts';

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

/** What a docstring says, with a way to each name that it points to. */
const said = (text: string): string => escaped(text).replace(/\{@link (\w+) ?\}/g, '<a href="#$1">$1</a>');

/** Sources by the name of the function, as its row of the formula sheet states them. */
export type Sources = ReadonlyMap<string, string>;

function entryHtml({ name, shape, says, tags }: ApiEntry, sources: Sources): string {
  const source = sources.get(name);
  const lines = [...tags, ...(source === undefined ? [] : [`Formula sheet: ${source}`])];
  const more = lines.length === 0 ? '' : `<ul>${lines.map((line) => `<li>${said(line)}</li>`).join('')}</ul>`;
  return `<section id="${escaped(name)}"><h3>${escaped(name)}</h3><pre>${escaped(shape)}</pre><p>${said(says)}</p>${more}</section>`;
}

/** One page of all public names, by the file that defines them. */
export function apiPage(entries: readonly ApiEntry[], sources: Sources): string {
  const files = [...new Set(entries.map(({ file }) => file))].sort();
  const parts = files.map(
    (file) =>
      `<h2>${escaped(file)}</h2>${entries
        .filter((entry) => entry.file === file)
        .map((entry) => entryHtml(entry, sources))
        .join('\n')}`,
  );
  const names = entries
    .map(({ name }) => `<li><a href="#${escaped(name)}">${escaped(name)}</a></li>`)
    .join('');
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>The computation’s public functions</title>
<style>body{max-width:60rem;margin:auto;padding:1rem;font:1rem/1.5 system-ui,sans-serif}pre{overflow:auto;padding:.5rem;border:1px solid}ul{columns:14rem}section ul{columns:auto}</style>
</head><body><h1>The computation’s public functions</h1>
<p>All of it is behind one door, <code>#compute</code>. What is not listed here is not public.</p>
<ul>${names}</ul>
${parts.join('\n')}
</body></html>
`;
}
