// Cuts the text face and those of the formulas down to the characters the site uses: `npm run fonts`. The same input gives the same bytes.
import { copyFile, mkdir, readFile, writeFile } from 'node:fs/promises';
import { create } from 'fontkit';
import { cutFont } from './cut-font.ts';
import { FORMULA_FACES, fileOfFace } from './formula-face-names.ts';
import { cutFormulaFace, formulaCharacters, renderedFormulas } from './formula-faces.ts';

const from = new URL('../../node_modules/source-sans/', import.meta.url);
const to = new URL('../assets/fonts/', import.meta.url);
/** More than this and a page is drawn later on a slow line; the budget of a page would leave it 60 kB. */
const budgetBytes = 36_000;

const cut = await cutFont(await readFile(new URL('VF/SourceSans3VF-Upright.ttf', from)));
if (cut.length > budgetBytes)
  throw new RangeError(`fonts: the face must be <= ${budgetBytes} bytes, got ${cut.length}`);
await mkdir(to, { recursive: true });
await writeFile(new URL('page-one.woff2', to), cut);
await copyFile(new URL('LICENSE.md', from), new URL('page-one.LICENSE.txt', to));
console.log(`page-one.woff2: ${cut.length} bytes`);

const formulas = new URL('../../node_modules/katex/dist/fonts/', import.meta.url);
const rendered = renderedFormulas();
/** @type {Set<string>} */
const terms = new Set();
for (const face of FORMULA_FACES) {
  const whole = await readFile(new URL(`KaTeX_${face}.ttf`, formulas));
  const made = await cutFormulaFace(whole, formulaCharacters(rendered, face));
  await writeFile(new URL(fileOfFace(face), to), made);
  console.log(`${fileOfFace(face)}: ${made.length} bytes`);
  const { name } = /** @type {{ name: { records: Record<string, Record<string, string>> } }} */ (
    /** @type {unknown} */ (create(whole))
  );
  for (const part of ['copyright', 'license']) terms.add(name.records[part]?.en ?? '');
}
await writeFile(new URL('Signs.LICENSE.txt', to), `${[...terms].join('\n\n').trim()}\n`);
