import { defineMdastPlugin } from 'satteri';

/** Prefixes root-relative addresses with the base path; leaves `//host` and relative ones alone. */
export function withBase(base: string, url: string): string {
  const prefix = base.replace(/\/$/, '');
  return url.startsWith('/') && !url.startsWith('//') ? prefix + url : url;
}

/** Markdown plugin: root-relative links follow the site's base path. */
export function baseLinks(base: string) {
  return defineMdastPlugin({
    name: 'base-links',
    link(node, context) {
      const url = withBase(base, node.url);
      if (url !== node.url) context.setProperty(node, 'url', url);
    },
    definition(node, context) {
      const url = withBase(base, node.url);
      if (url !== node.url) context.setProperty(node, 'url', url);
    },
  });
}
