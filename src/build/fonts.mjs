// Cuts the text face down to the characters the site uses: `npm run fonts`. The same input gives the same bytes.
import { copyFile, mkdir, readFile, writeFile } from 'node:fs/promises';
import subsetFont from 'subset-font';
import { fontCharacters } from './font-characters.ts';

const from = new URL('../../node_modules/source-sans/', import.meta.url);
const to = new URL('../assets/fonts/', import.meta.url);
/** What the byte budget of a page leaves for its face. */
const budgetBytes = 60_000;

const face = await readFile(new URL('VF/SourceSans3VF-Upright.ttf', from));
const subset = await subsetFont(face, fontCharacters(), {
  targetFormat: 'woff2',
  variationAxes: { wght: { min: 400, max: 700 } },
});
if (subset.length > budgetBytes)
  throw new RangeError(`fonts: subset must be <= ${budgetBytes} bytes, got ${subset.length}`);
await mkdir(to, { recursive: true });
await writeFile(new URL('source-sans-3.woff2', to), subset);
await copyFile(new URL('LICENSE.md', from), new URL('source-sans-3.LICENSE.txt', to));
console.log(`source-sans-3.woff2: ${subset.length} bytes`);
