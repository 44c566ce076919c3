// Writes a page of the computation's public functions with what their docstrings say: `npm run docs`.
import { mkdir, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { apiEntries } from './api-entries.ts';
import { apiPage } from './api-page.ts';

const entries = apiEntries(fileURLToPath(new URL('../compute/index.ts', import.meta.url)));
await mkdir('.reports/api', { recursive: true });
await writeFile('.reports/api/index.html', apiPage(entries));
console.log(`.reports/api/index.html: ${entries.length} public names`);
