const olderFormats = /,\s*url\([^)]*\.(?:woff|ttf)\) format\("(?:woff|truetype)"\)/g;

/** Alphabets that no formula here uses; a test of the formulas holds them to it. */
const unusedFaces =
  /@font-face\s*\{[^}]*font-family:\s*"?KaTeX_(?:Fraktur|SansSerif|Typewriter|Script|Caligraphic)"?[^}]*\}/g;

/**
 * Vite plugin: of KaTeX's faces only those that are used, and of them only the woff2 files; every browser this site serves
 * reads them.
 */
export function katexWoff2() {
  return {
    name: 'katex-woff2',
    enforce: 'pre' as const,
    transform: {
      filter: { id: /katex(-swap)?(\.min)?\.css$/ },
      handler: (code: string) => ({
        code: code.replace(olderFormats, '').replace(unusedFaces, ''),
        map: null,
      }),
    },
  };
}
