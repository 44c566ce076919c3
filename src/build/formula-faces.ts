import katex from 'katex';
import subsetFont from 'subset-font';
import { rowsOf, TOPICS, type TopicId } from '../formulas/index.ts';
import { renamed } from './cut-font.ts';
import { OWN } from './formula-face-names.ts';

/** How the reserved names begin. */
const RESERVED = 'KaTeX_';

/** Every formula of the site and every letter explained beneath one, as KaTeX writes them into a page. */
export const renderedFormulas = (): readonly string[] =>
  (Object.keys(TOPICS) as TopicId[])
    .flatMap((topic) => rowsOf(topic))
    .flatMap((row) => [
      katex.renderToString(row.tex, { displayMode: true, output: 'html' }),
      ...Object.values(row.symbols).map(({ tex }) => katex.renderToString(tex, { output: 'html' })),
    ]);

const named: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"', '#x27': "'" };

const SLANTED = /<span class="[^"]*\bmathnormal\b[^"]*"[^>]*>([^<]*)<\/span>/g;

const distinct = (text: string): string => {
  const plain = text.replace(/&([#\w]+);/g, (entity, name: string) => named[name] ?? entity);
  return [...new Set(plain)].sort().join('');
};

/** The characters that formulas are set with in a face, sorted: letters for quantities in the slanted one, all else in the others. */
export function formulaCharacters(formulas: readonly string[], face: string): string {
  const all = formulas.join('');
  if (face.endsWith('Italic')) return distinct([...all.matchAll(SLANTED)].map(([, text]) => text).join(''));
  return distinct(all.replace(SLANTED, '').replace(/<[^>]*>/g, ''));
}

/** A face of KaTeX (OFL), cut to the characters of the formulas and renamed. The same input gives the same bytes. */
export async function cutFormulaFace(face: Uint8Array, characters: string): Promise<Uint8Array> {
  // without instructions for screens of few dots, which are most of a face that has few letters
  const cut = await subsetFont(face, characters, { targetFormat: 'truetype', noHinting: true });
  return subsetFont(renamed(cut, RESERVED, OWN), characters, { targetFormat: 'woff2' });
}
