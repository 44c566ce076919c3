// Cuts the text face down to the characters the site uses: `npm run fonts`. The same input gives the same bytes.
import { copyFile, mkdir, readFile, writeFile } from 'node:fs/promises';
import { cutFont } from './cut-font.ts';

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
