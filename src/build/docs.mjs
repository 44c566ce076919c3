// Writes a page of the computation's public functions with what their docstrings say: `npm run docs`.
import { mkdir, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { rowsOf, sourcesText, TOPICS } from '../formulas/index.ts';
import { apiEntries } from './api-entries.ts';
import { apiPage } from './api-page.ts';

const entries = apiEntries(fileURLToPath(new URL('../compute/index.ts', import.meta.url)));
const topics = /** @type {(keyof typeof TOPICS)[]} */ (Object.keys(TOPICS));
const rows = topics.flatMap((topic) => rowsOf(topic));
const sources = new Map(rows.map((row) => [row.id, sourcesText(row.sources)]));
await mkdir('.reports/api', { recursive: true });
await writeFile('.reports/api/index.html', apiPage(entries, sources));
console.log(`.reports/api/index.html: ${entries.length} public names`);
