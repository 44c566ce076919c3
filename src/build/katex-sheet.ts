import { FORMULA_FACES, fileOfFace, OWN } from './formula-face-names.ts';

const FACE = /@font-face\s*\{[^}]*?url\(fonts\/KaTeX_([\w-]+)\.woff2\)[^}]*\}/g;
const kept: ReadonlySet<string> = new Set(FORMULA_FACES);

/** A face that formulas are set in, from the file that holds just their characters; nothing of another. */
const ownFace = (rule: string, face: string): string =>
  kept.has(face)
    ? rule.replace(/src:[^;}]*/, `src:url(/src/assets/fonts/${fileOfFace(face)}) format("woff2")`)
    : '';

/** Every class of KaTeX's sheet that a formula here is made with; a test renders all formulas and holds the list to them. */
export const USED_CLASSES: ReadonlySet<string> = new Set(
  `accent-body delimcenter delimsizing frac-line hide-tail katex katex-accent katex-base katex-display katex-html katex-mathml
  katex-overline katex-sizing katex-strut large-op mathnormal mathrm mfrac mspace msupsub mult nulldelimiter op-limits op-symbol
  overline-line pstrut reset-size3 reset-size6 size1 size2 size3 size4 small-op sqrt svg-align vlist vlist-r vlist-s vlist-t
  vlist-t2`.split(/\s+/),
);

/** Names of classes that what a selector meets must have; those that it must not have are none of them. */
export const classesIn = (selector: string): readonly string[] =>
  [...selector.replace(/:not\([^)]*\)/g, '').matchAll(/\.([a-zA-Z][\w-]*)/g)].map(([, name]) => name ?? '');

/** A rule with those of its selectors that can meet something; nothing where none can. */
function usedRule(rule: string, selectors: string, body: string): string {
  if (selectors.trimStart().startsWith('@')) return rule;
  const used = selectors.split(',').filter((each) => classesIn(each).every((name) => USED_CLASSES.has(name)));
  return used.length === 0 ? '' : `${used.join(',')}{${body}}`;
}

/**
 * Vite plugin: of KaTeX's sheet only what the formulas here need. Of its faces those that are used, each cut to the characters that
 * occur, as woff2 files, which every browser this site serves reads; of its rules those for classes that occur.
 */
export function katexSheet() {
  return {
    name: 'katex-sheet',
    enforce: 'pre' as const,
    transform: {
      filter: { id: /katex(-swap)?(\.min)?\.css$/ },
      handler: (code: string) => ({
        code: code
          .replace(FACE, ownFace)
          .replace(/([^{}]+)\{([^{}]*)\}/g, usedRule)
          .replaceAll('KaTeX_', OWN),
        map: null,
      }),
    },
  };
}
