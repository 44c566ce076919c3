// Packs the built site into one file for carrying: `npm run pack`. The same site gives the same bytes.
import { mkdir, writeFile } from 'node:fs/promises';
import { parseArgs } from 'node:util';
import { packed } from './packed.ts';

const { values } = parseArgs({
  options: {
    dir: { type: 'string', default: process.env.SITE_OUT ?? '.site' },
    to: { type: 'string', default: '.packed' },
  },
});
const file = `${values.to}/how-sure-is-a-watt.zip`;
const bytes = await packed(values.dir);
await mkdir(values.to, { recursive: true });
await writeFile(file, bytes);
console.log(`${file}: ${(bytes.length / 1e6).toFixed(1)} MB`);
