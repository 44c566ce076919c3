const olderFormats = /,\s*url\([^)]*\.(?:woff|ttf)\) format\("(?:woff|truetype)"\)/g;

/** Vite plugin: of KaTeX's faces only the woff2 files are built; every browser this site serves reads them. */
export function katexWoff2() {
  return {
    name: 'katex-woff2',
    enforce: 'pre' as const,
    transform: {
      filter: { id: /katex(-swap)?(\.min)?\.css$/ },
      handler: (code: string) => ({ code: code.replace(olderFormats, ''), map: null }),
    },
  };
}
